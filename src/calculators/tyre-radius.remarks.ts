import type { Interval, Remark } from './define.ts'
import { middle } from './interval.ts'
import type { Say } from './say.ts'

type Value = number | Interval | null
interface State {
  input: { end: 'front' | 'rear'; marking: string; radiusPlusMinus: number }
  output: Readonly<Record<'radius' | 'loadedRadius' | 'trail', Value>>
}

/** Two makes of one size can differ by this, so a smaller change of size may not be one on the bench. */
const SAME_SIZE = 3e-3

/** What a size means, and how far it can be trusted. */
export function tyreRadiusRemarks({ input, output, before, say }: State & { before?: State; say: Say }): Remark[] {
  const number = (value: Value): number => middle(value) ?? 0
  const list: Remark[] = []
  const sunk = number(output.radius) - number(output.loadedRadius)
  if (before) {
    const change = number(output.radius) - number(before.output.radius)
    const trail = number(output.trail) - number(before.output.trail)
    const where = input.end === 'front' ? 'front' : 'back'
    if (change === 0) list.push({ kind: 'reading', text: `Both sizes give ${say.quantity(number(output.radius), 'mm', 1)}: nothing moves.` })
    else {
      list.push({
        kind: 'reading',
        text: `The ${where} axle stands ${say.quantity(Math.abs(change), 'mm', 1)} ${change > 0 ? 'higher' : 'lower'}, and trail gets ${say.quantity(Math.abs(trail), 'mm', 1)} ${trail < 0 ? 'shorter' : 'longer'}.`,
      })
    }
    if (change !== 0 && Math.abs(change) < Math.max(SAME_SIZE, input.radiusPlusMinus)) {
      list.push({
        kind: 'limit',
        text: `Two makes of one size can differ by as much. Measure both tyres on the rim: one turn on the floor, divided by 6.283, is the radius.`,
      })
    }
    if (Math.abs(change) > SAME_SIZE)
      list.push({
        kind: 'caution',
        caution: 'modification-and-insurance',
        text: 'Another size than the maker approves can be unlawful, and can end your cover.',
      })
    if (change > SAME_SIZE)
      list.push({ kind: 'caution', caution: 'clearance-at-full-travel', text: 'A larger tyre comes nearer to yokes, guard and swing arm at full travel.' })
  }
  list.push({
    kind: 'reading',
    text: `Loaded, this tyre stands ${say.quantity(sunk, 'mm', 1)} lower than free. Use the one radius or the other, but the same on both wheels.`,
  })
  list.push({
    kind: 'next',
    text: 'Chalk the tyre, roll the bike one turn with the rider aboard, measure between the marks, and divide by 6.283. That is the loaded radius.',
  })
  return list
}
