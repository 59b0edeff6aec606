import { getCollection, type CollectionEntry } from 'astro:content'
import { isCalculatorId, loadCalculator } from '../../calculators/index.ts'
import { outsideChecks } from './checkRun.ts'
import { coreFiles } from './coreIndex.ts'

/** A page that cites a source: its kind, its title, its address below the site's base. */
export interface Citation {
  kind: 'Chapter' | 'Procedure' | 'Caution' | 'Calculator' | 'Check' | 'Core'
  title: string
  to: string
}

type Citing =
  | CollectionEntry<'chapters'>
  | CollectionEntry<'procedures'>
  | CollectionEntry<'cautions'>
  | CollectionEntry<'calculators'>

const IN_TEXT = /<Source\s+id="([^"]+)"/g

/** Ids that an entry cites: in its front matter and in its text. */
export function citedIn({
  data,
  body,
}: {
  data: { sources: readonly string[] }
  body?: string | undefined
}): Set<string> {
  const inText = [...(body ?? '').matchAll(IN_TEXT)].flatMap(([, id]) =>
    id === undefined ? [] : [id],
  )
  return new Set([...data.sources, ...inText])
}

/** Every place that cites each source, by the source's id. An id that is not among the sources is left for the content tests to report. */
export async function citations(): Promise<Map<string, Citation[]>> {
  const found = new Map<string, Citation[]>()
  const add = (id: string, citation: Citation): void =>
    void found.set(id, [...(found.get(id) ?? []), citation])
  for (const { entry, citation } of await citingPages())
    for (const id of citedIn(entry)) add(id, citation)
  for (const { topic, results } of (await outsideChecks()).topics) {
    const counts = new Map<string, number>()
    for (const { check } of results) counts.set(check.source, (counts.get(check.source) ?? 0) + 1)
    for (const [id, count] of counts) {
      const first = results.find(({ check }) => check.source === id)?.check.id ?? ''
      add(id, {
        kind: 'Check',
        title: count === 1 ? topic.topic : `${topic.topic} (${count})`,
        to: `checks/values/#${first}`,
      })
    }
  }
  await addCore(add)
  return found
}

/** Surname of the first author: "T. H. Wentzell" or "R. Fox, A. McDonald and P. Pritchard". */
export function firstSurname(authors: string): string {
  return (
    authors
      .split(/,| and /)[0]
      ?.split(' ')
      .at(-1) ?? authors
  )
}

/** The core cites in its comments by surname, or by a standard's number, as the ids have it: "iso-3448". */
async function addCore(add: (id: string, citation: Citation) => void): Promise<void> {
  const files = await coreFiles()
  for (const { id, data } of await getCollection('sources')) {
    const name =
      data.kind === 'standard'
        ? id.toUpperCase().replace('-', ' ')
        : data.kind === 'book' || data.kind === 'paper'
          ? firstSurname(data.authors ?? '')
          : ''
    if (name.length < 3) continue
    const word = new RegExp(`(?<![\\w-])${name}(?![\\w-])`)
    for (const file of files) {
      const line = file.lines.findIndex(
        (text) => /^\s*(?:\/\*\*?|\*|\/\/)/.test(text) && word.test(text),
      )
      if (line >= 0)
        add(id, { kind: 'Core', title: `${file.name}.ts`, to: `source/${file.name}/#L${line + 1}` })
    }
  }
}

async function citingPages(): Promise<{ entry: Citing; citation: Citation }[]> {
  const [chapters, procedures, cautions, calculators] = await Promise.all([
    getCollection('chapters'),
    getCollection('procedures'),
    getCollection('cautions'),
    getCollection('calculators'),
  ])
  return [
    ...chapters
      .sort((a, b) => a.data.order - b.data.order)
      .map((entry) => ({
        entry,
        citation: {
          kind: 'Chapter' as const,
          title: entry.data.title,
          to: `chapters/${entry.id}/`,
        },
      })),
    ...(await calculatorPages(calculators)),
    ...procedures
      .sort((a, b) => a.data.order - b.data.order)
      .map((entry) => ({
        entry,
        citation: {
          kind: 'Procedure' as const,
          title: entry.data.title,
          to: `procedures/${entry.id}/`,
        },
      })),
    ...cautions.map((entry) => ({
      entry,
      citation: { kind: 'Caution' as const, title: entry.data.title, to: `cautions/${entry.id}/` },
    })),
  ]
}

async function calculatorPages(entries: CollectionEntry<'calculators'>[]) {
  const known = entries.filter(({ id }) => isCalculatorId(id))
  return Promise.all(
    known.map(async (entry) => ({
      entry,
      citation: {
        kind: 'Calculator' as const,
        title: loadCalculator(entry.id).title,
        to: `calculators/${entry.id}/`,
      },
    })),
  )
}
