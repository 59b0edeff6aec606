import { z } from 'astro/zod'

const given = z.record(z.string(), z.union([z.number(), z.string()]))

/** A calculator's result in one state. */
const result = z.strictObject({
  calculator: z.string(),
  given: given.default({}),
  against: given.optional(),
  as: z.enum(['change', 'percent', 'ratio']).optional(),
  output: z.string(),
  digits: z.number().int().optional(),
  end: z.enum(['low', 'high']).optional(),
})

/** A fact of the one job that the chapters tell: content/story.yaml. */
export const fact = result.extend({
  id: z.string(),
  what: z.string(),
  /** what it is called on the roadster's card, which has it from its chapter on */
  line: z.string().optional(),
  chapter: z.string(),
  /** drops the sign of a change */
  size: z.boolean().default(false),
  /** other calculators that must give the same in this state */
  same: z.array(result).default([]),
})

export type Fact = z.infer<typeof fact>
