import { UNKNOWN } from '../../src/machine/given.ts'
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { BikeSheets } from '../../src/bikes/sheet.ts'
import type { Calculator } from '../../src/machine/calculator.ts'
import type { Given, GivenValue } from '../../src/machine/given.ts'
import { beforeOf, defaultsOf } from '../../src/machine/evaluate.ts'
import type { Evaluation } from '../../src/machine/evaluate.ts'
import { createSay } from '../../src/units/say.ts'
import type { Say } from '../../src/units/say.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { openingStand, touched } from './stand.ts'
import type { Mode, Origins, Stand } from './stand.ts'
import { useAddress } from './useAddress.ts'
import { useEvaluated } from './useEvaluated.ts'
import { useFields } from './useFields.ts'
import type { Fields } from './useFields.ts'
import { useHistory } from './useHistory.ts'
import { usePlay } from './usePlay.ts'
import { useUnitChoice } from './useUnitChoice.ts'

export interface CardProps {
  given: Given
  held: Given | null
  bikes: BikeSheets
  mode: Mode
  /** base path of the site, with a slash at its end */
  base: string
  /** where anybody's browser finds the site, with a slash at its end; null where nobody has said */
  publicAddress: string | null
  /** prefix of element ids */
  prefix: string
  /** what the page opens with, where it is worked out beside the page */
  opening?: Evaluation | null
  /** inputs that are read off the bike: they have no slider */
  readings: readonly string[]
  /** the only inputs that are shown: a card that opens another page has stage and these alone */
  only?: readonly string[]
}

/** One of the reader's bikes, as a choice in a card. */
export interface OwnBike {
  /** what a link carries of it */
  code: string
  name: string
  /** fills the card with its figures */
  use(): void
}

export interface CalculatorState extends Fields, Omit<Stand, 'example'> {
  definition: Calculator
  /** the "before" that a link must carry: the one held, or the example's while it is shown */
  linked: Given | null
  /** whether what is compared with is the example's, not one that the reader held or a link brought */
  exampleBefore: boolean
  /** the evaluation of the last state in which every field could be read */
  evaluation: Evaluation
  /** whether a newer one is being worked out beside the page */
  waiting: boolean
  /** whether the evaluation is this state's own, and a better one is being worked out */
  looking: boolean
  choice: UnitChoice
  say: Say
  bikes: CardProps['bikes']
  base: string
  publicAddress: string | null
  /** sentences about the link that opened the page */
  linkProblems: readonly string[]
  /** takes the focus to the element of this id once it is there, so that it never falls to the page when a control goes */
  focus(id: string): void
  /** back from "I don't know": the example's value, or the blank that it was */
  know(id: string): void
  hold(): void
  release(): void
  reset(): void
  /** the state that this one is compared with, as given */
  from: Given | null
  readings: readonly string[]
  /** sets several values at once, each with where it comes from: one step to take back */
  fill(values: Given, origins: Origins): void
  /** the reader's bikes, once they were read */
  ownBikes: readonly OwnBike[]
  offerBikes(bikes: readonly OwnBike[]): void
  /** take the last change back, or do it again; null where there is none */
  undo: (() => void) | null
  redo: (() => void) | null
  /** the hand has let go of a control */
  endGesture(): void
  /** shows the change happening, once; null where nothing differs */
  play: (() => void) | null
}

/** What a field goes back to from "I don't know": the value that the card opened with, or the usual one where it opened with none. */
const knownAgain = (
  { inputs }: Calculator,
  { given }: Stand,
  id: string,
): GivenValue | undefined =>
  given[id] === UNKNOWN && inputs[id]?.kind === 'quantity' ? inputs[id].default : given[id]

/** Where a card stands with several values set at once. */
const filled = (now: Stand, values: Given, origins: Origins, mode: Mode): Partial<Stand> => ({
  given: { ...now.given, ...values },
  origins: { ...now.origins, ...origins },
  ...(mode === 'chapter' ? {} : { example: false }),
})

