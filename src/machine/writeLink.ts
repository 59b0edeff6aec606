import type { UnitChoice } from '../units/choice.ts'
import { METRIC } from '../units/choice.ts'
import { UNITS_KEY } from '../units/linkUnits.ts'
import { unitsText } from '../units/unitsText.ts'
import { defaultsOf, isAsked } from './evaluate.ts'
import type { Given, GivenValue } from './given.ts'
import { BEFORE, LONGEST_LINK } from './link.ts'
import { linkSum, SUM_KEY } from './linkSum.ts'
import type { CardStatement } from './statement.ts'

const rowsToText = (rows: readonly (readonly number[])[]): string =>
  rows.map((row) => row.join(':')).join(';')

function valueToText(value: GivenValue | undefined): string {
  if (value === undefined) return ''
  return typeof value === 'object' ? rowsToText(value) : String(value)
}

function put(
  query: URLSearchParams,
  definition: CardStatement,
  given: Given,
  { prefix, named, other }: { prefix: string; named: readonly string[]; other: Given | null },
): void {
  const usual = defaultsOf(definition)
  for (const [id, input] of Object.entries(definition.inputs)) {
    if (!isAsked(input, given)) continue
    const text = valueToText(given[id])
    const differs = other !== null && text !== valueToText(other[id])
    if (differs || named.includes(id) || text !== valueToText(usual[id]))
      query.set(prefix + id, text)
  }
}

/** A state before whose every value is the usual one: one key says that there is one. */
function putUsual(query: URLSearchParams, definition: CardStatement, held: Given): void {
  const first = Object.entries(definition.inputs).find(([, input]) => isAsked(input, held))
  if (first) query.set(BEFORE + first[0], valueToText(held[first[0]]))
}

/** What a link says besides its values. */
interface Sending {
  /** the sender's units */
  choice?: UnitChoice
  /** inputs that are written even at their usual value, since somebody set them */
  named?: readonly string[]
}

/**
 * The query of a link (without "?"), values in the definition's unit; what is at its usual value is left out, since the version says what that
 * is, and what differs between the two states is written in both. Throws RangeError when it would be longer than links may be.
 */
export function encodeLink(
  definition: CardStatement,
  given: Given,
  held: Given | null = null,
  { choice = METRIC, named = [] }: Sending = {},
): string {
  // the sum keeps its place, and is known once the rest is
  const query = new URLSearchParams({ v: String(definition.version), [SUM_KEY]: '' })
  put(query, definition, given, { prefix: '', named, other: held })
  if (held !== null) {
    put(query, definition, held, { prefix: BEFORE, named: [], other: given })
    if (![...query.keys()].some((key) => key.startsWith(BEFORE))) putUsual(query, definition, held)
  }
  const units = unitsText(choice)
  if (units !== null) query.set(UNITS_KEY, units)
  query.set(SUM_KEY, linkSum(query))
  // ":" and ";" are allowed in a query and keep a table's rows readable
  const text = query
    .toString()
    .replaceAll('%3A', ':')
    .replaceAll('%3B', ';')
    .replaceAll('%2F', '/')
    .replaceAll('%2C', ',')
  if (text.length > LONGEST_LINK)
    throw new RangeError(
      `This link would have ${text.length} characters. Links hold at most ${LONGEST_LINK}: use fewer rows`,
    )
  return text
}
