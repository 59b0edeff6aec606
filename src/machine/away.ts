import type { BikeSheets } from '../bikes/sheet.ts'
import type { UnitChoice } from '../units/choice.ts'
import type { Calculator } from './calculator.ts'
import { evaluate } from './evaluate.ts'
import type { Evaluation } from './evaluate.ts'
import type { Given } from './given.ts'

/* A calculator whose work takes longer than a frame is worked out beside the page, in a worker. What goes there and back is plain data. */

/** A state to be computed; its number tells the answer from that to an earlier question. */
export interface Question {
  number: number
  given: Given
  held: Given | null
  bikes: BikeSheets
  choice: UnitChoice
}

/** What a state comes to; `more` where the work on it goes on, and a better answer to the same question follows. */
export interface Answer {
  number: number
  evaluation: Evaluation
  more?: boolean
}

/** The answers to a question, one after the other, each with the work that leads to it; null for a stretch of work that has nothing new to tell. */
export type Answerer = (question: Question) => Iterable<Answer | null>

/** Work that can rest on the way. */
export interface InParts {
  /** a new question: nothing of it was told yet */
  begin(): void
  /** lets the next evaluation take about so long [ms] */
  allow(time: number): void
  /** how far that evaluation came: nothing to tell yet or nothing new, something, all */
  cameTo(): 'nothing' | 'some' | 'all'
}

/** How long the first stretch of work takes [ms], on whatever device: short enough that a new input is seen at once. */
const FIRST = 40
/** How long a stretch takes at most [ms]. */
const LONGEST = 160

/** Answers questions by computing a calculator's state, at once or in parts. */
export const answererOf = (definition: Calculator, parts?: InParts): Answerer =>
  function* ({ number, given, held, bikes, choice }) {
    parts?.begin()
    for (let time = FIRST; ; time = Math.min(2 * time, LONGEST)) {
      parts?.allow(time)
      const evaluation = evaluate(definition, given, { bikes, choice }, held)
      const far = parts?.cameTo() ?? 'all'
      if (far === 'nothing') yield null
      else yield { number, evaluation, ...(far === 'some' ? { more: true } : {}) }
      if (far === 'all') return
    }
  }

/**
 * Takes questions as they come and answers the last of them alone, once those that wait have come in: a slider asks more than can be answered. Between two
 * stretches of work it looks for a new question, which ends the work on the one before. `later` calls back after what is waiting.
 */
export function lastAlone(
  answer: Answerer,
  tell: (answer: Answer) => void,
  later: (call: () => void) => void,
): (question: Question) => void {
  let work: Iterator<Answer | null> | null = null
  const go = (): void => {
    const { done, value } = work!.next()
    if (!done && value) tell(value)
    if (done || (value && !value.more)) work = null
    else later(go)
  }
  return (question) => {
    const busy = work !== null
    work = answer(question)[Symbol.iterator]()
    if (!busy) later(go)
  }
}