/** Keeps a card's values, reads its link, and computes. */
export function useCalculator(definition: Calculator, props: CardProps): CalculatorState {
  const { given: start, held: startHeld, bikes, mode } = props
  const choice = useUnitChoice(mode !== 'embed')
  const initial = useMemo(
    () => openingStand({ ...defaultsOf(definition), ...start }, startHeld),
    [definition],
  )
  const history = useHistory(initial)
  const stand = history.value
  const change = (update: (now: Stand) => Partial<Stand>, key: string): void =>
    history.change((now) => ({ ...now, ...update(now) }), key)
  const [ownBikes, offerBikes] = useState<readonly OwnBike[]>([])
  const stands = { initial, stand, setStand: history.replace, choice }
  const ids = Object.keys(bikes)
  const [linkProblems, setLinkProblems] = useAddress(definition, ids, mode, stands)
  const fields = useFields(definition, choice, {
    touch: (id) => change((now) => touched(now, id, mode, definition.exampleBaseline === true), id),
    change: (update, id) => change(({ given }) => ({ given: update(given) }), id),
  })
  const computed = useEvaluation(definition, stand, props, choice)
  const { given, held, example } = stand
  const withTyped = (step: (() => void) | null): (() => void) | null =>
    step && (() => (fields.clear(), step()))
  const exampleBaseline = held === null && example && definition.exampleBaseline === true
  return {
    ...fields,
    ...stand,
    definition,
    linked: exampleBaseline ? { ...given, ...definition.baseline?.(given) } : held,
    exampleBefore: exampleBaseline || (held !== null && held === startHeld),
    ...computed,
    choice,
    bikes,
    base: props.base,
    publicAddress: props.publicAddress,
    linkProblems,
    focus: useFocus(),
    know(id) {
      const value = knownAgain(definition, initial, id)
      fields.set(id, value)
      if (value !== undefined)
        change(({ origins }) => ({ origins: { ...origins, [id]: 'example' } }), id)
    },
    hold: () => change((now) => ({ held: now.given, dropped: false }), ''),
    release: () => change(() => ({ held: null, example: false, dropped: false }), ''),
    reset: () => (history.change(() => initial, ''), fields.clear(), setLinkProblems([])),
    readings: props.readings,
    fill: (values, origins) => (
      fields.clear(),
      change((now) => filled(now, values, origins, mode), '')
    ),
    ownBikes,
    offerBikes,
    undo: withTyped(history.undo),
    redo: withTyped(history.redo),
    endGesture: history.endGesture,
  }
}

/** Computes where the card stands, or while a change is played each frame of it. */
function useEvaluation(
  definition: Calculator,
  { given, held, example }: Stand,
  { bikes, opening = null }: Pick<CardProps, 'bikes' | 'opening'>,
  choice: UnitChoice,
): Pick<CalculatorState, 'evaluation' | 'waiting' | 'looking' | 'from' | 'play' | 'say'> {
  const usable = useMemo(
    () => (example ? definition : withoutExampleBaseline(definition)),
    [definition, example],
  )
  const say = useMemo(() => createSay(choice), [choice])
  const from = useMemo(() => beforeOf(usable, given, held), [usable, given, held])
  const { playing, play } = usePlay(from, given)
  const state = { given: playing ?? given, held: playing ? from : held, bikes, choice }
  const evaluated = useEvaluated(usable, state, say, opening)
  return { ...evaluated, from, play, say }
}

function withoutExampleBaseline(definition: Calculator): Calculator {
  if (definition.exampleBaseline !== true) return definition
  const { baseline: _example, ...rest } = definition
  return rest
}

/** A function that takes the focus to an element once the next render has put it there. */
function useFocus(): (id: string) => void {
  const wanted = useRef('')
  useLayoutEffect(() => {
    if (wanted.current !== '') document.getElementById(wanted.current)?.focus()
    wanted.current = ''
  })
  return (id) => {
    wanted.current = id
  }
}
