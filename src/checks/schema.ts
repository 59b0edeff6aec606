import { z } from 'astro/zod'

/* What is written of checks against the world outside: content/checks. src/checks/published.ts runs them. */

/** One published value: what it is, as printed with its unit, and how far a right answer may lie from it [that unit]. */
const published = z.strictObject({
  what: z.string(),
  /** path into the call's result ("front", "M.0.1"); absent where the result is the value */
  of: z.string().optional(),
  is: z.union([z.string(), z.number()]),
  tolerance: z.number().nonnegative(),
  /** why the tolerance is that wide; absent: the check's own */
  because: z.string().optional(),
  /** "id/what" of the value of which this is another form (the other side of a symmetric matrix, the same number rounded): shown, not counted */
  sameAs: z.string().optional(),
})

/** One call of the core, with the published values that it must reproduce. */
const check = z.strictObject({
  id: z.string(),
  title: z.string(),
  call: z.string(),
  /** inputs by name, with units ("0.037 in") */
  with: z.record(z.string(), z.unknown()).optional(),
  expect: z.array(published).min(1),
  because: z.string().optional(),
  source: z.string(),
  where: z.string().optional(),
  /** how far the published value was seen when the check was written down */
  provenance: z.enum(['printed', 'public-text', 'transcription', 'memory', 'practice']),
  note: z.string().optional(),
  /** the calculator that answers this question; with `given`, its inputs for a link, in its own units */
  calculator: z.string().optional(),
  /** why it is shown and not counted, though it is computed and must hold: worked out here by the source's formula; from an input that was worked out from the result; true of any numbers; a definition against itself */
  uncounted: z.enum(['evaluated', 'round-trip', 'theorem', 'definition']).optional(),
  given: z
    .record(z.string(), z.union([z.number(), z.string(), z.array(z.array(z.number()))]))
    .optional(),
})

/** One file of content/checks. */
export const checkTopic = z.strictObject({
  topic: z.string(),
  order: z.number().int(),
  about: z.string(),
  /** what several checks refer to by anchor */
  shared: z.unknown().optional(),
  checks: z.array(check).min(1),
})

export type PublishedValue = z.infer<typeof published>
export type Check = z.infer<typeof check>
export type Provenance = Check['provenance']
export type Uncounted = NonNullable<Check['uncounted']>
export type CheckTopic = z.infer<typeof checkTopic>
