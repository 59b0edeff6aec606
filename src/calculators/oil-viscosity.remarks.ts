import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import type { inputs, outputs } from './oil-viscosity.fields.ts'

/** Cold to warm [times] from which a fork feels like another fork until it has warmed: gap flow, which sets slow damping, goes with viscosity. Common practice, no source. */
export const COLD_IS_ANOTHER_FORK = 3
/** Difference of viscosity [1] below which two oils of one class may not be told apart: a class spans ±10 % (ISO 3448). */
export const SAME_CLASS = 0.1

/** What the viscosity means, warm and cold, and where to take the figures from. */
export function remarks({ input, output, before, say }: RemarkContext<typeof inputs, typeof outputs>): readonly Remark[] {
  const all: Remark[] = []
  const now = middle(output.viscosity)
  const was = before === undefined ? null : middle(before.output.viscosity)
  if (now !== null && was !== null && Math.abs(now - was) > 1e-12) {
    const ratio = now / was
    const size = Math.abs(ratio - 1) < SAME_CLASS ? 'Two bottles of one class may differ as much.' : 'Slow damping follows; fast damping follows far less.'
    all.push({
      kind: 'reading',
      text: `At ${say.quantity(input.temperature, '°C', 0)} the fork holds ${say.quantity(now, 'mm²/s', 1)}, ${ratio.toFixed(2)} times what it was. ${size}`,
    })
  } else if (now !== null) {
    all.push({
      kind: 'reading',
      text: `At ${say.quantity(input.temperature, '°C', 0)} the oil has ${say.quantity(now, 'mm²/s', 1)}. Compare oils by this number at one temperature, not by what is printed as “weight”.`,
    })
  }
  const ratio = middle(output.coldRatio)
  if (ratio !== null && ratio >= COLD_IS_ANOTHER_FORK) {
    all.push({
      kind: 'reading',
      text: `At ${say.quantity(input.cold, '°C', 0)} it is ${ratio.toFixed(1)} times as thick as at ${say.quantity(input.warm, '°C', 0)}. Judge the damping once the fork is warm.`,
    })
  }
  if (output.isoClass === 'between two classes')
    all.push({ kind: 'limit', text: 'At 40 °C this lies between two classes of ISO 3448. No bottle has to match it.' })
  all.push({ kind: 'next', text: 'Take both figures from the oil’s data sheet. The maker’s manual says which oil the fork takes.' })
  return all
}
