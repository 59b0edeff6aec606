import { useEffect, useRef, useState } from 'preact/hooks'
import type { Calculator } from '../../src/machine/calculator.ts'
import { decodeLink } from '../../src/machine/link.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { keptOrigins, linkOrigins, setIn } from './stand.ts'
import type { Mode, Stand } from './stand.ts'

/** How long values stand still before the address follows them [ms]: browsers refuse replacements by the dozen. */
const ADDRESS_DELAY = 300

interface Stands {
  initial: Stand
  stand: Stand
  setStand(stand: Stand): void
  choice: UnitChoice
}

/** Takes the values of the link that opened the page, and keeps the address true to what a calculator's page shows. Gives what of the link could not be used. */
export function useAddress(
  definition: Calculator,
  bikes: readonly string[],
  mode: Mode,
  { initial, stand, setStand, choice }: Stands,
): [problems: readonly string[], set: (problems: readonly string[]) => void] {
  const [problems, setProblems] = useState<readonly string[]>([])
  // what the address tells as it stands: a link is rewritten only once the card shows something else
  const told = useRef(initial)
  useEffect(() => {
    if (mode === 'chapter' || location.search.length < 2) return
    const link = decodeLink(definition, location.search, bikes)
    const origins = keptOrigins(history.state) ?? linkOrigins(definition, location.search)
    setProblems(link.problems)
    if (origins === null) return
    const { given, held } = link
    told.current = { given, held, origins, example: false, dropped: false }
    setStand(told.current)
  }, [])
  const { given, held } = stand
  const shown = useRef(choice)
  useEffect(() => {
    if (mode !== 'page') return
    const sameUnits = shown.current === choice || location.search === ''
    shown.current = choice
    if (given === told.current.given && held === told.current.held && sameUnits) return
    const later = setTimeout(() => {
      told.current = stand
      if (given === initial.given && held === initial.held) replace(location.pathname, null)
      else void writeAddress(definition, stand, choice)
    }, ADDRESS_DELAY)
    return () => clearTimeout(later)
  }, [given, held, choice])
  return [problems, setProblems]
}

/** Keeps the address true to what the page shows, so that copying it from the browser works too. */
async function writeAddress(
  definition: Calculator,
  { given, held, origins }: Stand,
  choice: UnitChoice,
): Promise<void> {
  try {
    const { encodeLink } = await import('../../src/machine/writeLink.ts')
    const named = setIn(given, origins)
    replace(`?${encodeLink(definition, given, held, { choice, named })}`, { origins })
  } catch {
    // too long for a link, or too many replacements in a row: the page works on, "Copy link" says why
  }
}

const replace = (address: string, state: object | null): void =>
  history.replaceState(state, '', `${address}${location.hash}`)
