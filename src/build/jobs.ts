import { getCollection } from 'astro:content'
import type { CollectionEntry } from 'astro:content'
import { partsOf } from '../jobs/job.ts'
import type { JobPart } from '../jobs/job.ts'
import type { AskText } from '../jobs/schema.ts'
import { wholeJob } from '../jobs/whole.ts'
import { loadProcedures } from './procedures.ts'
import type { Step } from './procedures.ts'

export type Job = CollectionEntry<'jobs'>

/** All jobs in their order. */
export async function loadJobs(): Promise<Job[]> {
  return (await getCollection('jobs')).sort((a, b) => a.data.order - b.data.order)
}

/** A job's questions, in the order in which it asks them. */
export async function asksOf(job: Job): Promise<AskText[]> {
  const asks = (await getCollection('asks')).map(({ data }) => data)
  return job.data.asks.map((id) => asks.find((ask) => ask.id === id)!)
}

/** A job's parts with the procedures' own steps in them. */
export async function partsOfJob(job: Job): Promise<JobPart<Step>[]> {
  const procedures = (await loadProcedures()).map(({ id, data }) => ({
    id,
    minutes: data.minutes,
    people: data.people,
    steps: data.steps,
  }))
  const [lines, stretches, conditions, signoffs] = await Promise.all([
    getCollection('dangers'),
    getCollection('stretches'),
    getCollection('conditions'),
    getCollection('signoffs'),
  ])
  const whole = wholeJob(job.data, {
    stretches: stretches.map(({ data }) => data),
    conditions: conditions.map(({ data }) => data),
    signoffs: signoffs.map(({ data }) => data),
  })
  return partsOf(
    whole,
    procedures,
    lines.map(({ data }) => data),
  )
}

/** By procedure, the jobs that take steps of it, in their order. */
export async function jobsTaking(): Promise<ReadonlyMap<string, readonly Job[]>> {
  const found = new Map<string, Job[]>()
  for (const job of await loadJobs()) {
    const procedures = (await partsOfJob(job)).flatMap(({ steps }) =>
      steps.map(({ procedure }) => procedure),
    )
    for (const id of new Set(procedures)) found.set(id, [...(found.get(id) ?? []), job])
  }
  return found
}

/** The cautions of all steps, each once, in the order in which the card meets them. */
export const cautionsIn = (parts: readonly JobPart<Step>[]): string[] => [
  ...new Set(
    parts.flatMap(({ steps }) =>
      steps.flatMap(({ dangers }) => dangers.map(({ caution }) => caution)),
    ),
  ),
]
