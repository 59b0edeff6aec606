import type { Remark, RemarkContext } from './define.ts'
import type { inputs, outputs } from './fork-stack.fields.ts'

/** Spring travel kept clear of coil bind [m]: a coil that is 1 % longer or thicker than the data sheet says uses up about as much. Common practice, no source. */
export const BIND_CLEARANCE = 3e-3
/** Force on a cap [N] from which it jumps out of your hand as its thread ends: the weight of two kilograms. Common practice, no source. */
export const CAP_JUMPS = 20

/** What the stack means for the rider, and what to cut. */
export function remarks({ input, output, before, say }: RemarkContext<typeof inputs, typeof outputs>): readonly Remark[] {
  const { preload } = output
  const all: Remark[] = []
  if (typeof preload === 'number')
    all.push(...readingOf(preload, before?.output.preload, heightChange(output.frontTravel, before?.output.frontTravel), say.quantity))
  if (typeof output.spacer === 'number' && output.spacer < 0) {
    all.push({
      kind: 'next',
      text: `Even without a spacer the stack is ${say.quantity(-output.spacer, 'mm', 1)} too long for the preload wanted. It takes a shorter spring.`,
    })
  } else if (typeof output.spacer === 'number' && Math.abs(output.spacer - input.spacerLength) > 5e-4) {
    all.push({
      kind: 'next',
      text: `For ${say.quantity(input.wanted, 'mm', 1)} of preload at this setting, cut the spacer to ${say.quantity(output.spacer, 'mm', 1)}. Cut both legs alike, ends square.`,
    })
  }
  if (typeof output.capForce === 'number' && output.capForce >= CAP_JUMPS) {
    all.push({
      kind: 'caution',
      caution: 'cap-under-spring-force',
      text: `With the wheel hanging the spring pushes each cap with ${say.quantity(output.capForce, 'N', 0)}.`,
    })
  }
  if (typeof output.bindMargin === 'number' && output.bindMargin < BIND_CLEARANCE) {
    const short =
      output.bindMargin < 0
        ? `The coils touch ${say.quantity(-output.bindMargin, 'mm', 1)} before the fork reaches its stop.`
        : `Only ${say.quantity(output.bindMargin, 'mm', 1)} of spring travel is left when the fork reaches its stop.`
    all.push({ kind: 'limit', text: `${short} Touching coils stop the fork dead: use less preload or another spring.` })
  }
  return all
}

const heightChange = (now: unknown, was: unknown): number | null => (typeof now === 'number' && typeof was === 'number' ? was - now : null)

type Write = (si: number, unit: 'mm', digits: number) => string

function readingOf(preload: number, was: unknown, rise: number | null, quantity: Write): Remark[] {
  if (preload < 0) {
    return [
      {
        kind: 'reading',
        text: `The spring hangs loose by ${quantity(-preload, 'mm', 1)} with the wheel hanging. It can step off its seat, and carries nothing for that much of the travel.`,
      },
      { kind: 'next', text: 'Measure the depth and the spring again before you cut. Then lengthen the spacer.' },
    ]
  }
  if (typeof was === 'number' && rise !== null && Math.abs(preload - was) > 1e-6) {
    return [
      {
        kind: 'reading',
        text: `There is ${quantity(Math.abs(preload - was), 'mm', 1)} ${preload < was ? 'less' : 'more'} preload than before, and the front stands ${quantity(Math.abs(rise), 'mm', 1)} ${rise < 0 ? 'lower' : 'higher'}. The rate has not changed.`,
      },
    ]
  }
  return [
    {
      kind: 'reading',
      text: `The stack holds the spring ${quantity(preload, 'mm', 1)} shorter than its free length. Preload moves the bike along its travel and leaves the rate alone.`,
    },
  ]
}
