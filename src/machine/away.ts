import type { BikeSpec } from '../bikes/bikes.ts'
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
  bikes: Readonly<Record<string, BikeSpec>>
  choice: UnitChoice
}

export interface Answer {
  number: number
  evaluation: Evaluation
}

export type Answerer = (question: Question) => Answer

/** Answers questions by computing a calculator's state. */
export const answererOf =
  (definition: Calculator): Answerer =>
  ({ number, given, held, bikes, choice }) => ({
    number,
    evaluation: evaluate(definition, given, { bikes, choice }, held),
  })

/**
 * Takes questions as they come and answers the last of them alone, once those that wait have come in: a slider asks more than can be answered. `later`
 * calls back after what is waiting.
 */
export function lastAlone(
  answer: Answerer,
  tell: (answer: Answer) => void,
  later: (call: () => void) => void,
): (question: Question) => void {
  let waiting: Question | null = null
  return (question) => {
    const asked = waiting !== null
    waiting = question
    if (asked) return
    later(() => {
      const last = waiting!
      waiting = null
      tell(answer(last))
    })
  }
}
