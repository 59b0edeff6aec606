import type { Taken } from './carry.ts'
import { readingsOf } from './readingsOf.ts'
import type { ReadingTaken } from './readingsOf.ts'
import type { JobRecord } from './records.ts'

/* A reading that was taken more than once, over time. */

/** One time it was taken [the series' unit]: the middle, and how far it was spread or how far friction let it rest. */
export interface SeriesPoint {
  job: string
  part: string
  at: string
  low: number
  high: number
  mean: number
}

export interface Series {
  id: string
  label: string
  unit: string
  points: readonly SeriesPoint[]
}

/** The name that a reading has before and after the work, pushed down or lifted. */
const nameOf = (id: string): string => id.replace(/(After|Corrected|Before)$/, '')
const SIDES = /(Down|Up)$/

const labelOf = (label: string): string =>
  label
    .replace(/ after (the (work|change)|correcting)/, '')
    .replace(/,? after a (push down|lift)$/, '')

const pointOf = ({ job, part, at, mean }: ReadingTaken): SeriesPoint => ({
  job: job.id,
  part: part.id,
  at,
  low: mean.mean - mean.spread / 2,
  high: mean.mean + mean.spread / 2,
  mean: mean.mean,
})

/** Pushed down and lifted, read in the same part: friction lets it rest anywhere between. */
function banded(down: SeriesPoint, up: SeriesPoint): SeriesPoint {
  return {
    ...down,
    low: Math.min(down.mean, up.mean),
    high: Math.max(down.mean, up.mean),
    mean: (down.mean + up.mean) / 2,
  }
}

/** Every reading that was taken at least twice, in the order in which it was taken. A reading pushed down and the same one lifted are one, with friction's band. */
export function repeated(jobs: readonly JobRecord[], all: readonly Taken[]): Series[] {
  const found = new Map<
    string,
    { label: string; unit: string; by: Map<string, Map<string, SeriesPoint>> }
  >()
  for (const taken of readingsOf(jobs, all)) {
    const name = nameOf(taken.spec.id)
    const series = found.get(name.replace(SIDES, '')) ?? {
      label: labelOf(taken.spec.label),
      unit: taken.spec.unit,
      by: new Map<string, Map<string, SeriesPoint>>(),
    }
    found.set(name.replace(SIDES, ''), series)
    const when = `${taken.job.id} ${taken.part.id} ${taken.spec.id.slice(name.length)}`
    const sides = series.by.get(when) ?? new Map<string, SeriesPoint>()
    series.by.set(when, sides)
    sides.set(SIDES.exec(name)?.[1] ?? '', pointOf(taken))
  }
  return [...found].flatMap(([id, { label, unit, by }]) => {
    const points = [...by.values()].flatMap((sides) => {
      const [down, up] = [sides.get('Down'), sides.get('Up')]
      return down && up ? [banded(down, up)] : [...sides.values()].slice(0, 1)
    })
    const ordered = points.sort((one, other) => one.at.localeCompare(other.at))
    return ordered.length < 2 ? [] : [{ id, label, unit, points: ordered }]
  })
}
