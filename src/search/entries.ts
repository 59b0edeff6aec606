import type { Kind, SourceEntry } from './lexicon.ts'
import { overviews } from './overviews.ts'
import { stem } from './stem.ts'
import { wordsOf } from './words.ts'

/** What the endpoint hands to the build: the lexicon's file before the index exists. */
export interface LexiconSource {
  stop: readonly string[]
  light: readonly string[]
  english: readonly string[]
  synonyms: readonly (readonly string[])[]
  entries: readonly SourceEntry[]
}

interface Item<Data> {
  id: string
  data: Data
}
type Titled = { title: string; words: readonly string[] }
type Cause = { cause: string; measure: string; shows: string }
type Told = { says: string; answer: string }

/** The parts of the content that search knows by title and other words. */
export interface Searched {
  chapters: readonly Item<Titled & { name: string; wrong: readonly string[] }>[]
  cautions: readonly Item<Titled & { signal: string }>[]
  procedures: readonly Item<Titled>[]
  calculators: readonly Item<Titled>[]
  lessons: readonly Item<Titled>[]
  jobs: readonly Item<Titled>[]
  glossary: readonly Item<{ term: string; also: readonly string[]; short: string }>[]
  symptoms: readonly Item<{
    feel: string
    also: readonly string[]
    told?: readonly Told[]
    causes: readonly Cause[]
    stop?: string | undefined
  }>[]
}

const sentences = (texts: readonly (string | undefined)[]): string =>
  texts
    .filter((text) => text !== undefined)
    .map((text) => text.replace(/[.?]?$/, '.'))
    .join(' ')

const alsoKnownAs = (names: readonly string[]): string | undefined =>
  names.length > 0 ? `Also: ${names.join(', ')}` : undefined

/** An id is a short name too, `steering-modes` for a page that asks what trail is for, unless the title has all its words. */
function shortName(id: string, title: string): string[] {
  const words = id.split('-')
  const known = new Set(wordsOf(title).map(stem))
  return words.every((word) => known.has(stem(word))) ? [] : [words.join(' ')]
}

/** What is known by its own page: title, other names by id, and search words. */
const pageEntry =
  (folder: string, kind: Kind) =>
  ({ id, data }: Item<Titled & { signal?: string }>): SourceEntry => ({
    url: `${folder}/${id}/`,
    kind,
    title: data.title,
    names: [...shortName(id, data.title), ...data.words],
    ...(data.signal !== undefined && { signal: data.signal }),
  })

const chapterEntry = ({ id, data }: Searched['chapters'][number]): SourceEntry => ({
  url: `chapters/${id}/`,
  kind: 'chapter',
  title: data.title,
  names: [data.name, ...shortName(id, `${data.title} ${data.name}`), ...data.words, ...data.wrong],
})

const termEntry = ({ id, data }: Searched['glossary'][number]): SourceEntry => ({
  url: `glossary/#${id}`,
  kind: 'glossary',
  title: data.term,
  names: data.also,
  text: sentences([data.term, data.short, alsoKnownAs(data.also)]),
})

const symptomEntry = ({ id, data }: Searched['symptoms'][number]): SourceEntry => ({
  url: `symptoms/${id}/`,
  kind: 'symptom',
  title: data.feel,
  names: data.also,
  text: sentences([
    data.feel,
    alsoKnownAs(data.also),
    ...(data.told ?? []).flatMap(({ says, answer }) => [says, answer]),
    ...data.causes.flatMap(({ cause, measure, shows }) => [cause, measure, shows]),
    data.stop,
  ]),
})

/** All entries, in the order of their kinds. */
export const entriesOf = (searched: Searched): SourceEntry[] => [
  ...searched.chapters.map(chapterEntry),
  ...searched.procedures.map(pageEntry('procedures', 'procedure')),
  ...searched.jobs.map(pageEntry('jobs', 'job')),
  ...searched.cautions.map(pageEntry('cautions', 'caution')),
  ...searched.calculators.map(pageEntry('calculators', 'calculator')),
  ...searched.lessons.map(pageEntry('lessons', 'lesson')),
  ...searched.glossary.map(termEntry),
  ...searched.symptoms.map(symptomEntry),
  ...overviews,
]
