import { file, glob } from 'astro/loaders'
import { defineCollection } from 'astro:content'
import { z } from 'astro/zod'
import { parse } from 'yaml'
import { bikeSheet } from './bikes/sheet.ts'

/* One schema a concern. References between entries (ids of cautions, chapters, sources …) are strings here: a broken
   reference does not fail an Astro build, so tests/content/references.test.ts checks them all. */

const ids = z.array(z.string()).default([])
const texts = z.array(z.string()).default([])
const window = z.tuple([z.number(), z.number()])

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

const reading = z.strictObject({
  id: z.string(),
  label: z.string(),
  quantity: z.enum([
    'length',
    'force',
    'mass',
    'angle',
    'pressure',
    'temperature',
    'volume',
    'count',
    'text',
    'rate',
    'time',
  ]),
  unit: z.string().default(''),
  range: window.optional(),
  repeat: z.number().int().optional(),
  to: z.strictObject({ calculator: z.string(), input: z.string() }).optional(),
  hint: z.string().optional(),
})

const step = z.strictObject({
  id: z.string(),
  do: z.string(),
  detail: z.string().optional(),
  hazards: ids,
  cautions: ids,
  readings: ids,
  picture: z.string().optional(),
})

const procedures = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/procedures' }),
  schema: z.strictObject({
    title: z.string(),
    order: z.number().int(),
    next: z.string().optional(),
    skip: z.string().optional(),
    skipTo: z.string().optional(),
    purpose: z.string(),
    minutes: window,
    people: z.number().int(),
    peopleWhy: z.string().optional(),
    tools: texts,
    parts: texts,
    readings: z.array(reading).default([]),
    manual: texts,
    stop: texts,
    before: ids,
    steps: z.array(step),
    related: z
      .strictObject({ chapters: ids, calculators: ids })
      .default({ chapters: [], calculators: [] }),
    sources: ids,
    words: texts,
  }),
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

const cause = z.strictObject({
  cause: z.string(),
  measure: z.string(),
  shows: z.string(),
  procedure: z.string().optional(),
  /** the step of that procedure that tests it */
  step: z.string().optional(),
  calculator: z.string().optional(),
  chapter: z.string().optional(),
})

/** What people commonly advise, and what it does. */
const told = z.strictObject({
  says: z.string(),
  answer: z.string(),
  chapter: z.string().optional(),
  calculator: z.string().optional(),
})

const symptoms = defineCollection({
  loader: file('content/symptoms.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    feel: z.string(),
    also: texts,
    when: z.enum(['braking', 'turning', 'bumps', 'straight', 'standing', 'after-work']),
    end: z.enum(['front', 'rear', 'both']),
    /** a still that shows where to look */
    picture: z.string(),
    told: z.array(told).default([]),
    causes: z.array(cause).min(1),
    cautions: ids,
    stop: z.string(),
  }),
})

/** The change log: what a reader finds changed. */
const editions = defineCollection({
  loader: file('content/editions.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    title: z.string(),
    /** none while it is still being written */
    date: z.iso
      .date()
      .transform((day) => new Date(day))
      .optional(),
    summary: z.string(),
    changes: z.array(z.string()).min(1),
  }),
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

/** A calculator's result in one state. */
const result = z.strictObject({
  calculator: z.string(),
  given: z.record(z.string(), z.union([z.number(), z.string()])).default({}),
  against: z.record(z.string(), z.union([z.number(), z.string()])).optional(),
  as: z.enum(['change', 'percent', 'ratio']).optional(),
  output: z.string(),
  digits: z.number().int().optional(),
  end: z.enum(['low', 'high']).optional(),
})

/** A fact of the one job that the chapters tell. */
const story = defineCollection({
  loader: file('content/story.yaml', { parser: yaml }),
  schema: result.extend({
    id: z.string(),
    what: z.string(),
    /** what it is called on the roadster's card, which has it from its chapter on */
    line: z.string().optional(),
    chapter: z.string(),
    /** drops the sign of a change */
    size: z.boolean().default(false),
    /** other calculators that must give the same in this state */
    same: z.array(result).default([]),
  }),
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

/** One published value: see src/checks/published.ts, which runs it. */
const published = z.strictObject({
  what: z.string(),
  of: z.string().optional(),
  is: z.union([z.string(), z.number()]),
  tolerance: z.number().nonnegative(),
  because: z.string().optional(),
  sameAs: z.string().optional(),
})

const check = z.strictObject({
  id: z.string(),
  title: z.string(),
  call: z.string(),
  with: z.record(z.string(), z.unknown()).optional(),
  expect: z.array(published).min(1),
  because: z.string().optional(),
  source: z.string(),
  where: z.string().optional(),
  provenance: z.enum(['printed', 'public-text', 'transcription', 'memory', 'practice']),
  note: z.string().optional(),
  calculator: z.string().optional(),
  uncounted: z.enum(['evaluated', 'round-trip', 'theorem', 'definition']).optional(),
  given: z
    .record(z.string(), z.union([z.number(), z.string(), z.array(z.array(z.number()))]))
    .optional(),
})

const checks = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/checks' }),
  // `shared` holds what several checks refer to by anchor
  schema: z.strictObject({
    topic: z.string(),
    order: z.number().int(),
    about: z.string(),
    shared: z.unknown().optional(),
    checks: z.array(check).min(1),
  }),
})

/** For each question named, the answers with which something applies. */
const when = z.record(z.string(), z.array(z.string()).min(1))

const asks = defineCollection({
  loader: file('content/asks.yaml', { parser: yaml }),
  schema: z.strictObject({
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
  }),
})

const dangers = defineCollection({
  loader: file('content/dangers.yaml', { parser: yaml }),
  schema: z.strictObject({
    /** the caution's id */
    id: z.string(),
    line: z.string(),
    at: z
      .array(z.strictObject({ step: z.string(), line: z.string(), when: when.optional() }))
      .default([]),
  }),
})

/** A place in a job that waits for one thing. */
const gate = z.strictObject({
  id: z.string(),
  verb: z.string(),
  title: z.string(),
  go: z.string(),
  not: z.string(),
  /** calculators that it opens */
  opens: ids,
  sign: z.array(z.string()).min(1),
})

/** Steps of procedures by their ids. */
const take = z
  .array(z.strictObject({ of: z.string(), steps: z.array(z.string()).min(1) }))
  .default([])

const stretches = defineCollection({
  loader: file('content/stretches.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    title: z.string(),
    /** where its steps need fewer than their whole procedure */
    people: z.number().int().optional(),
    take,
    gate: gate.optional(),
  }),
})

