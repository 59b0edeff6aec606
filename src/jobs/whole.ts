import type { When } from './applies.ts'
import type { JobText, PartText } from './job.ts'
import type { ConditionText, JobWritten, PartWritten, SignoffText, StretchText } from './schema.ts'

/* A job as it is written, made whole: stretches that several jobs share, and what holds for a step on every card. */

/** What all jobs share. */
export interface Shared {
  stretches: readonly StretchText[]
  conditions: readonly ConditionText[]
  signoffs: readonly SignoffText[]
}

/** What of a job its steps follow from. */
export type JobSteps = Pick<JobWritten, 'asks' | 'given' | 'visits' | 'parts'>

function partWhole(part: PartWritten, stretches: readonly StretchText[]): PartText {
  const stretch = stretches.find(({ id }) => id === part.use)
  if (part.use !== undefined && !stretch) throw new Error(`There is no stretch “${part.use}”`)
  const id = part.id ?? stretch?.id
  const title = part.title ?? stretch?.title
  if (id === undefined || title === undefined)
    throw new Error('A part without a stretch needs an id and a title')
  return {
    id,
    title,
    visit: part.visit,
    when: part.when,
    people: part.people ?? stretch?.people,
    order: part.order,
    take: [...(stretch?.take ?? []), ...part.take],
    gate: part.gate ?? stretch?.gate,
  }
}

/** A condition without what the job settles itself; null where that rules its steps out. */
function open(when: When, given: When): When | null {
  const settled = Object.entries(when).filter(([ask]) => given[ask])
  if (settled.some(([ask, wanted]) => !given[ask]!.some((answer) => wanted.includes(answer))))
    return null
  return Object.fromEntries(Object.entries(when).filter(([ask]) => !given[ask]))
}

/** A job with its stretches written out, and the conditions, torques and initials of the steps that it takes. */
export function wholeJob(job: JobSteps, shared: Shared): JobText {
  const { given } = job
  const conditions = shared.conditions.map((rule) => ({ ...rule, when: open(rule.when, given) }))
  const out = new Set(conditions.flatMap(({ when, steps }) => (when ? [] : steps)))
  const parts = job.parts
    .map((part) => partWhole(part, shared.stretches))
    .map((part) => ({
      ...part,
      take: part.take
        .map(({ of, steps }) => ({ of, steps: steps.filter((id) => !out.has(`${of}/${id}`)) }))
        .filter(({ steps }) => steps.length > 0),
    }))
  const taken = new Set(
    parts.flatMap(({ take }) => take.flatMap(({ of, steps }) => steps.map((id) => `${of}/${id}`))),
  )
  const signed = shared.signoffs.filter(({ id }) => taken.has(id))
  return {
    asks: job.asks,
    visits: job.visits,
    parts,
    rules: conditions
      .flatMap(({ only, when, steps }) =>
        when && Object.keys(when).length > 0 ? [{ only, when, steps }] : [],
      )
      .map((rule) => ({ ...rule, steps: rule.steps.filter((step) => taken.has(step)) }))
      .filter(({ steps }) => steps.length > 0),
    blanks: Object.fromEntries(
      signed.flatMap(({ id, torques }) => (torques.length > 0 ? [[id, torques]] : [])),
    ),
    initials: signed.filter(({ initials }) => initials).map(({ id }) => id),
  }
}
