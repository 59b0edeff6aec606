import { getCollection } from 'astro:content'
import type { BikeSpec } from '../../bikes/bikes.ts'

/** The invented bikes by id, as calculators take them. */
export async function loadBikes(): Promise<Record<string, BikeSpec>> {
  const entries = await getCollection('bikes')
  return Object.fromEntries(
    entries.sort((a, b) => a.data.mass - b.data.mass).map(({ id, data }) => [id, { id, ...data }]),
  )
}
