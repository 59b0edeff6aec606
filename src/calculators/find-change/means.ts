import type { Mean, MeanId } from '../../core/index.ts'
import type { InputOf } from '../../machine/values.ts'
import type statement from './statement.ts'

export type Values = InputOf<typeof statement>

/** What a way asks of the workshop at most, from the least: its dearest part decides. */
export type Level = 'nothing' | 'adjuster' | 'opened' | 'out' | 'parts'

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
const TUBES = steps(-5, 10, 0.5)
const OIL = steps(-30, 30, 5)
const SHOCK = steps(-6, 6, 1)

/** The means that are allowed [SI], each with its limits, its steps and its work. */
export function meansOf({ allowed, forkAdjuster, forkRates, rearRates }: Values): Mean[] {
  const inside = forkAdjuster === 'inside'
  const opens = allowed === 'oil' || allowed === 'parts'
  const list: Mean[] = [
    { id: 'rearPreloadChange', ...TURNS_REAR, work: WORK.collar },
    { id: 'forkPreloadChange', ...TURNS_FRONT, work: inside ? WORK.opened : WORK.adjuster },
  ]
  if (allowed !== 'adjusters') list.push({ id: 'tubeRaise', ...TUBES, work: WORK.tubes })
  if (opens) list.push({ id: 'oilHeightChange', ...OIL, work: WORK.opened })
  if (allowed === 'parts')
    list.push(
      { id: 'shockLengthChange', ...SHOCK, work: WORK.shockOut },
      { id: 'forkRate', rates: forkRates.map(([rate = 0]) => rate), work: WORK.forkSprings },
      { id: 'rearRate', rates: rearRates.map(([rate = 0]) => rate), work: WORK.shockSpring },
    )
  return list
}

/** What a way asks of the workshop. */
export function levelOf(used: readonly MeanId[], { forkAdjuster }: Values): Level {
  if (used.includes('forkRate') || used.includes('rearRate')) return 'parts'
  if (used.includes('shockLengthChange')) return 'out'
  const opens =
    used.includes('oilHeightChange') ||
    (forkAdjuster === 'inside' && used.includes('forkPreloadChange'))
  if (opens) return 'opened'
  return used.length > 0 ? 'adjuster' : 'nothing'
}
