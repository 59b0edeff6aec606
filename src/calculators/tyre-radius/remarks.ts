import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { exists, estimate } from '../../units/interval.ts'
import type statement from './statement.ts'

type Context = RemarkContext<typeof statement>

/** Two makes of one size can differ by this, so a smaller change of size may not be one on the bench. */
const SAME_SIZE = 3e-3

const number = (value: Context['output']['trail']): number => estimate(value) ?? 0

function changed({ input, change, say, output }: Context): Remark[] {
  const radius = estimate(change.radius) ?? 0
  if (radius === 0)
    return [
      {
        kind: 'reading',
        text: `Both sizes give ${say.quantity(number(output.radius), 'mm', 1)}: nothing moves.`,
      },
    ]
  const height = `The ${input.end === 'front' ? 'front' : 'rear'} axle is ${say.moved(radius, 'mm', 1, ['lower', 'higher'])}`
  const trail = say.moved(change.trail ?? 0, 'mm', 1, ['shorter', 'longer'])
  const list: Remark[] = [{ kind: 'reading', text: `${height}, and trail gets ${trail}.` }]
  if (Math.abs(radius) < Math.max(SAME_SIZE, input.radiusPlusMinus)) {
    const text =
      'Two makes of one size can differ by as much. Measure both tyres on the rim: one turn on the floor, divided by 6.283, is the radius.'
    list.push({ kind: 'limit', text })
  }
  return list
}

function cautions({ input, change }: Context): Remark[] {
  const radius = estimate(change.radius) ?? 0
  const list: Remark[] = []
  if (radius !== 0)
    list.push({
      kind: 'caution',
      caution: 'modification-and-insurance',
      text: 'Another size than the maker approves can be unlawful, and can end your cover.',
    })
  if (radius > 0 && input.end === 'front')
    list.push({
      kind: 'caution',
      caution: 'clearance-at-full-travel',
      text: 'A larger tyre comes nearer to yokes, guard and radiator at full travel.',
    })
  if (radius > 0 && input.end === 'rear')
    list.push({
      kind: 'caution',
      caution: 'rear-clearance',
      text: 'A larger tyre comes nearer to guard, chain and swing arm at full travel.',
    })
  if (radius < 0)
    list.push({
      kind: 'caution',
      caution: 'ground-clearance-when-lowered',
      text: 'On a smaller tyre the bike touches down at less lean than before.',
    })
  return list
}

/** What a size means, and how far it can be trusted. */
function remarks(context: Context): readonly Remark[] {
  const { output, before, say } = context
  const sunk = exists(output.squash) ? say.span(output.squash, 'mm', 1) : ''
  return [
    ...(before ? changed(context) : []),
    {
      kind: 'reading',
      text: `Loaded, the axle on this tyre is ${sunk} lower than on a free one. Use the one radius or the other, but the same on both wheels.`,
    },
    {
      kind: 'next',
      text: 'Chalk the tyre, roll the bike one turn with the rider aboard, measure between the marks, and divide by 6.283. That is the loaded radius.',
    },
    ...(before ? cautions(context) : []),
  ]
}

export default defineRemarks<typeof statement>(remarks)
