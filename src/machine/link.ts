import { UNKNOWN } from './given.ts'
import type { Given, GivenValue } from './given.ts'
import type { CardStatement, Input, TableInput } from './statement.ts'
import { defaultsOf } from './evaluate.ts'
import { checkValue } from './fields.ts'
import { SUM_KEY, sumProblem } from './linkSum.ts'
import { UNITS_KEY, unitsOfLink } from '../units/linkUnits.ts'

/** Longer links are cut by mail programs and make QR codes that a phone can't read. */
export const LONGEST_LINK = 2000
export const BEFORE = 'before.'

/** What a link says: the state, the state before when it holds one, and what of it could not be used. */
export interface LinkReading {
  given: Given
  held: Given | null
  /** sentences for the reader, one for each value that was not used */
  problems: readonly string[]
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
  // earlier editions wrote a question mark
  if (text === '?') return UNKNOWN
  if (text === '') return undefined
  return NUMBER.test(text) ? Number(text) : text
}

/** Rows of a link that a field can show: those of numbers, be they out of range. */
const shownRows = (rows: readonly (readonly number[])[], { columns }: TableInput): GivenValue =>
  rows.filter((row) => row.length >= columns.length && row.every(Number.isFinite))

function take(
  query: URLSearchParams,
  definition: CardStatement,
  { prefix, usual, bikes, problems }: Taking,
): Given {
  const given: Record<string, GivenValue | undefined> = { ...usual }
  const before = prefix === '' ? '' : 'Before: '
  for (const [id, input] of Object.entries(definition.inputs)) {
    const text = query.get(prefix + id)
    if (text === null) continue
    const value = parse(input, text)
    const reading = checkValue(input, value, bikes)
    if ('problem' in reading)
      problems.push(
        `${before}${reading.problem}. The link has “${text.slice(0, 60)}”; ${fallback(input)} is used`,
      )
    else
      given[id] =
        reading.left !== undefined && input.kind === 'table'
          ? shownRows(value as number[][], input)
          : reading.value
    if ('left' in reading && reading.left !== undefined) problems.push(before + reading.left)
  }
  return given as Given
}

interface Taking {
  prefix: string
  /** what stands for a value that the link leaves out */
  usual: Given
  bikes: readonly string[]
  problems: string[]
}

const fallback = (input: Input): string =>
  input.default === undefined ? 'nothing' : 'the usual value'

/** Keys of a query that say nothing of values. */
const OTHER_KEYS = new Set(['v', SUM_KEY, UNITS_KEY])

/** A sentence for every key that no field of this calculator has: what it held is not lost in silence. */
function strangers(query: URLSearchParams, { inputs }: CardStatement): string[] {
  const keys = [...new Set(query.keys())].map((key) => ({
    key,
    id: key.startsWith(BEFORE) ? key.slice(BEFORE.length) : key,
  }))
  return keys
    .filter(({ key, id }) => !OTHER_KEYS.has(key) && !Object.hasOwn(inputs, id))
    .slice(0, 5)
    .map(
      ({ key }) =>
        `The link has “${key.slice(0, 40)}=${(query.get(key) ?? '').slice(0, 40)}”, which this calculator does not ask for: it was not used`,
    )
}

/** Reads a link's query. Nothing throws: what can't be used is named, the rest is used. */
export function decodeLink(
  definition: CardStatement,
  search: string,
  bikes: readonly string[],
): LinkReading {
  const defaults = { given: defaultsOf(definition), held: null }
  const text = search.replace(/^\?/, '')
  if (text.length > LONGEST_LINK)
    return {
      ...defaults,
      problems: [
        `The link has ${text.length} characters; at most ${LONGEST_LINK} are read, so its values were not used`,
      ],
    }
  // a link copied out of a page's source has its ampersands written out
  const query = new URLSearchParams(text.replaceAll('&amp;', '&'))
  const problems: string[] = []
  const mangled = sumProblem(query)
  if (mangled !== undefined) problems.push(mangled)
  const version = query.get('v')
  const earlier =
    version !== null && /^\d{1,4}$/.test(version)
      ? definition.earlier?.[Number(version)]
      : undefined
  if (earlier?.told !== undefined) problems.push(earlier.told)
  if (earlier === undefined && version !== null && version !== String(definition.version)) {
    problems.push(
      `The link was made with version ${version.slice(0, 8)} of this calculator; this is version ${definition.version}. Check each value`,
    )
  }
  const taking = { usual: { ...defaultsOf(definition), ...earlier?.given }, bikes, problems }
  const given = take(query, definition, { ...taking, prefix: '' })
  problems.push(...strangers(query, definition))
  const units = unitsOfLink(text)
  if (units?.problem !== undefined) problems.push(units.problem)
  const hasBefore = [...query.keys()].some((key) => key.startsWith(BEFORE))
  return {
    given,
    held: hasBefore ? take(query, definition, { ...taking, prefix: BEFORE }) : null,
    problems,
  }
}
