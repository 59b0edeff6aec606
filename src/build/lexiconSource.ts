import { readFile } from 'node:fs/promises'
import { getCollection, getEntry } from 'astro:content'
import { parse } from 'yaml'
import { calculatorIds, loadCalculator } from '../calculators/index.ts'
import { entriesOf } from '../search/entries.ts'
import type { LexiconSource } from '../search/entries.ts'

const read = async <Words>(name: string): Promise<Words> =>
  parse(await readFile(`content/search/${name}.yaml`, 'utf8'))

/** A calculator's title stands in its definition, its other words on its page. */
async function calculator(
  id: string,
): Promise<{ id: string; data: { title: string; words: string[] } }> {
  const { title } = loadCalculator(id)
  return { id, data: { title, words: (await getEntry('calculators', id))?.data.words ?? [] } }
}

/** What can be found, and how words find it: the first half of the search vocabulary, from the content. */
export async function lexiconSource(): Promise<LexiconSource> {
  const glossary = await getCollection('glossary')
  const entries = entriesOf({
    chapters: await getCollection('chapters'),
    cautions: await getCollection('cautions'),
    procedures: await getCollection('procedures'),
    calculators: await Promise.all(calculatorIds.map(calculator)),
    lessons: await getCollection('lessons'),
    jobs: await getCollection('jobs'),
    glossary,
    symptoms: await getCollection('symptoms'),
  })
  return {
    stop: await read<string[]>('stopwords'),
    light: await read<string[]>('light'),
    english: await read<string[]>('english'),
    synonyms: [
      ...(await read<string[][]>('synonyms')),
      ...glossary
        .filter(({ data }) => data.also.length > 0)
        .map(({ data }) => [data.term, ...data.also]),
    ],
    entries,
  }
}
