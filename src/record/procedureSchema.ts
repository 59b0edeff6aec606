import { z } from 'astro/zod'

/* What is written of procedures: content/procedures. Browsers take the types alone. */

const texts = z.array(z.string()).default([])
const window = z.tuple([z.number(), z.number()])

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
  hazards: texts,
  cautions: texts,
  readings: texts,
  picture: z.string().optional(),
})

export const procedure = z.strictObject({
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
  before: texts,
  steps: z.array(step),
  related: z
    .strictObject({ chapters: texts, calculators: texts })
    .default({ chapters: [], calculators: [] }),
  sources: texts,
  words: texts,
})

/** A reading as a procedure declares it, with what only its page shows. */
export type ReadingText = z.infer<typeof reading>
export type ProcedureWritten = z.infer<typeof procedure>
