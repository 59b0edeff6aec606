import { z } from 'astro/zod'

/* What is written of lessons: content/lessons and content/class-test.yaml. Browsers take the types alone. */

const texts = z.array(z.string()).default([])

/** One stretch of a lesson’s plan. */
const stretch = z.strictObject({
  minutes: z.number().int().positive(),
  title: z.string(),
  text: z.string(),
})

/** A lesson: its plan, what it needs, and the sheets of its pack in the body. */
export const lesson = z.strictObject({
  title: z.string(),
  order: z.number().int(),
  /** what the plan adds up to */
  minutes: z.number().int(),
  people: z.tuple([z.number(), z.number()]),
  summary: z.string(),
  able: texts,
  /** read out to the class */
  cautions: texts,
  plan: z.array(stretch).min(1),
  material: texts,
  handouts: texts,
  /** has the test before and after among its sheets */
  test: z.boolean().default(false),
  /** chapters to read before */
  reading: texts,
  /** questions for two weeks later: a worksheet that everybody opens by its address */
  later: z.strictObject({ seed: z.number().int(), n: z.number().int(), topics: texts }).optional(),
  words: texts,
})

/** One question of the test that a class takes before and after. */
export const testQuestion = z.strictObject({
  id: z.string(),
  order: z.number().int(),
  /** in a few words, for lists */
  about: z.string(),
  ask: z.string(),
  options: z
    .array(
      z.strictObject({
        text: z.string(),
        right: z.boolean().optional(),
        /** the wrong idea, as a chapter names it */
        idea: z.string().optional(),
      }),
    )
    .length(4),
  because: z.string(),
})

export type Stretch = z.infer<typeof stretch>
export type TestQuestion = Omit<z.infer<typeof testQuestion>, 'order'>
