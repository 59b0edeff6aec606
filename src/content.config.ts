import { file, glob } from 'astro/loaders'
import { defineCollection } from 'astro:content'
import { z } from 'astro/zod'
import { parse } from 'yaml'

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
  quantity: z.enum(['length', 'force', 'mass', 'angle', 'pressure', 'temperature', 'count', 'text', 'rate', 'time']),
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
    related: z.strictObject({ chapters: ids, calculators: ids }).default({ chapters: [], calculators: [] }),
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
    measure: z.array(z.strictObject({ input: z.string(), how: z.string(), procedure: z.string().optional() })).default([]),
    words: texts,
    sources: ids,
  }),
})

const yaml = (text: string): Record<string, Record<string, unknown>>[] => parse(text)

const glossary = defineCollection({
  loader: file('content/glossary.yaml', { parser: yaml }),
  schema: z.strictObject({ id: z.string(), term: z.string(), also: texts, short: z.string(), chapter: z.string().optional(), see: ids }),
})

const cause = z.strictObject({
  cause: z.string(),
  measure: z.string(),
  shows: z.string(),
  procedure: z.string().optional(),
  calculator: z.string().optional(),
  chapter: z.string().optional(),
})

const symptoms = defineCollection({
  loader: file('content/symptoms.yaml', { parser: yaml }),
  schema: z.strictObject({
    id: z.string(),
    feel: z.string(),
    also: texts,
    when: z.enum(['braking', 'turning', 'bumps', 'straight', 'standing', 'after-work']),
    end: z.enum(['front', 'rear', 'both']),
    causes: z.array(cause).min(1),
    cautions: ids,
    stop: z.string().optional(),
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

const point = z.strictObject({ x: z.number(), z: z.number() })
const load = point.extend({ mass: z.number() })
const sagWindow = z.strictObject({ static: window, rider: window })

const bikes = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/bikes' }),
  schema: z.strictObject({
    name: z.string(),
    about: z.string(),
    quotedAt: z.strictObject({ frontTravel: z.number(), rearTravel: z.number() }),
    wheelbase: z.number(),
    rake: z.number(),
    forkOffset: z.number(),
    frontTyre: z.string(),
    rearTyre: z.string(),
    frontRadius: z.number(),
    rearRadius: z.number(),
    pivot: point,
    mass: z.number(),
    frontShare: z.number(),
    centreOfGravityHeight: z.number(),
    frontUnsprungMass: z.number(),
    rearUnsprungMass: z.number(),
    fork: z.strictObject({
      kind: z.string(),
      travel: z.number(),
      springRate: z.number(),
      preload: z.number(),
      tubeDiameter: z.number(),
      boreDiameter: z.number(),
      airHeight: z.number(),
      stackVolume: z.number(),
      friction: z.number(),
      topOut: z.strictObject({ rate: z.number(), length: z.number() }).optional(),
      exposedTube: z.number(),
    }),
    rear: z.strictObject({
      shocks: z.number(),
      travel: z.number(),
      springRate: z.number(),
      preload: z.number(),
      motionRatio: z.strictObject({ initial: z.number(), slope: z.number() }),
      gasForce: z.number(),
      friction: z.number(),
    }),
    rider: load,
    passenger: load,
    luggage: load,
    frontSagWindow: sagWindow,
    rearSagWindow: sagWindow,
  }),
})

/** One published value: see src/calculators/checks.ts, which runs it. */
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
  given: z.record(z.string(), z.union([z.number(), z.string(), z.array(z.array(z.number()))])).optional(),
})

const checks = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/checks' }),
  // `shared` holds what several checks refer to by anchor
  schema: z.strictObject({ topic: z.string(), order: z.number().int(), about: z.string(), shared: z.unknown().optional(), checks: z.array(check).min(1) }),
})

export const collections = { chapters, cautions, procedures, calculators, glossary, symptoms, sources, bikes, checks }
