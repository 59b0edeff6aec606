import type { When } from './applies.ts'
import type { GateText, JobText, PartText } from './job.ts'

/* A job as it is written, made whole: stretches that several jobs share, and what holds for a step on every card. */

/** A stretch of work that several jobs take. */
export interface StretchText {
  id: string
  title: string
  people?: number | undefined
  take: PartText['take']
  gate?: GateText | undefined
}

/** A part as a job writes it: its own, or a stretch by its id. What it takes itself comes after the stretch's steps. */
export interface PartWritten {
  use?: string | undefined
  id?: string | undefined
  title?: string | undefined
  visit: string
  when?: When | undefined
  people?: number | undefined
  order?: boolean | undefined
  take: PartText['take']
  gate?: GateText | undefined
}

export interface JobWritten {
  asks: readonly string[]
  /** answers that the job itself settles */
  given: When
  visits: JobText['visits']
  parts: readonly PartWritten[]
}

/** The condition of steps, in words and as answers, on every card. */
export interface ConditionText {
  id: string
  only: string
  when: When
  steps: readonly string[]
}

/** What a step is signed for with, on every card: the maker's torques, and initials. */
export interface SignoffText {
  /** "procedure/step" */
  id: string
  torques: readonly string[]
  initials: boolean
}

/** What all jobs share. */
export interface Shared {
  stretches: readonly StretchText[]
  conditions: readonly ConditionText[]
  signoffs: readonly SignoffText[]
}

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
export function wholeJob(job: JobWritten, shared: Shared): JobText {
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
