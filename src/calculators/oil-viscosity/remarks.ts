import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists, largest, mapped } from '../../units/interval.ts'
import type statement from './statement.ts'

/** Cold to warm [times] from which a fork feels like another fork until it has warmed: gap flow, which sets slow damping, goes with viscosity. Common practice, no source. */
export const COLD_IS_ANOTHER_FORK = 3
/** Difference of viscosity [1] below which two oils of one class may not be told apart: a class spans ±10 % (ISO 3448). */
export const SAME_CLASS = 0.1

/** What the viscosity means, warm and cold, and where to take the figures from. */
function remarks({
  input,
  output,
  changeShare,
  verdicts,
  say,
}: RemarkContext<typeof statement>): readonly Remark[] {
  const all: Remark[] = []
  const [now, share] = [output.viscosity, changeShare.viscosity]
  const at = `At ${say.quantity(input.temperature, '°C', 0)}`
  if (exists(now) && share !== undefined && largest(share) > 1e-6) {
    const ratio = mapped(share, (more) => 1 + more)
    const size =
      largest(share) < SAME_CLASS
        ? 'Two bottles of one class may differ as much.'
        : 'Slow damping follows; fast damping follows far less.'
    all.push({
      kind: 'reading',
      text: `${at} the fork holds ${say.span(now, 'mm²/s', 0)}, ${say.span(ratio, '', 2)} times what it was. ${size}`,
    })
  } else if (exists(now)) {
    all.push({
      kind: 'reading',
      text: `${at} the oil has ${say.span(now, 'mm²/s', 0)}. Compare oils by this number at one temperature, not by what is printed as “weight”.`,
    })
  }
  const [least, most] = ends(output.coldRatio) ?? [0, 0]
  if (exists(output.coldRatio) && most >= COLD_IS_ANOTHER_FORK) {
    const is = least >= COLD_IS_ANOTHER_FORK ? 'is' : 'may be'
    all.push({
      kind: 'reading',
      text: `At ${say.quantity(input.cold, '°C', 0)} it ${is} ${say.span(output.coldRatio, '', 1)} times as thick as at ${say.quantity(input.warm, '°C', 0)}. Judge the damping once the fork is warm.`,
    })
  }
  if (verdicts.isoClass.length === 1 && verdicts.isoClass[0] === 'between')
    all.push({
      kind: 'limit',
      text: 'At 40 °C this lies between two classes of ISO 3448. No bottle has to match it.',
    })
  all.push({
    kind: 'next',
    text: 'Take both figures from the oil’s data sheet. The maker’s manual says which oil the fork takes.',
  })
  return all
}

export default defineRemarks<typeof statement>(remarks)
