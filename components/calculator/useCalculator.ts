import { useEffect, useMemo, useState } from 'preact/hooks'
import type { BikeSpec } from '../../src/calculators/bikes.ts'
import type { Definition, Given, GivenValue } from '../../src/calculators/define.ts'
import { defaultsOf, evaluate } from '../../src/calculators/evaluate.ts'
import type { Evaluation } from '../../src/calculators/evaluate.ts'
import { readQuantity } from '../../src/calculators/fields.ts'
import { decodeLink, encodeLink } from '../../src/calculators/link.ts'
import { createSay } from '../../src/calculators/say.ts'
import type { Say } from '../../src/calculators/say.ts'
import type { UnitChoice } from '../../src/calculators/unit-choice.ts'
import { useUnitChoice } from './useUnitChoice.ts'

/** Where the card stands: its own page follows the address, an embedded card stores nothing, a chapter's card does neither. */
export type Mode = 'page' | 'chapter' | 'embed'

export interface CalculatorState {
  definition: Definition
  given: Given
  held: Given | null
  /** the evaluation of the last state in which every field could be read */
  evaluation: Evaluation
  choice: UnitChoice
  say: Say
  bikes: Readonly<Record<string, BikeSpec>>
  /** base path of the site, with a slash at its end */
  base: string
  /** what stands in a field just as it was typed, until the unit changes */
  typed: Readonly<Record<string, string>>
  /** what is wrong in a field that the reader has left */
  errors: Readonly<Record<string, string>>
  /** sentences about the link that opened the page */
  linkProblems: readonly string[]
  set(id: string, value: GivenValue | undefined): void
  type(id: string, text: string): void
  leave(id: string): void
  hold(): void
  release(): void
  reset(): void
}

/** Keeps a card's values, reads its link, and computes. */
export function useCalculator(
  definition: Definition,
  start: Given,
  startHeld: Given | null,
  bikes: Readonly<Record<string, BikeSpec>>,
  mode: Mode,
  base: string,
): CalculatorState {
  const choice = useUnitChoice(mode !== 'embed')
  const initial = useMemo(() => ({ ...defaultsOf(definition), ...start }), [definition])
  const [given, setGiven] = useState<Given>(initial)
  const [held, setHeld] = useState<Given | null>(startHeld)
  const [typed, setTyped] = useState<Record<string, string>>({})
  const [errors, setErrors] = useState<Record<string, string>>({})
  const [linkProblems, setLinkProblems] = useState<readonly string[]>([])

  useEffect(() => {
    if (mode === 'chapter' || location.search.length < 2) return
    const link = decodeLink(definition, location.search, Object.keys(bikes))
    setGiven(link.given)
    setHeld(link.held)
    setLinkProblems(link.problems)
  }, [])

  // what was typed in millimetres does not stand for inches: after a switch the fields show the values
  useEffect(() => setTyped({}), [choice])

  const say = useMemo(() => createSay(choice), [choice])
  const evaluation = useMemo(() => evaluate(definition, given, { bikes, choice }, held, say), [definition, given, held, say, bikes])

  useEffect(() => {
    if (mode !== 'page' || (given === initial && held === startHeld)) return
    const later = setTimeout(() => writeAddress(definition, given, held), 300)
    return () => clearTimeout(later)
  }, [given, held])

  const clearTyped = (id: string): void => {
    setTyped(({ [id]: _gone, ...rest }) => rest)
    setErrors(({ [id]: _gone, ...rest }) => rest)
  }
  return {
    definition,
    given,
    held,
    evaluation,
    choice,
    say,
    bikes,
    base,
    typed,
    errors,
    linkProblems,
    set(id, value) {
      clearTyped(id)
      setGiven((now) => withValue(now, id, value))
    },
    type(id, text) {
      setTyped((now) => ({ ...now, [id]: text }))
      const reading = readTyped(definition, id, text, choice)
      if (reading === null || 'problem' in reading) return
      setErrors(({ [id]: _gone, ...rest }) => rest)
      setGiven((now) => withValue(now, id, reading.value))
    },
    leave(id) {
      const text = typed[id]
      if (text === undefined) return
      const reading = readTyped(definition, id, text, choice)
      if (reading !== null && 'problem' in reading) setErrors((now) => ({ ...now, [id]: reading.problem }))
    },
    hold: () => setHeld(given),
    release: () => setHeld(null),
    reset() {
      setGiven(initial)
      setHeld(startHeld)
      setTyped({})
      setErrors({})
      setLinkProblems([])
    },
  }
}

function withValue(given: Given, id: string, value: GivenValue | undefined): Given {
  const { [id]: _old, ...rest } = given
  return value === undefined ? rest : { ...rest, [id]: value }
}

function readTyped(definition: Definition, id: string, text: string, choice: UnitChoice): ReturnType<typeof readQuantity> | null {
  const input = definition.inputs[id]
  if (input === undefined) return null
  if (input.kind === 'quantity') return readQuantity(input, text, choice)
  if (input.kind !== 'text') return null
  if (text.length > input.maxLength) return { problem: `${input.label} may have at most ${input.maxLength} characters` }
  const problem = input.check?.(text)
  return problem === undefined ? { value: text } : { problem }
}

/** Keeps the address true to what the page shows, so that copying it from the browser works too. */
function writeAddress(definition: Definition, given: Given, held: Given | null): void {
  try {
    history.replaceState(history.state, '', `?${encodeLink(definition, given, held)}${location.hash}`)
  } catch {
    // too long for a link, or too many replacements in a row: the page works on, "Copy link" says why
  }
}
