import { randomStream } from '../core/index.ts'
import { shuffled } from '../worksheet/shuffled.ts'
import type { TestQuestion } from './schema.ts'

/** Form 1 is taken before the class, form 2 after it. */
export const FORMS = [1, 2] as const
export type FormNumber = (typeof FORMS)[number]

/** A form: the questions by place in their list, in the order that the form asks them, with their options' order. */
export type Form = readonly { question: number; options: readonly number[] }[]

export const TEST_LETTERS = ['a', 'b', 'c', 'd'] as const

const places = (length: number): number[] => Array.from({ length }, (_, place) => place)

/** The same questions in this form's order, drawn from its number: every build and browser has the same. */
export function formOf(questions: readonly TestQuestion[], number: FormNumber): Form {
  const random = randomStream(number)
  return shuffled(places(questions.length), random).map((question) => ({
    question,
    options: shuffled(places(questions[question]!.options.length), random),
  }))
}

export const rightOf = ({ options }: TestQuestion): number =>
  options.findIndex(({ right }) => right === true)

/** Where a question is in a form, and the letter of its right answer there. */
export function keyOf(
  form: Form,
  questions: readonly TestQuestion[],
  question: number,
): { number: number; letter: string } {
  const at = form.findIndex((item) => item.question === question)
  const letter = TEST_LETTERS[form[at]!.options.indexOf(rightOf(questions[question]!))]!
  return { number: at + 1, letter }
}
