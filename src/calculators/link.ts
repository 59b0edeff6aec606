import type { Given, GivenValue, Input, Statement, TableInput } from './define.ts'
import { defaultsOf, isAsked } from './evaluate.ts'
import { checkValue } from './fields.ts'

/** Longer links are cut by mail programs and make QR codes that a phone can't read. */
export const LONGEST_LINK = 2000
const BEFORE = 'before.'

/** What a link says: the state, the state before when it holds one, and what of it could not be used. */
export interface LinkReading {
  given: Given
  held: Given | null
  /** sentences for the reader, one for each value that was not used */
  problems: readonly string[]
}

const rowsToText = (rows: readonly (readonly number[])[]): string => rows.map((row) => row.join(':')).join(';')

function valueToText(value: GivenValue | undefined): string {
  if (value === undefined) return ''
  return typeof value === 'object' ? rowsToText(value) : String(value)
}

function put(query: URLSearchParams, definition: Statement, given: Given, prefix: string): void {
  for (const [id, input] of Object.entries(definition.inputs)) {
    if (!isAsked(input, given)) continue
    const value = given[id]
    if (value === undefined && input.default === undefined) continue
    query.set(prefix + id, valueToText(value))
  }
}

/** The query of a link (without "?"), values in the definition's unit. Throws RangeError when it would be longer than links may be. */
export function encodeLink(definition: Statement, given: Given, held: Given | null = null): string {
  const query = new URLSearchParams({ v: String(definition.version) })
  put(query, definition, given, '')
  if (held !== null) put(query, definition, held, BEFORE)
  // ":" and ";" are allowed in a query and keep a table's rows readable
  const text = query.toString().replaceAll('%3A', ':').replaceAll('%3B', ';').replaceAll('%3F', '?').replaceAll('%2F', '/')
  if (text.length > LONGEST_LINK) throw new RangeError(`This link would have ${text.length} characters. Links hold at most ${LONGEST_LINK}: use fewer rows`)
  return text
}

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i

function parseTable(input: TableInput, text: string): GivenValue {
  if (text === '') return []
  return text.split(';').map((row) =>
    row
      .split(':')
      .map((cell) => (NUMBER.test(cell) ? Number(cell) : Number.NaN))
      .slice(0, input.columns.length + 1),
  )
}

function parse(input: Input, text: string): GivenValue | undefined {
  if (input.kind === 'table') return parseTable(input, text)
  if (input.kind !== 'quantity') return text
  if (text === '') return undefined
  return NUMBER.test(text) ? Number(text) : text
}

function take(query: URLSearchParams, definition: Statement, prefix: string, bikes: readonly string[], problems: string[]): Given {
  const given: Record<string, GivenValue | undefined> = { ...defaultsOf(definition) }
  for (const [id, input] of Object.entries(definition.inputs)) {
    const text = query.get(prefix + id)
    if (text === null) continue
    const value = parse(input, text)
    const reading = checkValue(input, value, bikes)
    if ('problem' in reading)
      problems.push(`${prefix === '' ? '' : 'Before: '}${reading.problem}. The link has “${text.slice(0, 60)}”; ${fallback(input)} is used`)
    else given[id] = reading.value
  }
  return given as Given
}

const fallback = (input: Input): string => (input.default === undefined ? 'nothing' : 'the usual value')

/** Reads a link's query. Nothing throws: what can't be used is named, the rest is used. */
export function decodeLink(definition: Statement, search: string, bikes: readonly string[]): LinkReading {
  const defaults = { given: defaultsOf(definition), held: null }
  const text = search.replace(/^\?/, '')
  if (text.length > LONGEST_LINK)
    return { ...defaults, problems: [`The link has ${text.length} characters; at most ${LONGEST_LINK} are read, so its values were not used`] }
  const query = new URLSearchParams(text)
  const problems: string[] = []
  const version = query.get('v')
  if (version !== null && version !== String(definition.version)) {
    problems.push(`The link was made with version ${version.slice(0, 8)} of this calculator; this is version ${definition.version}. Check each value`)
  }
  const given = take(query, definition, '', bikes, problems)
  const hasBefore = [...query.keys()].some((key) => key.startsWith(BEFORE))
  return { given, held: hasBefore ? take(query, definition, BEFORE, bikes, problems) : null, problems }
}
