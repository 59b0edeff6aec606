/* A prediction whose answer is a number: set with a slider or typed, kept on this device, then told beside the calculator
   that it opens: what the reader said and what it is, and the reasons, that of the nearest known number first. */

import { button, keep, readAnswers } from './answers.ts'
import {
  calculatorAfter,
  closeCalculator,
  followAddress,
  goTo,
  openCalculator,
} from './closedCard.ts'
import { tellAnswered } from './missed.ts'
import { isNear, knownIn, numberField, typedNumber } from './typed.ts'
import type { Known } from './typed.ts'

/** A slider that the field follows and that follows the field. */
function slider(question: HTMLElement, input: HTMLInputElement): HTMLInputElement {
  const { from = '0', to = '100', step = '1', unit = '' } = question.dataset
  const range = document.createElement('input')
  range.type = 'range'
  range.min = from
  range.max = to
  range.step = step
  range.value = String((Number(from) + Number(to)) / 2)
  range.setAttribute('aria-labelledby', input.getAttribute('aria-labelledby')!)
  const say = (): void => range.setAttribute('aria-valuetext', `${range.value} ${unit}`)
  say()
  range.addEventListener('input', () => {
    input.value = range.value
    say()
  })
  input.addEventListener('input', () => {
    const typed = typedNumber(input)
    if (!('value' in typed)) return
    range.value = String(typed.value)
    say()
  })
  return range
}

/** Each known number with its reason, the nearest to the reader's first. */
function reasons(known: readonly Known[], value: number): HTMLElement {
  const box = document.createElement('div')
  box.className = 'reasons'
  const byDistance = [...known].sort(
    (a, b) => Math.abs(a.value - value) - Math.abs(b.value - value),
  )
  for (const each of byDistance) {
    const line = document.createElement('p')
    const verdict = document.createElement('b')
    verdict.textContent = each.right ? `It is ${each.shown}.` : `Not ${each.shown}.`
    line.append(verdict)
    const why = each.element.querySelector('.why')?.cloneNode(true)
    box.append(line, ...(why ? [why] : []))
  }
  return box
}

function said(place: HTMLElement, question: HTMLElement, value: number, right: Known): HTMLElement {
  const line = document.createElement('p')
  line.className = 'said'
  const yours = `${value} ${question.dataset['unit'] ?? ''}`.replace('-', '−').trim()
  line.textContent = isNear(right, value)
    ? `You said ${yours}, and it is ${right.shown}. Now see it in the numbers.`
    : `You said ${yours}. It is ${right.shown}. Now see what the numbers say.`
  place.prepend(line)
  return line
}

function setUp(question: HTMLElement): void {
  const own = question.dataset['questionId'] ?? ''
  const id = `${location.pathname}#${own}`
  const known = knownIn(question)
  const right = known.find((each) => each.right)
  const place = calculatorAfter(question)
  if (!right || !place) return
  question.dataset['open'] = 'false'
  closeCalculator(place)
  const { row, input } = numberField(question, own)
  row.prepend(slider(question, input), ' ')
  const actions = document.createElement('div')
  actions.className = 'act'
  const commit = button('Show me', 'strong')
  const skip = button('Skip to the calculator', 'plain')
  actions.append(commit, skip)
  const status = document.createElement('p')
  status.className = 'note'
  status.setAttribute('role', 'status')
  question.append(row, actions, status)

  const clear = (): void => {
    place.querySelector(':scope > .said')?.remove()
    place.querySelector(':scope > .reasons')?.remove()
  }
  const answer = (value: number, fresh: boolean): void => {
    clear()
    openCalculator(place)
    place.append(reasons(known, value))
    const line = said(place, question, value, right)
    status.textContent =
      'Your answer is kept. The numbers are in the calculator below, and the reasons under it.'
    if (!fresh) return
    keep(id, value)
    tellAnswered(question, isNear(right, value))
    goTo(place, line)
  }
  const take = (): void => {
    const typed = typedNumber(input)
    if ('value' in typed) answer(typed.value, true)
    else status.textContent = typed.problem
  }
  commit.addEventListener('click', take)
  input.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') take()
  })
  skip.addEventListener('click', () => {
    openCalculator(place)
    status.textContent = 'Skipped. The calculator is open.'
    goTo(place, place.querySelector<HTMLElement>('.sheet-inner') ?? place)
  })
  const stored = readAnswers()[id]
  if (typeof stored !== 'number') return
  input.value = String(stored)
  input.dispatchEvent(new Event('input'))
  answer(stored, false)
}

for (const question of document.querySelectorAll<HTMLElement>('[data-question="number"]'))
  setUp(question)
followAddress()
addEventListener('hashchange', followAddress)
