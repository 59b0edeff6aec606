import { FORMS, TEST_LETTERS } from './classTest.ts'
import type { Form, FormNumber } from './classTest.ts'
import type { Chosen, Sitting } from './gain.ts'

export type ReadAnswers = { sittings: readonly Sitting[] } | { problems: readonly string[] }

/** What a learner's own screen shows to be read off: the form's number, then a letter for each question as that form asks it. */
export const codeOf = (form: FormNumber, letters: readonly (string | null)[]): string =>
  `${form}:${letters.map((letter) => (letter ?? '-').toUpperCase()).join('')}`

/** Turns letters in a form's order into options in the questions' own order, or says what is wrong with them. */
function chosenOf(
  text: string,
  forms: Record<FormNumber, Form>,
  number: FormNumber,
): Chosen | string {
  const [, named, rest = ''] = /^(?:(\d+):)?(.*)$/.exec(text.replace(/\s/g, ''))!
  if (named !== undefined && Number(named) !== number)
    return `“${text}” is of form ${named}, where form ${number} belongs`
  const form = forms[number]
  const letters = [...rest.toLowerCase()]
  if (letters.length !== form.length)
    return `“${text}” has ${letters.length} letters in place of ${form.length}: write - for a blank`
  const chosen = new Array<number | null>(form.length).fill(null)
  for (const [at, letter] of letters.entries()) {
    const place = TEST_LETTERS.findIndex((each) => each === letter)
    if (place < 0 && letter !== '-') return `“${letter}” in “${text}” is none of A to D`
    const { question, options } = form[at]!
    chosen[question] = place < 0 ? null : options[place]!
  }
  return chosen
}

function readLine(text: string, line: number, forms: Record<FormNumber, Form>): Sitting | string {
  const fields = text.split(/[;\t,]/).map((field) => field.trim())
  const [name = '', ...answers] = fields
  if (name === '' || answers.length !== FORMS.length)
    return `Line ${line} needs a name, the letters before and the letters after: “${text.trim()}”.`
  const [before, after] = FORMS.map((number, at) => chosenOf(answers[at]!, forms, number))
  const problem = [before, after].find((each) => typeof each === 'string')
  if (problem !== undefined) return `Line ${line}: ${problem}.`
  return { name, before: before as Chosen, after: after as Chosen }
}

/** Reads a line for each person: a name, ten letters before and ten after, parted by semicolons, commas or tabs. */
export function readAnswers(text: string, forms: Record<FormNumber, Form>): ReadAnswers {
  const read = text
    .split('\n')
    .flatMap((line, at) => (line.trim() === '' ? [] : [readLine(line, at + 1, forms)]))
  const problems = read.filter((each) => typeof each === 'string')
  if (read.length === 0) return { problems: ['Type or paste the letters first.'] }
  return problems.length > 0
    ? { problems }
    : { sittings: read.filter((each): each is Sitting => typeof each !== 'string') }
}
