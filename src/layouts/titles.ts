import { getEntry } from 'astro:content'

/** Ids with the titles of their pages; an id without a page stops the build. */
export async function titlesOf(collection: 'chapters' | 'procedures' | 'cautions', ids: readonly string[]): Promise<{ id: string; title: string }[]> {
  return Promise.all(
    ids.map(async (id) => {
      const entry = await getEntry(collection, id)
      if (!entry) throw new Error(`${collection} has no “${id}”`)
      return { id, title: 'name' in entry.data ? entry.data.name : entry.data.title }
    }),
  )
}
