import { z } from 'astro/zod'

const texts = z.array(z.string()).default([])

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

/** What is felt, and where it leads: content/symptoms.yaml. */
export const symptom = z.strictObject({
  id: z.string(),
  feel: z.string(),
  also: texts,
  when: z.enum(['braking', 'turning', 'bumps', 'straight', 'standing', 'after-work']),
  end: z.enum(['front', 'rear', 'both']),
  /** a still that shows where to look */
  picture: z.string(),
  told: z.array(told).default([]),
  causes: z.array(cause).min(1),
  cautions: texts,
  stop: z.string(),
})
