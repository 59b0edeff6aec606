import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import type { Say } from './say.ts'
import type { inputs, outputs } from './tyre-radius.fields.ts'

type Context = RemarkContext<typeof inputs, typeof outputs>
type State = Pick<Context, 'input' | 'output'>

/** Two makes of one size can differ by this, so a smaller change of size may not be one on the bench. */
const SAME_SIZE = 3e-3

const number = (value: Context['output']['trail']): number => middle(value) ?? 0

function changed({ input, output }: State, before: State, say: Say): Remark[] {
  const change = number(output.radius) - number(before.output.radius)
  if (change === 0) return [{ kind: 'reading', text: `Both sizes give ${say.quantity(number(output.radius), 'mm', 1)}: nothing moves.` }]
  const trail = number(output.trail) - number(before.output.trail)
  const height = `The ${input.end === 'front' ? 'front' : 'rear'} axle stands ${say.quantity(Math.abs(change), 'mm', 1)} ${change > 0 ? 'higher' : 'lower'}`
  const list: Remark[] = [{ kind: 'reading', text: `${height}, and trail gets ${say.quantity(Math.abs(trail), 'mm', 1)} ${trail < 0 ? 'shorter' : 'longer'}.` }]
  if (Math.abs(change) < Math.max(SAME_SIZE, input.radiusPlusMinus)) {
    const text = 'Two makes of one size can differ by as much. Measure both tyres on the rim: one turn on the floor, divided by 6.283, is the radius.'
    list.push({ kind: 'limit', text })
  }
  return list
}

function cautions({ output }: State, before: State): Remark[] {
  const change = number(output.radius) - number(before.output.radius)
  const list: Remark[] = []
  if (change !== 0)
    list.push({ kind: 'caution', caution: 'modification-and-insurance', text: 'Another size than the maker approves can be unlawful, and can end your cover.' })
  if (change > 0)
    list.push({ kind: 'caution', caution: 'clearance-at-full-travel', text: 'A larger tyre comes nearer to yokes, guard and swing arm at full travel.' })
  return list
}

/** What a size means, and how far it can be trusted. */
export function remarks({ input, output, before, say }: Context): readonly Remark[] {
  const now = { input, output }
  const sunk = number(output.radius) - number(output.loadedRadius)
  return [
    ...(before ? changed(now, before, say) : []),
    {
      kind: 'reading',
      text: `Loaded, this tyre stands ${say.quantity(sunk, 'mm', 1)} lower than free. Use the one radius or the other, but the same on both wheels.`,
    },
    {
      kind: 'next',
      text: 'Chalk the tyre, roll the bike one turn with the rider aboard, measure between the marks, and divide by 6.283. That is the loaded radius.',
    },
    ...(before ? cautions(now, before) : []),
  ]
}
