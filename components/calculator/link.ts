import { encodeLink } from '../../src/machine/writeLink.ts'
import { setIn } from './stand.ts'
import type { CalculatorState } from './useCalculator.ts'

/** The address of a card's state, or why there is none. */
export type CardLink = { href: string } | { problem: string }

/** Said in place of a code, of a link on paper and of what embeds a card, where these would lead to the machine that built the site. */
export const NO_PUBLIC_ADDRESS =
  'A code needs a link with the site’s public address, and this site was built without one. Whoever publishes it sets SITE_URL when building.'

export type Linked = Pick<
  CalculatorState,
  'definition' | 'given' | 'linked' | 'base' | 'publicAddress' | 'choice' | 'origins'
>

/** The link to a state: at the site's public address, or where the site has none at the address of the page in sight, `here`. */
export function linkOf(state: Linked, here: string): CardLink {
  try {
    const { definition, given, linked, choice, origins } = state
    const query = encodeLink(definition, given, linked, { choice, named: setIn(given, origins) })
    const site = state.publicAddress ?? new URL(state.base, here)
    return { href: new URL(`calculators/${state.definition.id}/?${query}`, site).href }
  } catch (error) {
    return { problem: error instanceof Error ? error.message : String(error) }
  }
}

/** The link that a code or a print carries to another machine. */
export const sentLink = (state: Linked): CardLink =>
  state.publicAddress === null ? { problem: NO_PUBLIC_ADDRESS } : linkOf(state, state.publicAddress)
