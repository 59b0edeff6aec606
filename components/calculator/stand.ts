import type { Given } from '../../src/machine/given.ts'
import type { CardStatement } from '../../src/machine/statement.ts'

/** Where the card is: its own page follows the address, an embedded card stores nothing, a chapter's card does neither. */
export type Mode = 'page' | 'chapter' | 'embed'

/** Where a value comes from that the reader has not set: the example that the card opens with, the link that opened the page, or the reader's bike, with the words that say how it is known there. */
export type Origin = 'example' | 'link' | `bike:${string}`
/** By input id; what the reader set is not in it. */
export type Origins = Readonly<Record<string, Origin>>

/** Where a card stands: its values, whose they are, and what they are compared with. */
export interface Stand {
  given: Given
  held: Given | null
  origins: Origins
  /** whether the example's own "before" applies: until a value is the reader's, or came with a link, or the reader forgot it */
  example: boolean
  /** whether it went because the reader set a value, which the card then says */
  dropped: boolean
}

/** The card as it opens: every value is the example's. */
export function openingStand(given: Given, held: Given | null): Stand {
  return {
    given,
    held,
    origins: Object.fromEntries(Object.keys(given).map((id) => [id, 'example'])),
    example: true,
    dropped: false,
  }
}

/** Inputs whose values are not the example's: the reader set them, or they came with a link or from a bike. */
export const setIn = (given: Given, origins: Origins): string[] =>
  Object.keys(given).filter((id) => origins[id] !== 'example')

/** Whose the values are that a link opens: those that it names are its sender's, the rest the example's. Null where the address names none. */
export function linkOrigins(definition: CardStatement, search: string): Origins | null {
  const query = new URLSearchParams(search)
  const ids = Object.keys(definition.inputs)
  if (!ids.some((id) => query.has(id) || query.has(`before.${id}`))) return null
  return Object.fromEntries(ids.map((id) => [id, query.has(id) ? 'link' : 'example']))
}

/** Origins as the browser keeps them with the page's place in its history: after a reload the reader's values are not taken for a sender's. */
export function keptOrigins(state: unknown): Origins | null {
  if (typeof state !== 'object' || state === null || !('origins' in state)) return null
  return state.origins as Origins
}

/** What changes once the reader sets a value of his own. A chapter's text tells what its example is compared with and asks to move it, so that there the comparison stays. */
export function touched(
  { origins, held, example, dropped }: Stand,
  id: string,
  mode: Mode,
  exampleBaseline: boolean,
): Partial<Stand> {
  const { [id]: _own, ...others } = origins
  if (mode === 'chapter') return { origins: others }
  return {
    origins: others,
    example: false,
    dropped: dropped || (exampleBaseline && example && held === null),
  }
}
