import { getCollection } from 'astro:content'
import type { BikeSheets } from '../../bikes/sheet.ts'

/** The invented bikes by id, as their sheets have them. */
export async function loadBikes(): Promise<BikeSheets> {
  const entries = await getCollection('bikes')
  return Object.fromEntries(
    entries.sort((a, b) => a.data.mass - b.data.mass).map(({ id, data }) => [id, { id, ...data }]),
  )
}
