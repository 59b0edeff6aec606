import {
  aimReading,
  AIMS,
  aimStances,
  axlePlaces,
  changeBike,
  coverageFactor,
  MEANS,
  spreadOfChange,
} from '../../core/index.ts'
import type { AimId, LeftOut, MeanId, Way } from '../../core/index.ts'
import { FROM_NOW, isOpen } from './aims.ts'
import { type Level, levelOf, meansOf, type Values } from './means.ts'
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
  /** changes tried so far on this bike for these aims, and those never offered, by the reason */
  tried: number
  leftOut: Record<LeftOut, number>
  /** where no way meets all aims: what is not allowed now and would, by itself, let one do so */
  wouldHelp: MeanId[]
}

const EVERY = new Set(['static', 'rider', 'braking'] as const)
/** About 95 % of what a reader calls "within" [1]. */
const COVERS = coverageFactor({ degreesOfFreedom: Infinity, probability: 0.95 })

export function pictureOf(input: Values, solved: Solved): Picture {
  const { found } = solved
  return {
    ways: found.ways.map((way) => toldWay(input, solved, way)),
    meets: found.meets,
    tried: found.tally.tried,
    leftOut: found.tally.leftOut,
    wouldHelp: found.meets ? [] : helping(input, solved),
  }
}

/** The means that are not allowed, each of which alone would let a way meet all aims; the least work first. */
function helping(input: Values, { find, aims }: Solved): MeanId[] {
  const means = meansOf(input)
  return meansOf({ ...input, allowed: 'parts' })
    .filter(({ id }) => !means.some((mean) => mean.id === id))
    .sort((a, b) => a.work - b.work)
    .filter((more) => find({ aims, means: [...means, more], mostWays: 1, nearest: false }).meets)
    .map(({ id }) => id)
}

function toldWay(input: Values, { bike, cases, now, aims }: Solved, way: Way): ToldWay {
  const { change, misses } = way
  const before = aimStances(bike, cases, EVERY)
  const after = aimStances(changeBike(bike, change, now.rearTravel), cases, EVERY)
  const places = axlePlaces(bike, now)
  const reading = (aim: AimId): ToldReading => ({
    aim,
    now: aimReading(aim, before, places),
    after: aimReading(aim, after, places),
  })
  const known = {
    rates: input.ratesWithin / COVERS,
    preload: input.preloadWithin / COVERS,
    carried: input.riderWithin / COVERS,
  }
  const spread = spreadOfChange(bike, cases, change, aims, known, FROM_NOW)
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

function changesOf(input: Values, change: Way['change']): ToldChange[] {
  const pitches: Partial<Record<MeanId, number | undefined>> = {
    forkPreloadChange: input.forkAdjuster === 'outside' ? input.forkPitch : undefined,
    rearPreloadChange: input.rearPitch,
  }
  return MEANS.flatMap((mean) => {
    const [value, pitch] = [change[mean], pitches[mean]]
    if (value === undefined) return []
    return [{ mean, value, turns: pitch === undefined ? null : value / pitch }]
  })
}
