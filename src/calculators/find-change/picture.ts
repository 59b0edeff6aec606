import { aimReading, AIMS, aimStances, axlePlaces, changeBike, MEANS } from '../../core/index.ts'
import type { AimId, LeftOut, MeanId, Way } from '../../core/index.ts'
import { isOpen } from './aims.ts'
import { COVERS, type FittedSag } from './fitted.ts'
import { type Level, levelOf, type Values } from './means.ts'
import type { Solved } from './search.ts'

/** One change of a way [SI], with the turns that it takes where the pitch is known [1]. */
export interface ToldChange {
  mean: MeanId
  value: number
  turns: number | null
}

/** What the bike reads now and after a way [SI]. */
export interface ToldReading {
  aim: AimId
  now: number
  after: number
}

/** One aim of a way [SI]: its window, by how much the way misses it, what covers about 95 % of what is not known, and the chance of meeting it [1]. */
export interface ToldAim extends ToldReading {
  low: number
  high: number
  open: { below: boolean; above: boolean }
  misses: number
  plusMinus: number
  chance: number
}

export interface ToldWay {
  level: Level
  changes: ToldChange[]
  aims: ToldAim[]
  /** what was not asked for */
  besides: ToldReading[]
}

/** What the figure draws. */
export interface Picture {
  ways: ToldWay[]
  meets: boolean
  /** whether all was looked at; until then more ways may follow, or a nearer one */
  done: boolean
  /** whether the search looked at everything, and never gave up */
  whole: boolean
  /** changes tried so far on this bike for these aims, the stances solved for them, and those never offered, by the reason */
  tried: number
  stances: number
  leftOut: Record<LeftOut, number>
  /** where no way meets all aims: what is not allowed now and would, by itself, let one do so; null while that is not known */
  wouldHelp: MeanId[] | null
  /** gaps that nobody measured, so that no way uses them up */
  unmeasured: Gap[]
  /** whether the bike was fitted to sags, and those that do not go with the rest of it [m] */
  fitted: boolean
  apart: FittedSag[]
}

export type Gap = 'frontGap' | 'rearGap' | 'tubeAbove'

const EVERY = new Set(['static', 'rider', 'braking'] as const)

export function pictureOf(input: Values, solved: Solved): Picture {
  const { found, done, wouldHelp, fitted } = solved
  return {
    ways: found.ways.map((way) => toldWay(input, solved, way)),
    meets: found.meets,
    done,
    whole: found.whole,
    tried: found.tally.tried,
    stances: found.tally.stances,
    leftOut: found.tally.leftOut,
    wouldHelp,
    unmeasured: unmeasuredIn(input),
    fitted: fitted !== null,
    apart: fitted?.apart ?? [],
  }
}

/** The gaps that a change which is allowed would use up, and that nobody measured. */
function unmeasuredIn(input: Values): Gap[] {
  if (input.allowed === 'adjusters') return []
  const gaps: Gap[] = input.allowed === 'parts' ? ['frontGap', 'rearGap'] : ['frontGap']
  return [...gaps, 'tubeAbove' as const].filter((gap) => input[gap] === 0)
}

function toldWay(input: Values, { bike, cases, now, aims, spreadOf }: Solved, way: Way): ToldWay {
  const { change, misses } = way
  const before = aimStances(bike, cases, EVERY)
  const after = aimStances(changeBike(bike, change, now.rearTravel), cases, EVERY)
  const places = axlePlaces(bike, now)
  const reading = (aim: AimId): ToldReading => ({
    aim,
    now: aimReading(aim, before, places),
    after: aimReading(aim, after, places),
  })
  const spread = spreadOf(change)
  return {
    level: levelOf(
      MEANS.filter((mean) => change[mean] !== undefined),
      input,
    ),
    changes: changesOf(input, change),
    aims: aims.map((aim, i) => ({
      ...reading(aim.id),
      after: way.readings[aim.id]!,
      low: aim.low,
      high: aim.high,
      open: isOpen(aim),
      misses: misses.find((miss) => miss.aim === aim.id)?.by ?? 0,
      plusMinus: COVERS * spread[i]!.uncertainty,
      chance: spread[i]!.chance,
    })),
    besides: AIMS.filter((id) => !aims.some((aim) => aim.id === id)).map(reading),
  }
}

/** Changes in the order in which they are done: springs before the preload on them. */
const DONE: readonly MeanId[] = [
  'forkRate',
  'oilHeightChange',
  'forkPreloadChange',
  'tubeRaise',
  'rearRate',
  'shockLengthChange',
  'rearPreloadChange',
]

function changesOf(input: Values, change: Way['change']): ToldChange[] {
  const pitches: Partial<Record<MeanId, number | undefined>> = {
    forkPreloadChange: input.forkAdjuster === 'outside' ? input.forkPitch : undefined,
    rearPreloadChange: input.rearPitch,
  }
  return DONE.flatMap((mean) => {
    const [value, pitch] = [change[mean], pitches[mean]]
    if (value === undefined) return []
    return [{ mean, value, turns: pitch === undefined ? null : value / pitch }]
  })
}
