import { file, glob } from 'astro/loaders'
import { defineCollection } from 'astro:content'
import { z } from 'astro/zod'
import { parse } from 'yaml'
import { bikeSheet } from './bikes/sheet.ts'
import { edition } from './build/feed.ts'
import { fact } from './build/prose/storySchema.ts'
import { symptom } from './build/symptomSchema.ts'
import { checkTopic } from './checks/schema.ts'
import { ask, condition, danger, job, signoff, stretch } from './jobs/schema.ts'
import { lesson, testQuestion } from './lesson/schema.ts'
import { procedure } from './record/procedureSchema.ts'
import { compared as comparedRow, handed as handedRow, result } from './record/resultSchema.ts'

/* One schema a concern; what code works with is inferred from it, in its own room where there is one. References between entries (ids of cautions, chapters, sources …) are strings here: a broken
   reference does not fail an Astro build, so tests/content/references.test.ts checks them all. */

const ids = z.array(z.string()).default([])
const texts = z.array(z.string()).default([])

const chapters = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/chapters' }),
  schema: z.strictObject({
    /** the driving question */
    title: z.string(),
    /** short name for lists */
    name: z.string(),
    order: z.number().int(),
    minutes: z.number().int(),
    needs: ids,
    summary: z.string(),
    able: texts,
    wrong: texts,
    calculators: ids,
    procedures: ids,
    cautions: ids,
    record: texts,
    decides: texts,
    stop: texts,
    next: z.strictObject({ text: z.string(), procedure: z.string() }),
    sources: ids,
    words: texts,
  }),
})

export const SIGNALS = ['WARNING', 'CAUTION', 'NOTICE'] as const

const cautions = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/cautions' }),
  schema: z.strictObject({
    title: z.string(),
    signal: z.enum(SIGNALS),
    topic: z.enum(['falling', 'springs', 'assembly', 'brakes', 'after', 'waste']),
    /** hazard words of procedure steps that this caution answers */
    covers: ids,
    hazard: z.string(),
    consequence: z.string(),
    avoid: z.string(),
    defers: z.array(z.enum(['maker', 'law', 'workshop'])),
    defersText: z.string(),
    words: texts,
    sources: ids,
  }),
})

const procedures = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/procedures' }),
  schema: procedure,
})

const calculators = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/calculators' }),
  schema: z.strictObject({
    summary: z.string(),
    order: z.number().int(),
    chapters: ids,
    procedures: ids,
    cautions: ids,
    measure: z
      .array(
        z.strictObject({ input: z.string(), how: z.string(), procedure: z.string().optional() }),
      )
      .default([]),
    /** inputs that are read off the bike: a number's field without a slider */
    readings: ids,
    words: texts,
    sources: ids,
  }),
})

const yaml = (text: string): Record<string, Record<string, unknown>>[] => parse(text)

const glossary = defineCollection({
  loader: file('content/glossary.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    term: z.string(),
    also: texts,
    short: z.string(),
    chapter: z.string().optional(),
    see: ids,
  }),
})

const symptoms = defineCollection({
  loader: file('content/symptoms.yaml', { parser: yaml }),
  schema: symptom,
})

/** The change log: what a reader finds changed. */
const editions = defineCollection({
  loader: file('content/editions.yaml', { parser: yaml }),
  schema: edition,
})

const sources = defineCollection({
  loader: file('content/sources.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    title: z.string(),
    authors: z.string().optional(),
    year: z.number().int().optional(),
    publisher: z.string().optional(),
    part: z.string().optional(),
    kind: z.enum(['standard', 'book', 'paper', 'dataset', 'handbook', 'practice']),
    seen: z.enum(['printed', 'public-text', 'transcription', 'memory']),
    note: z.string().optional(),
  }),
})

/** The one job that the chapters tell. */
const story = defineCollection({
  loader: file('content/story.yaml', { parser: yaml }),
  schema: fact,
})

/** A letter of the formulas, in TeX, with its one meaning. */
const symbols = defineCollection({
  loader: file('content/symbols.yaml', { parser: yaml }),
  schema: z.strictObject({ id: z.string(), what: z.string(), unit: z.string(), group: z.string() }),
})

const bikes = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/bikes' }),
  schema: bikeSheet,
})

const checks = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/checks' }),
  schema: checkTopic,
})

const asks = defineCollection({
  loader: file('content/asks.yaml', { parser: yaml }),
  schema: ask,
})

const dangers = defineCollection({
  loader: file('content/dangers.yaml', { parser: yaml }),
  schema: danger,
})

const stretches = defineCollection({
  loader: file('content/stretches.yaml', { parser: yaml }),
  schema: stretch,
})

const conditions = defineCollection({
  loader: file('content/conditions.yaml', { parser: yaml }),
  schema: condition,
})

const signoffs = defineCollection({
  loader: file('content/signoffs.yaml', { parser: yaml }),
  schema: signoff,
})

const results = defineCollection({
  loader: file('content/results.yaml', { parser: yaml }),
  schema: result,
})

const compared = defineCollection({
  loader: file('content/compared.yaml', { parser: yaml }),
  schema: comparedRow,
})

const handed = defineCollection({
  loader: file('content/handed.yaml', { parser: yaml }),
  schema: handedRow,
})

const jobs = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/jobs' }),
  schema: job,
})

const lessons = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/lessons' }),
  schema: lesson,
})

/** The test that a class takes before and after. */
const classTest = defineCollection({
  loader: file('content/class-test.yaml', { parser: yaml }),
  schema: testQuestion,
})

/** A sheet of one page for each learner; its key has the same id under `key/`. */
const handouts = defineCollection({
  loader: glob({ pattern: '**/*.mdx', base: './content/handouts' }),
  schema: z.strictObject({
    title: z.string(),
    minutes: z.number().int().optional(),
    kind: z.string().optional(),
  }),
})

export const collections = {
  chapters,
  cautions,
  lessons,
  handouts,
  classTest,
  procedures,
  calculators,
  glossary,
  editions,
  symptoms,
  sources,
  bikes,
  checks,
  asks,
  dangers,
  stretches,
  conditions,
  signoffs,
  results,
  compared,
  handed,
  jobs,
  story,
  symbols,
}
