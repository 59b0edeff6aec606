import { z } from 'astro/zod'

/* What is written of results: which readings make which input of which calculator, and which results stand side by side. Browsers take the types alone. */

const pair = z.tuple([z.string(), z.string()])

/** Where an input comes from: a reading's mean, the mean of several, one less another, the ratio of two such differences, or rows of a table. */
const source = z.union([
  z.string(),
  z.strictObject({ mean: z.array(z.string()).min(2) }),
  z.strictObject({ less: pair, from: z.number().optional() }),
  z.strictObject({ ratio: z.tuple([pair, pair]) }),
  z.strictObject({ rows: z.array(pair).min(2), give: z.string().optional() }),
])
const feeding = z.record(z.string(), source)

export const result = z.strictObject({
  id: z.string(),
  label: z.string(),
  calculator: z.string(),
  /** "procedure/step" of each step that shows it */
  at: z.array(z.string()).default([]),
  inputs: feeding,
  /** inputs that are used where they were read */
  maybe: feeding.default({}),
  /** inputs that the result does not hang on, or that a convention sets */
  given: z.record(z.string(), z.union([z.number(), z.string()])).default({}),
  /** outputs in sight; `with` an input of `maybe` only where that was read */
  shows: z.array(z.strictObject({ output: z.string(), with: z.string().optional() })).min(1),
})

export const compared = z.strictObject({
  order: z.number().int(),
  id: z.string(),
  label: z.string(),
  /** results by their ids */
  before: z.string(),
  after: z.string(),
  output: z.string(),
  /** the readings in which it was worked out, and its ± */
  forecast: z.string().optional(),
  within: z.string().optional(),
})

export const handed = z.strictObject({
  order: z.number().int(),
  id: z.string(),
  label: z.string(),
  /** readings by their ids */
  before: z.string(),
  after: z.string(),
})

export type Source = z.infer<typeof source>
export type ResultWritten = z.infer<typeof result>
export type Compared = z.infer<typeof compared>
export type Handed = z.infer<typeof handed>
