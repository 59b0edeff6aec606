import { getEntry } from 'astro:content'

/** Ids with the titles of their pages, for links. An id without a page is left out here; tests/content/references.test.ts reports it. */
export async function titlesOf(
  collection: 'chapters' | 'procedures' | 'cautions',
  ids: readonly string[],
): Promise<{ id: string; title: string }[]> {
  const entries = await Promise.all(ids.map(async (id) => getEntry(collection, id)))
  return entries.flatMap((entry) =>
    entry
      ? [{ id: entry.id, title: 'name' in entry.data ? entry.data.name : entry.data.title }]
      : [],
  )
}
