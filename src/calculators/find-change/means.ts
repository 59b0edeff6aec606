import { motionRatioAt } from '../../bikes/aboard.ts'
import type { BikeChange, Mean, MeanId } from '../../core/index.ts'
import type { InputOf } from '../../machine/values.ts'
import type statement from './statement.ts'

export type Values = InputOf<typeof statement>

/** What a way asks of the workshop at most, from the least: its dearest part decides. */
export type Level = 'nothing' | 'adjuster' | 'opened' | 'out' | 'bought' | 'parts'

const MM = 1e-3
const steps = (low: number, high: number, step: number) => ({
  low: low * MM,
  high: high * MM,
  step: step * MM,
})

/* Limits are what adjusters and yokes commonly give, and no maker's: common practice, no source. Work is in the time that a practised fitter takes,
   roughly in minutes: only its order counts. */
const WORK = {
  adjuster: 5,
  collar: 10,
  tubes: 20,
  opened: 90,
  shockOut: 120,
  forkSprings: 200,
  shockSpring: 240,
} as const

const TURNS_FRONT = steps(-10, 15, 0.5)
const TURNS_REAR = steps(-8, 10, 0.5)
const TUBES = { low: -5, high: 10, step: 0.5 }
const OIL = steps(-30, 30, 5)
const SHOCK = { low: -6, high: 6, step: 1 }

/** What is left of a gap [mm] once what must stay is kept. */
const spare = (gap: number, kept: number): number => Math.max(0, gap - kept) / MM

/** Tubes go up by no more than the front gap can spare, and down by no more than stands above the yoke. */
function tubesOf({ frontGap, gapKept, tubeAbove }: Values): ReturnType<typeof steps> {
  const low = Math.max(TUBES.low, -spare(tubeAbove, 0))
  return steps(low, Math.min(TUBES.high, spare(frontGap, gapKept)), TUBES.step)
}

/** A shock is shortened by no more than the rear gap can spare: at full travel the wheel rises by that over the motion ratio there. */
function shockOf({ bike, rearGap, gapKept }: Values): ReturnType<typeof steps> {
  const ratio = motionRatioAt(bike, bike.rear.travel)
  return steps(Math.max(SHOCK.low, -spare(rearGap, gapKept) * ratio), SHOCK.high, SHOCK.step)
}

/** Springs that go in with every way [SI], and their work. */
export function baseOf({ newForkRate }: Values): { base: BikeChange; baseWork: number } {
  return newForkRate === undefined
    ? { base: {}, baseWork: 0 }
    : { base: { forkRate: newForkRate }, baseWork: WORK.forkSprings }
}

/** The means that are allowed [SI], each with its limits, its steps and its work. */
export function meansOf(input: Values): Mean[] {
  const { allowed, forkAdjuster, forkRates, rearRates, newForkRate } = input
  const inside = forkAdjuster === 'inside'
  const opens = allowed === 'oil' || allowed === 'parts'
  const list: Mean[] = [
    { id: 'rearPreloadChange', ...TURNS_REAR, work: WORK.collar },
    { id: 'forkPreloadChange', ...TURNS_FRONT, work: inside ? WORK.opened : WORK.adjuster },
  ]
  if (allowed !== 'adjusters') list.push({ id: 'tubeRaise', ...tubesOf(input), work: WORK.tubes })
  if (opens) list.push({ id: 'oilHeightChange', ...OIL, work: WORK.opened })
  if (allowed === 'parts')
    list.push(
      { id: 'shockLengthChange', ...shockOf(input), work: WORK.shockOut },
      { id: 'forkRate', rates: forkRates.map(([rate = 0]) => rate), work: WORK.forkSprings },
      { id: 'rearRate', rates: rearRates.map(([rate = 0]) => rate), work: WORK.shockSpring },
    )
  return newForkRate === undefined ? list : list.filter(({ id }) => id !== 'forkRate')
}

/** What a way asks of the workshop. */
export function levelOf(
  used: readonly MeanId[],
  { forkAdjuster, newForkRate }: Pick<Values, 'forkAdjuster' | 'newForkRate'>,
): Level {
  const buys = used.includes('forkRate') && newForkRate === undefined
  if (buys || used.includes('rearRate')) return 'parts'
  if (used.includes('shockLengthChange')) return 'out'
  if (newForkRate !== undefined) return 'bought'
  const opens =
    used.includes('oilHeightChange') ||
    (forkAdjuster === 'inside' && used.includes('forkPreloadChange'))
  if (opens) return 'opened'
  return used.length > 0 ? 'adjuster' : 'nothing'
}
