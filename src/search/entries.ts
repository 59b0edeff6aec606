import type { Entry } from './lexicon.ts'
import { stem } from './stem.ts'
import { wordsOf } from './words.ts'

/** An entry before the index has named it; `text` stands for things that have no page of their own. */
export type SourceEntry = Omit<Entry, 'id'> & { text?: string }

/** What the endpoint hands to the build: the lexicon's file before the index exists. */
export interface LexiconSource {
  stop: readonly string[]
  light: readonly string[]
  synonyms: readonly (readonly string[])[]
  entries: readonly SourceEntry[]
}

interface Item<Data> {
  id: string
  data: Data
}
type Titled = { title: string; words: readonly string[] }
type Cause = { cause: string; measure: string; shows: string }

/** The parts of the content that search knows by title and other words. */
export interface Searched {
  chapters: readonly Item<Titled & { name: string; wrong: readonly string[] }>[]
  cautions: readonly Item<Titled & { signal: string }>[]
  procedures: readonly Item<Titled>[]
  calculators: readonly Item<Titled>[]
  lessons: readonly Item<Titled>[]
  glossary: readonly Item<{ term: string; also: readonly string[]; short: string }>[]
  symptoms: readonly Item<{ feel: string; also: readonly string[]; causes: readonly Cause[]; stop?: string | undefined }>[]
}

const sentences = (texts: readonly (string | undefined)[]): string =>
  texts
    .filter((text) => text !== undefined)
    .map((text) => text.replace(/[.?]?$/, '.'))
    .join(' ')

const alsoKnownAs = (names: readonly string[]): string | undefined => (names.length > 0 ? `Also: ${names.join(', ')}` : undefined)

const overviews: readonly SourceEntry[] = [
  {
    url: 'glossary/',
    kind: 'glossary',
    title: 'Glossary',
    names: ['dictionary', 'definitions', 'terms'],
    text: 'Every term of this site, with the other words that riders use.',
  },
  {
    url: 'symptoms/',
    kind: 'symptom',
    title: 'Something feels wrong',
    names: ['symptoms', 'fault finding', 'troubleshooting', 'problems'],
    text: 'From what you feel to a measurement that tells the causes apart.',
  },
]

/** An id is a short name too, `steering-modes` for a page that asks what trail is for, unless the title has all its words. */
function shortName(id: string, title: string): string[] {
  const words = id.split('-')
  const known = new Set(wordsOf(title).map(stem))
  return words.every((word) => known.has(stem(word))) ? [] : [words.join(' ')]
}

/** All entries, in the order of their kinds. */
export function entriesOf({ chapters, cautions, procedures, calculators, lessons, glossary, symptoms }: Searched): SourceEntry[] {
  return [
    ...chapters.map(({ id, data }) => ({
      url: `chapters/${id}/`,
      kind: 'chapter' as const,
      title: data.title,
      names: [data.name, ...shortName(id, `${data.title} ${data.name}`), ...data.words, ...data.wrong],
    })),
    ...procedures.map(({ id, data }) => ({
      url: `procedures/${id}/`,
      kind: 'procedure' as const,
      title: data.title,
      names: [...shortName(id, data.title), ...data.words],
    })),
    ...cautions.map(({ id, data }) => ({
      url: `cautions/${id}/`,
      kind: 'caution' as const,
      title: data.title,
      names: [...shortName(id, data.title), ...data.words],
      signal: data.signal,
    })),
    ...calculators.map(({ id, data }) => ({
      url: `calculators/${id}/`,
      kind: 'calculator' as const,
      title: data.title,
      names: [...shortName(id, data.title), ...data.words],
    })),
    ...lessons.map(({ id, data }) => ({
      url: `lessons/${id}/`,
      kind: 'lesson' as const,
      title: data.title,
      names: [...shortName(id, data.title), ...data.words],
    })),
    ...glossary.map(({ id, data }) => ({
      url: `glossary/#${id}`,
      kind: 'glossary' as const,
      title: data.term,
      names: data.also,
      text: sentences([data.term, data.short, alsoKnownAs(data.also)]),
    })),
    ...symptoms.map(({ id, data }) => ({
      url: `symptoms/#${id}`,
      kind: 'symptom' as const,
      title: data.feel,
      names: data.also,
      text: sentences([data.feel, alsoKnownAs(data.also), ...data.causes.flatMap(({ cause, measure, shows }) => [cause, measure, shows]), data.stop]),
    })),
    ...overviews,
  ]
}
