import type { Entry, Kind } from './lexicon.ts'
import { stem } from './stem.ts'
import { wordsOf } from './words.ts'

/** An entry before the index has named it; `text` stands for things that have no page of their own. */
export type SourceEntry = Omit<Entry, 'id'> & { text?: string }

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
  {
    url: 'jobs/',
    kind: 'job',
    title: 'Job cards',
    names: ['job card', 'work order', 'workshop cards', 'what a suspension job involves'],
    text: 'One piece of work on one bike, from booking in to the follow-up, on one card that you can print.',
  },
  {
    url: 'wrong-ideas/',
    kind: 'chapter',
    title: 'Wrong ideas',
    names: ['misconceptions', 'common misconceptions', 'myths', 'mistakes people believe'],
    text: 'What is often said about suspension and is not so, each with its answer.',
  },
  {
    url: 'formulas/',
    kind: 'chapter',
    title: 'Formulas',
    names: ['all formulas', 'list of formulas', 'equations'],
    text: 'Every formula of this site, with its symbols, its derivation and its source.',
  },
  {
    url: 'sources/',
    kind: 'chapter',
    title: 'Sources',
    names: ['references', 'bibliography', 'literature'],
    text: 'What this site’s numbers and claims come from.',
  },
  {
    url: 'lessons/',
    kind: 'lesson',
    title: 'Lessons',
    names: [
      'teaching',
      'teach a class',
      'print a lesson',
      'for trainers',
      'room view',
      'projector',
    ],
    text: 'For a trainer: plan, station cards, drawings of the rigs, handouts and key, each lesson printed from one page.',
  },
  {
    url: 'worksheets/',
    kind: 'lesson',
    title: 'Worksheets',
    names: ['quiz', 'questions for a class', 'exercises', 'exercise sheet', 'multiple choice'],
    text: 'Printed questions from the calculators, with a key on pages of its own.',
  },
  {
    url: 'lessons/test/',
    kind: 'lesson',
    title: 'Test before and after',
    names: ['concept test', 'pre-test', 'post-test', 'learning gain', 'what a class has learnt'],
    text: 'Ten questions before a class and the same ten after it, scored in the browser.',
  },
  {
    url: 'lessons/readings/',
    kind: 'lesson',
    title: 'Everybody’s readings',
    names: [
      'measurement table',
      'gauge study',
      'reader or bike',
      'spread of readers',
      'bad reader',
    ],
    text: 'How much of the spread of a class’s readings is the reader and how much the bike.',
  },
]

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
