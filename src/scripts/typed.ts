import { readNumber } from '../units/number.ts'

/* A number that a reader types or sets, and the numbers that a question knows an answer for. As served each known number
   stands with its reason, so that a page works printed or without script. */

/** A number that a question has words for. */
export interface Known {
  element: HTMLElement
  value: number
  /** how far a reader's number may be from it and still be taken for it */
  within: number
  right: boolean
  /** the number with its unit, as the page shows it */
  shown: string
}

/** The numbers that a question or an exercise has words for. */
export const knownIn = (box: HTMLElement): Known[] =>
  [...box.querySelectorAll<HTMLElement>('[data-near]')].map((element) => ({
    element,
    value: Number(element.dataset['near']),
    within: Number(element.dataset['within']),
    right: element.dataset['right'] === 'true',
    shown: element.dataset['shown'] ?? '',
  }))

/** Whether a reader's number is taken for this one; a hair more than the limit, since 0.3 − 0.2 is not 0.1 in a computer. */
export const isNear = (known: Known, value: number): boolean =>
  Math.abs(known.value - value) <= known.within * (1 + 1e-9)

/** A field for a number, with its unit beside it, named by the question's own words. */
export function numberField(
  box: HTMLElement,
  id: string,
): { row: HTMLElement; input: HTMLInputElement } {
  const ask = box.querySelector<HTMLElement>('.ask')!
  ask.id = `ask-${id}`
  const row = document.createElement('p')
  row.className = 'number-field'
  const input = document.createElement('input')
  input.type = 'text'
  input.inputMode = 'decimal'
  input.autocomplete = 'off'
  input.className = 'typed'
  const unit = document.createElement('span')
  unit.id = `unit-${id}`
  unit.textContent = box.dataset['unit'] ?? ''
  input.setAttribute('aria-labelledby', `${ask.id} ${unit.id}`)
  row.append(input, ' ', unit)
  return { row, input }
}

/** What was typed as a number, or in words what to do about it; what was typed stays. */
export function typedNumber(input: HTMLInputElement): { value: number } | { problem: string } {
  const reading = readNumber(input.value)
  if ('value' in reading) return reading
  return {
    problem:
      reading.problem === 'empty'
        ? 'Write a number first.'
        : reading.problem === 'ambiguous'
          ? `“${input.value}” can be read in two ways. Write it without a mark between the thousands.`
          : `“${input.value}” is not a number. Write figures alone, such as 7.5.`,
  }
}
