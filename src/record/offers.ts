import { FIGURES } from '../bikes/figures.ts'
import type { FigureDefinition } from '../bikes/figure.ts'
import { inUnit } from './carry.ts'
import type { Taken } from './carry.ts'
import { readingsOf } from './readingsOf.ts'
import type { ReadingTaken } from './readingsOf.ts'
import type { BikeRecord, Figure, JobRecord } from './records.ts'

/* Figures that the readings of a bike's jobs would give. They are offered, never taken over unasked. */

export interface Offer {
  definition: FigureDefinition
  figure: Figure
}

const agreed = (all: readonly ReadingTaken[]): ReadingTaken[] =>
  all.filter(({ mean }) => !mean.apart)

const latest = (all: readonly ReadingTaken[], id: string): ReadingTaken | undefined =>
  agreed(all).findLast(({ spec }) => spec.id === id)

const half = (value: number): Pick<Figure, 'plusMinus'> =>
  value > 0 ? { plusMinus: Number(value.toPrecision(3)) } : {}

const ofReading = ({ job, part, spec }: ReadingTaken): string => `${job.id} ${part.id} ${spec.id}`

/** A figure that is a reading as it stands. */
function direct(definition: FigureDefinition, all: readonly ReadingTaken[]): Figure | null {
  for (const id of definition.reads ?? []) {
    const taken = latest(all, id)
    const value = taken && inUnit(taken.mean.mean, taken.spec.unit, definition.unit)
    if (taken && value != null)
      return {
        value: Number(value.toPrecision(6)),
        ...half(taken.mean.spread / 2),
        from: 'measured',
        date: taken.at,
        of: ofReading(taken),
      }
  }
  return null
}

/** Sags: how far each end sinks from hanging to the middle of pushed down and lifted. The longest names first: a reading after the work is newer. */
const SAGS: Readonly<Record<string, { hanging: readonly string[]; rests: readonly string[] }>> = {
  frontStaticSag: { hanging: ['extendedAfter', 'extended'], rests: ['staticSettled'] },
  frontRiderSag: { hanging: ['extendedAfter', 'extended'], rests: ['riderSettled'] },
  rearStaticSag: { hanging: ['rearExtended'], rests: ['rearStatic'] },
  rearRiderSag: { hanging: ['rearExtended'], rests: ['rearRider'] },
}

function sagIn(all: readonly ReadingTaken[], id: string): Figure | null {
  const rule = SAGS[id]
  if (!rule) return null
  const hanging = rule.hanging.map((name) => latest(all, name)).find((each) => each !== undefined)
  if (!hanging) return null
  for (const rest of rule.rests.flatMap((name) => ['After', ''].map((after) => [name, after]))) {
    const [name = '', after = ''] = rest
    const up = latest(all, `${name}Up${after}`)
    const down =
      up &&
      latest(
        all.filter(({ part }) => part === up.part),
        `${name}Down${after}`,
      )
    if (!up || !down) continue
    const value = hanging.mean.mean - (up.mean.mean + down.mean.mean) / 2
    const spread = Math.hypot(hanging.mean.spread, up.mean.spread / 2, down.mean.spread / 2) / 2
    return {
      value: Number(value.toPrecision(6)),
      ...half(spread),
      from: 'measured',
      date: up.at,
      of: ofReading(up),
    }
  }
  return null
}

/** What the readings would give that the bike has not, or has otherwise. */
export function offersFor(
  bike: BikeRecord,
  jobs: readonly JobRecord[],
  all: readonly Taken[],
): Offer[] {
  const read = readingsOf(
    jobs.filter((job) => job.bike === bike.id),
    all,
  )
  return FIGURES.flatMap((definition) => {
    const figure = direct(definition, read) ?? sagIn(read, definition.id)
    const [low, high] = definition.range
    if (figure === null || figure.value < low || figure.value > high) return []
    const now = Object.hasOwn(bike.figures, definition.id) ? bike.figures[definition.id] : undefined
    // a newer figure is not put back to an older reading, nor to the same number
    if (
      now &&
      (now.date > figure.date || Math.abs(now.value - figure.value) < 1e-4 * Math.abs(high))
    )
      return []
    return [{ definition, figure }]
  })
}
