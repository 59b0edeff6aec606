import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists, isInterval } from '../../units/interval.ts'
import type statement from './statement.ts'

type Context = RemarkContext<typeof statement>

/** Below this the preload is no preload: the readings or the air are wrong, for a spring cannot hang loose under load. */
const LOOSE = -2e-3

/** The sizes that stand in the fields at first [m, m³]: the invented roadster's. */
const EXAMPLE = {
  airHeight: 0.13,
  tubeDiameter: 0.043,
  boreDiameter: 0.038,
  stackVolume: 56e-6,
} as const

const AIR =
  ' But the air is still in the figure: measure its sizes and take it out before you name a spring.'

function reading({ output, say }: Context): Remark {
  const whole = exists(output.rate) ? say.span(output.rate, 'N/mm', 1) : ''
  const [, within] = ends(output.within) ?? [0, 0]
  // a range takes in the ± of the readings already
  const first = `The fork as it is comes to ${whole}, both legs together${isInterval(output.rate) ? '' : `, give or take ${say.quantity(2 * within, 'N/mm', 1)}`}.`
  if (!exists(output.springPerLeg))
    return {
      kind: 'reading',
      text: `${first} Trapped air is in that figure: it can make a pair of ${say.quantity(18e3, 'N/mm', 0)} read ${say.number(20e3, 'N/mm', 0)}.`,
    }
  const air = exists(output.airRate) ? say.span(output.airRate, 'N/mm', 1) : ''
  return {
    kind: 'reading',
    text: `${first} Trapped air is ${air} of it, so each spring has about ${say.span(output.springPerLeg, 'N/mm', 2)}.`,
  }
}

function tells({ input, output, verdicts, say }: Context): Remark {
  const leg = exists(output.springPerLeg) ? output.springPerLeg : output.perLeg
  const step = say.quantity(input.step, 'N/mm', 1)
  const [verdict] = verdicts.verdict
  // what is not known leaves a range, which has no estimate; a measured rate has its ±
  if (isInterval(leg)) {
    const open = `What you don’t know leaves each leg open from ${say.span(leg, 'N/mm', 2)}`
    return {
      kind: 'next',
      text:
        verdict === 'not-apart'
          ? `${open}, wider than the step of ${step}: more than one spring of the shelf fits. Measure what you answered with “I don’t know” before you name a spring.`
          : `${open}, no wider than the step of ${step}.${verdict === 'air-first' ? AIR : ''}`,
    }
  }
  const [, within] = ends(output.within) ?? [0, 0]
  const half = `With ±${say.quantity(within, 'N/mm', 2)} each leg`
  if (verdict !== 'not-apart')
    return {
      kind: 'next',
      text: `${half}, no more than half the step of ${step}, ${verdict === 'apart' ? 'these readings tell neighbouring springs apart.' : `the readings are fine enough.${AIR}`}`,
    }
  const needed = ((input.staticReading - input.riderReading) * within) / (input.step / 2)
  return {
    kind: 'next',
    text: `${half}, wider than half the step of ${step}, more than one spring of the shelf fits. Read each length three times, or put more load between the two: ${say.quantity(needed, 'mm', 0)} of difference would do at this ±. A press and a scale do better.`,
  }
}

function limits({ input, output, say }: Context): Remark[] {
  const preload = exists(output.springPreload) ? output.springPreload : output.preload
  const [low, high] = ends(preload) ?? [0, 0]
  const all: Remark[] = []
  if (high < LOOSE && exists(preload))
    all.push({
      kind: 'limit',
      text: `A preload of ${say.span(preload, 'mm', 0)} means a spring loose at full extension, under load. Suspect the reading with the wheel hanging, or friction that was not averaged.`,
    })
  else if (low < LOOSE)
    all.push({
      kind: 'limit',
      text: 'Part of what you don’t know would leave the spring loose at full extension, which it cannot be under load. Measure it.',
    })
  else
    all.push({
      kind: 'limit',
      text: 'Rate and preload err together: where the rate reads too high, the preload reads too low. Many pairs fit the same two readings nearly as well.',
    })
  const isExample = (Object.keys(EXAMPLE) as (keyof typeof EXAMPLE)[]).every(
    (size) => Math.abs(input[size] - EXAMPLE[size]) < 1e-9,
  )
  if (input.gas === 'sealed' && isExample)
    all.push({
      kind: 'limit',
      text: 'The air taken out is the invented roadster’s. Until you enter the sizes of your own fork, the figure without the air is not your spring’s.',
    })
  else if (input.gas === 'sealed' && input.boreDiameter >= input.tubeDiameter)
    all.push({
      kind: 'limit',
      text: 'A bore wider than the tube is right only on an upside-down fork whose air stands in the outer tube. Check the two sizes on any other.',
    })
  return all
}

/** What the two readings can and cannot say. */
export const remarks = (context: Context): readonly Remark[] => [
  reading(context),
  tells(context),
  ...limits(context),
]

export default defineRemarks<typeof statement>(remarks)