/** A part of a job: a stretch by its id, or one of its own; then perhaps a gate. */
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

const conditions = defineCollection({
  loader: file('content/conditions.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    only: z.string(),
    when,
    /** "procedure/step" */
    steps: z.array(z.string()).min(1),
  }),
})

const signoffs = defineCollection({
  loader: file('content/signoffs.yaml', { parser: yaml }),
  schema: z.strictObject({
    /** "procedure/step" */
    id: z.string(),
    /** what a tightening step has a blank for: the maker's torque of each */
    torques: texts,
    /** whether somebody signs for it */
    initials: z.boolean().default(false),
  }),
})

/** Where a calculator's input comes from on a sheet: see src/record/worked.ts. */
const pair = z.tuple([z.string(), z.string()])
const source = z.union([
  z.string(),
  z.strictObject({ mean: z.array(z.string()).min(2) }),
  z.strictObject({ less: pair, from: z.number().optional() }),
  z.strictObject({ ratio: z.tuple([pair, pair]) }),
  z.strictObject({ rows: z.array(pair).min(2), give: z.string().optional() }),
])
const feeding = z.record(z.string(), source)

const results = defineCollection({
  loader: file('content/results.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    label: z.string(),
    calculator: z.string(),
    /** "procedure/step" of each step that shows it */
    at: ids,
    inputs: feeding,
    /** inputs that are used where they were read */
    maybe: feeding.default({}),
    /** inputs that a convention sets */
    given: z.record(z.string(), z.union([z.number(), z.string()])).default({}),
    /** outputs in sight; `with` an input of `maybe` only where that was read */
    shows: z.array(z.strictObject({ output: z.string(), with: z.string().optional() })).min(1),
  }),
})

const compared = defineCollection({
  loader: file('content/compared.yaml', { parser: yaml }),
  schema: z.strictObject({
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
  }),
})

const handed = defineCollection({
  loader: file('content/handed.yaml', { parser: yaml }),
  schema: z.strictObject({
    order: z.number().int(),
    id: z.string(),
    label: z.string(),
    /** readings by their ids */
    before: z.string(),
    after: z.string(),
  }),
})

const jobs = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/jobs' }),
  schema: z.strictObject({
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
  }),
})

/** A lesson: its plan, what it needs, and the sheets of its pack in the body. */
const lessons = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/lessons' }),
  schema: z.strictObject({
    title: z.string(),
    order: z.number().int(),
    /** what the plan adds up to */
    minutes: z.number().int(),
    people: window,
    summary: z.string(),
    able: texts,
    /** read out to the class */
    cautions: ids,
    plan: z
      .array(
        z.strictObject({
          minutes: z.number().int().positive(),
          title: z.string(),
          text: z.string(),
        }),
      )
      .min(1),
    material: texts,
    handouts: ids,
    /** has the test before and after among its sheets */
    test: z.boolean().default(false),
    /** chapters to read before */
    reading: ids,
    /** questions for two weeks later: a worksheet that everybody opens by its address */
    later: z.strictObject({ seed: z.number().int(), n: z.number().int(), topics: ids }).optional(),
    words: texts,
  }),
})

/** The test that a class takes before and after. */
const classTest = defineCollection({
  loader: file('content/class-test.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    order: z.number().int(),
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
  }),
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
