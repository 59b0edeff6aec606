import { useEffect, useMemo, useState } from 'preact/hooks'
import type { BikeSpec } from '../../src/calculators/bikes.ts'
import type { Calculator, Given } from '../../src/calculators/define.ts'
import { defaultsOf, evaluate } from '../../src/calculators/evaluate.ts'
import type { Evaluation } from '../../src/calculators/evaluate.ts'
import { decodeLink, encodeLink } from '../../src/calculators/link.ts'
import { createSay } from '../../src/calculators/say.ts'
import type { Say } from '../../src/calculators/say.ts'
import type { UnitChoice } from '../../src/calculators/unit-choice.ts'
import { useFields } from './useFields.ts'
import type { Fields } from './useFields.ts'
import { useUnitChoice } from './useUnitChoice.ts'

/** Where the card stands: its own page follows the address, an embedded card stores nothing, a chapter's card does neither. */
export type Mode = 'page' | 'chapter' | 'embed'

export interface CardProps {
  given: Given
  held: Given | null
  bikes: Readonly<Record<string, BikeSpec>>
  mode: Mode
  /** base path of the site, with a slash at its end */
  base: string
  /** prefix of element ids */
  prefix: string
}

export interface CalculatorState extends Fields {
  definition: Calculator
  given: Given
  held: Given | null
  /** the evaluation of the last state in which every field could be read */
  evaluation: Evaluation
  choice: UnitChoice
  say: Say
  bikes: CardProps['bikes']
  base: string
  /** sentences about the link that opened the page */
  linkProblems: readonly string[]
  hold(): void
  release(): void
  reset(): void
}

/** How long values stand still before the address follows them [ms]: browsers refuse replacements by the dozen. */
const ADDRESS_DELAY = 300

/** Keeps a card's values, reads its link, and computes. */
export function useCalculator(definition: Calculator, { given: start, held: startHeld, bikes, mode, base }: CardProps): CalculatorState {
  const choice = useUnitChoice(mode !== 'embed')
  const initial = useMemo(() => ({ ...defaultsOf(definition), ...start }), [definition])
  const [given, setGiven] = useState<Given>(initial)
  const [held, setHeld] = useState<Given | null>(startHeld)
  const [linkProblems, setLinkProblems] = useState<readonly string[]>([])
  const fields = useFields(definition, choice, setGiven)
  const say = useMemo(() => createSay(choice), [choice])
  const evaluation = useMemo(() => evaluate(definition, given, { bikes, choice }, held, say), [definition, given, held, say, bikes])

  useEffect(() => {
    if (mode === 'chapter' || location.search.length < 2) return
    const link = decodeLink(definition, location.search, Object.keys(bikes))
    setGiven(link.given)
    setHeld(link.held)
    setLinkProblems(link.problems)
  }, [])

  useEffect(() => {
    if (mode !== 'page' || (given === initial && held === startHeld)) return
    const later = setTimeout(() => writeAddress(definition, given, held), ADDRESS_DELAY)
    return () => clearTimeout(later)
  }, [given, held])

  return {
    ...fields,
    definition,
    given,
    held,
    evaluation,
    choice,
    say,
    bikes,
    base,
    linkProblems,
    hold: () => setHeld(given),
    release: () => setHeld(null),
    reset() {
      setGiven(initial)
      setHeld(startHeld)
      fields.clear()
      setLinkProblems([])
    },
  }
}

/** Keeps the address true to what the page shows, so that copying it from the browser works too. */
function writeAddress(definition: Calculator, given: Given, held: Given | null): void {
  try {
    history.replaceState(history.state, '', `?${encodeLink(definition, given, held)}${location.hash}`)
  } catch {
    // too long for a link, or too many replacements in a row: the page works on, "Copy link" says why
  }
}
