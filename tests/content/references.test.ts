import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculatorIds } from '../../src/calculators/index.ts'
import { entries, listed, procedures } from './entries.ts'

/* A broken reference or a duplicate id in YAML does not fail the build: these tests do. */

const idsOf = (items: readonly { id?: unknown }[]): string[] => items.map(({ id }) => String(id))
const glossary = listed('glossary.yaml')
const symptoms = listed('symptoms.yaml')
const sources = listed('sources.yaml')
const known: Readonly<Record<string, readonly string[]>> = {
  chapters: idsOf(entries('chapters')),
  procedures: idsOf(procedures()),
  cautions: idsOf(entries('cautions')),
  calculators: calculatorIds,
  glossary: idsOf(glossary),
  symptoms: idsOf(symptoms),
  sources: idsOf(sources),
}

interface Reference {
  where: string
  to: string
  id: string
}

/** Front-matter fields that hold ids, and what they point to. */
const FIELDS: Readonly<Record<string, string>> = {
  needs: 'chapters', chapters: 'chapters', chapter: 'chapters', calculators: 'calculators', calculator: 'calculators', procedures: 'procedures', procedure: 'procedures',
  cautions: 'cautions', caution: 'cautions', before: 'cautions', sources: 'sources', next: 'procedures', skipTo: 'procedures', see: 'glossary',
}

function referencesIn(where: string, data: unknown, field = ''): Reference[] {
  if (Array.isArray(data)) return data.flatMap((each) => referencesIn(where, each, field))
  if (typeof data === 'object' && data !== null) return Object.entries(data).flatMap(([name, value]) => referencesIn(where, value, name))
  const to = FIELDS[field]
  return typeof data === 'string' && to !== undefined ? [{ where, to, id: data }] : []
}

/** Components in running text that name an entry. */
const TAGS: readonly (readonly [RegExp, string])[] = [
  [/<(?:Caution|Danger)\b[^>]*?\bid="([^"]+)"/g, 'cautions'],
  [/<Source\b[^>]*?\bid="([^"]+)"/g, 'sources'],
  [/<Term\b[^>]*?\bid="([^"]+)"/g, 'glossary'],
  [/<Calculator\b[^>]*?\bid="([^"]+)"/g, 'calculators'],
  [/<(?:Value|Open|Figure)\b[^>]*?\bcalculator="([^"]+)"/g, 'calculators'],
  [/<Recall\b[^>]*?\bfrom="([^"]+)"/g, 'chapters'],
]
const LINK = /\]\(\/(chapters|procedures|cautions|calculators|glossary|symptoms|sources)\/(?:([a-z0-9-]+)\/)?(?:#([a-z0-9-]+))?\)/g

function referencesInBody(where: string, body: string): Reference[] {
  const tags = TAGS.flatMap(([tag, to]) => [...body.matchAll(tag)].map((match) => ({ where, to, id: match[1]! })))
  const links = [...body.matchAll(LINK)].flatMap(([, to, page, anchor]) => {
    const id = page ?? (['glossary', 'symptoms', 'sources'].includes(to!) ? anchor : undefined)
    return id === undefined ? [] : [{ where, to: to!, id }]
  })
  return [...tags, ...links]
}

const broken = (references: readonly Reference[]): string[] => references.filter(({ to, id }) => !known[to]!.includes(id)).map(({ where, to, id }) => `${where}: ${to} has no “${id}”`)

describe.each(['chapters', 'cautions', 'procedures', 'calculators', 'bikes', 'lessons', 'handouts', 'handouts/key'])('content/%s', (folder) => {
  test('points only at entries that exist', () => {
    const references = entries(folder).flatMap(({ id, data, body }) => [...referencesIn(`${folder}/${id}`, data), ...referencesInBody(`${folder}/${id}`, body)])
    expect(broken(references)).toEqual([])
  })
})

describe.each([
  ['glossary', glossary],
  ['symptoms', symptoms],
  ['sources', sources],
])('content/%s.yaml', (name, items) => {
  test('points only at entries that exist', () => {
    expect(broken(items.flatMap((item) => referencesIn(`${name}: ${String(item['id'])}`, item)))).toEqual([])
  })
  test('has each id once, fit for an address', () => {
    const ids = idsOf(items)
    expect(ids.filter((id, index) => ids.indexOf(id) !== index || !/^[a-z][a-z0-9-]*$/.test(id))).toEqual([])
    expect(ids.length).toBeGreaterThan(10)
  })
})

test('every caution is placed by a procedure or a chapter', () => {
  const placed = new Set([...entries('procedures'), ...entries('chapters'), ...entries('calculators')].flatMap(({ id, data, body }) => [...referencesIn(id, data), ...referencesInBody(id, body)]).filter(({ to }) => to === 'cautions').map(({ id }) => id))
  expect(known['cautions']!.filter((id) => !placed.has(id))).toEqual([])
})

test('no other word of the glossary belongs to two terms', () => {
  const words = glossary.flatMap(({ also = [] }) => (also as string[]).map((word) => word.toLowerCase()))
  expect(words.filter((word, index) => words.indexOf(word) !== index)).toEqual([])
})

test('the glossary file and the symptoms file hold no tab, which YAML refuses in some places and not in others', () => {
  expect(['glossary.yaml', 'symptoms.yaml', 'sources.yaml'].filter((file) => readFileSync(`content/${file}`, 'utf8').includes('\t'))).toEqual([])
})
