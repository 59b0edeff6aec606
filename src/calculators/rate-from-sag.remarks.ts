import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import type { inputs, outputs } from './rate-from-sag.fields.ts'

type Context = RemarkContext<typeof inputs, typeof outputs>

/** Below this the preload is no preload: the readings or the air are wrong, for a spring cannot hang loose under load. */
const LOOSE = -2e-3

function reading({ output, say }: Context): Remark {
  const rate = middle(output.rate) ?? 0
  const air = middle(output.springPerLeg)
  const first = `The fork as it stands has ${say.quantity(rate, 'N/mm', 1)}, both legs together, give or take ${say.quantity(2 * (middle(output.within) ?? 0), 'N/mm', 1)}.`
  if (air === null) return { kind: 'reading', text: `${first} Trapped air is in that figure: it can make a pair of 18 N/mm read 20.` }
  return {
    kind: 'reading',
    text: `${first} Trapped air is ${say.quantity(Math.max(0, rate - 2 * air), 'N/mm', 1)} of it, so each spring is about ${say.quantity(air, 'N/mm', 2)}.`,
  }
}

function tells({ input, output, say }: Context): Remark {
  const within = middle(output.within) ?? 0
  const half = say.quantity(within, 'N/mm', 2)
  const step = say.quantity(input.step, 'N/mm', 1)
  if (output.verdict === 'these readings tell them apart')
    return { kind: 'next', text: `With ±${half} each leg, no wider than the step of ${step}, these readings tell neighbouring springs apart.` }
  const needed = ((input.staticReading - input.riderReading) * within) / input.step
  return {
    kind: 'next',
    text: `With ±${half} each leg, wider than the step of ${step}, a tape cannot name your spring. Read each length three times, or put more load between the two readings: ${say.quantity(needed, 'mm', 0)} of difference would do at this ±. A press and a scale do better.`,
  }
}

/** What the two readings can and cannot say. */
export function remarks(context: Context): readonly Remark[] {
  const { output, say } = context
  const all = [reading(context), tells(context)]
  const preload = middle(output.springPreload) ?? middle(output.preload) ?? 0
  if (preload < LOOSE)
    all.push({
      kind: 'limit',
      text: `A preload of ${say.quantity(preload, 'mm', 0)} means a spring loose at full extension, under load. Suspect the reading with the wheel hanging, or friction that was not averaged.`,
    })
  else
    all.push({
      kind: 'limit',
      text: 'Rate and preload err together: where the rate reads too high, the preload reads too low. Many pairs fit the same two readings nearly as well.',
    })
  return all
}
