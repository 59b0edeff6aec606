import { getCollection } from 'astro:content'
import type { TestQuestion } from '../../src/lesson/schema.ts'

/** The questions of the test before and after, in their own order. */
export async function testQuestions(): Promise<TestQuestion[]> {
  const all = await getCollection('classTest')
  return all
    .sort((a, b) => a.data.order - b.data.order)
    .map(({ id, data: { about, ask, options, because } }) => ({ id, about, ask, options, because }))
}
