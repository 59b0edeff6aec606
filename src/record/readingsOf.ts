import type { Taken } from './carry.ts'
import { meanOf } from './reading.ts'
import type { Mean, ReadingSpec } from './reading.ts'
import type { JobRecord, PartRecord } from './records.ts'

/* What was read in jobs, part by part. */

/** A reading as it was taken in one part of a job. */
export interface ReadingTaken {
  job: JobRecord
  part: PartRecord
  spec: ReadingSpec
  /** in the reading's unit */
  mean: Mean
  /** the day of it; the job's where the reading has none */
  at: string
}

/** One part's reading; null where nothing readable was written. */
function readingIn(job: JobRecord, part: PartRecord, spec: ReadingSpec): ReadingTaken | null {
  const record = Object.hasOwn(part.readings, spec.id) ? part.readings[spec.id] : undefined
  if (record === undefined || spec.quantity === 'text') return null
  const mean = meanOf(spec, record.boxes)
  return mean === null ? null : { job, part, spec, mean, at: record.at ?? job.opened }
}

/** All numbers read in these jobs, the oldest job first. */
export function readingsOf(jobs: readonly JobRecord[], all: readonly Taken[]): ReadingTaken[] {
  const specs = new Map(all.map(({ procedure, spec }) => [`${procedure} ${spec.id}`, spec]))
  return [...jobs]
    .sort((one, other) => one.opened.localeCompare(other.opened))
    .flatMap((job) =>
      job.parts.flatMap((part) =>
        Object.keys(part.readings).flatMap((id) => {
          const spec = specs.get(`${part.procedure} ${id}`)
          return (spec && readingIn(job, part, spec)) ?? []
        }),
      ),
    )
}
