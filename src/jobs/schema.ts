import { z } from 'astro/zod'

/* What is written of jobs: content/jobs, and the files that all cards share. Browsers take the types alone. */

const texts = z.array(z.string()).default([])

/** For each question named, the answers with which something applies. */
const when = z.record(z.string(), z.array(z.string()).min(1))

/** A question of a card. */
export const ask = z.strictObject({
  id: z.string(),
  ask: z.string(),
  tell: z.string(),
  options: z
    .array(
      z.strictObject({
        id: z.string(),
        label: z.string(),
        hint: z.string().optional(),
      }),
    )
    .min(2),
})

/** A caution's line on a card, and at single steps another. */
export const danger = z.strictObject({
  /** the caution's id */
  id: z.string(),
  line: z.string(),
  at: z
    .array(z.strictObject({ step: z.string(), line: z.string(), when: when.optional() }))
    .default([]),
})

/** A place in a job that waits for one thing. */
const gate = z.strictObject({
  id: z.string(),
  verb: z.string(),
  title: z.string(),
  go: z.string(),
  not: z.string(),
  /** calculators that it opens */
  opens: texts,
  sign: z.array(z.string()).min(1),
})

/** Steps of procedures by their ids. */
const take = z
  .array(z.strictObject({ of: z.string(), steps: z.array(z.string()).min(1) }))
  .default([])

/** A stretch of work that several jobs take. */
export const stretch = z.strictObject({
  id: z.string(),
  title: z.string(),
  /** where its steps need fewer than their whole procedure */
  people: z.number().int().optional(),
  take,
  gate: gate.optional(),
})

/** A part of a job: a stretch by its id, or one of its own; then perhaps a gate. What it takes itself comes after the stretch's steps. */
const part = z.strictObject({
  use: z.string().optional(),
  id: z.string().optional(),
  title: z.string().optional(),
  visit: z.string(),
  when: when.optional(),
  people: z.number().int().optional(),
  order: z.boolean().optional(),
  take,
  gate: gate.optional(),
})

/** The condition of steps, in words and as answers, on every card. */
export const condition = z.strictObject({
  id: z.string(),
  only: z.string(),
  when,
  /** "procedure/step" */
  steps: z.array(z.string()).min(1),
})

/** What a step is signed for with, on every card: the maker's torques, and initials. */
export const signoff = z.strictObject({
  /** "procedure/step" */
  id: z.string(),
  /** what a tightening step has a blank for: the maker's torque of each */
  torques: texts,
  /** whether somebody signs for it */
  initials: z.boolean().default(false),
})

/** A job card. */
export const job = z.strictObject({
  title: z.string(),
  order: z.number().int(),
  purpose: z.string(),
  words: texts,
  asks: z.array(z.string()),
  /** answers that the job itself settles */
  given: when.default({}),
  /** by question and answer: why the job ends early with it, and what to do instead */
  stops: z.record(z.string(), z.record(z.string(), z.string())),
  visits: z.array(z.strictObject({ id: z.string(), title: z.string() })).min(1),
  parts: z.array(part).min(1),
  /** what the rider should feel afterwards, and what ends the ride: on the hand-over sheet */
  feels: texts,
  ends: texts,
  /** what is ordered */
  list: z.array(z.strictObject({ what: z.string(), note: z.string(), unit: z.string() })),
})

export type AskText = z.infer<typeof ask>
export type DangerText = z.infer<typeof danger>
export type GateText = z.infer<typeof gate>
export type StretchText = z.infer<typeof stretch>
export type PartWritten = z.infer<typeof part>
export type ConditionText = z.infer<typeof condition>
export type SignoffText = z.infer<typeof signoff>
export type JobWritten = z.infer<typeof job>
