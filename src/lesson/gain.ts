import { coverageFactor } from '../core/index.ts'

/** The options that somebody chose, by question; null: left blank, which counts as not right. */
export type Chosen = readonly (number | null)[]

/** One person's two tests, questions in their own order. */
export interface Sitting {
  name: string
  before: Chosen
  after: Chosen
}

/** How many people did what at one question. */
export interface Moved {
  /** wrong before, right after */
  gained: number
  /** right before, wrong after */
  lost: number
  /** from one wrong answer to another */
  otherWrong: number
  stayedRight: number
  /** the same wrong answer twice */
  stayedWrong: number
}

export interface Gain {
  people: number
  questions: number
  /** right answers a person, mean of the class */
  before: number
  after: number
  /** after less before, mean of the class */
  gain: number
  /** half the width of the interval about the gain, 95 %; null with one person, who has no spread */
  plusMinus: number | null
  items: readonly Moved[]
}

const PROBABILITY = 0.95

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

/** What the standard deviation of a class's differences is multiplied with to give ± of their mean at 95 %. */
export const widening = (people: number): number =>
  coverageFactor({ degreesOfFreedom: people - 1, probability: PROBABILITY }) / Math.sqrt(people)

/** Mean of differences, and half the width of its interval (Student's t); null for one alone. */
export function meanDifference(differences: readonly number[]): {
  mean: number
  deviation: number | null
  plusMinus: number | null
} {
  const middle = mean(differences)
  const people = differences.length
  if (people < 2) return { mean: middle, deviation: null, plusMinus: null }
  const squares = differences.reduce((sum, each) => sum + (each - middle) ** 2, 0)
  const deviation = Math.sqrt(squares / (people - 1))
  return { mean: middle, deviation, plusMinus: widening(people) * deviation }
}

function movedAt(sittings: readonly Sitting[], question: number, right: number): Moved {
  const moved = { gained: 0, lost: 0, otherWrong: 0, stayedRight: 0, stayedWrong: 0 }
  for (const { before, after } of sittings) {
    const [was, is] = [before[question] === right, after[question] === right]
    if (was) moved[is ? 'stayedRight' : 'lost']++
    else if (is) moved.gained++
    else moved[before[question] === after[question] ? 'stayedWrong' : 'otherWrong']++
  }
  return moved
}

/** What a class gained between its two tests; `rights` is the right option of each question. Nobody at all is refused. */
export function gainOf(sittings: readonly Sitting[], rights: readonly number[]): Gain {
  if (sittings.length === 0) throw new RangeError('gainOf: nobody took the tests')
  const score = (chosen: Chosen): number =>
    rights.filter((right, question) => chosen[question] === right).length
  const before = sittings.map((each) => score(each.before))
  const after = sittings.map((each) => score(each.after))
  const { mean: gain, plusMinus } = meanDifference(after.map((each, at) => each - before[at]!))
  return {
    people: sittings.length,
    questions: rights.length,
    before: mean(before),
    after: mean(after),
    gain,
    plusMinus,
    items: rights.map((right, question) => movedAt(sittings, question, right)),
  }
}
