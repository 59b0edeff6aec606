/* Questions in the text. As served, answers and reasons are in sight, so that a page works printed or without script. This
   script closes them, turns options into radio buttons, and tells the reasons once the reader has answered: those of a
   prediction under the calculator that it opens, so that the picture comes first, those of other questions under the buttons.
   Nothing above a button that was pressed changes its height. */

import { button, keep, readAnswers } from './answers.ts'
import {
  calculatorAfter,
  closeCalculator,
  followAddress,
  goTo,
  openCalculator,
} from './closedCard.ts'
import { tellAnswered } from './missed.ts'

/** Turns each option into a radio button whose label is the answer; its value is the option's place in the source, which no drawn order changes. */
function addRadios(question: HTMLElement, id: string): HTMLInputElement[] {
  return [...question.querySelectorAll<HTMLElement>('[data-option]')].map((option) => {
    const answer = option.querySelector<HTMLElement>('.answer')!
    const why = answer.querySelector<HTMLElement>('.why')
    const label = document.createElement('label')
    const radio = document.createElement('input')
    radio.type = 'radio'
    radio.name = id
    radio.value = option.dataset['option'] ?? ''
    const words = document.createElement('span')
    for (const node of [...answer.childNodes]) if (node !== why) words.append(node)
    label.append(radio, words)
    answer.replaceChildren(label)
    const verdict = option.querySelector<HTMLElement>('.verdict')!
    option.append(verdict, ...(why ? [why] : []))
    return radio
  })
}

const optionOf = (radio: HTMLInputElement): HTMLElement =>
  radio.closest<HTMLElement>('[data-option]')!
const optionText = (radio: HTMLInputElement): string =>
  (radio.closest('label')?.textContent?.trim() ?? '').replace(/\.$/, '')
const isRight = (radio: HTMLInputElement): boolean => optionOf(radio).dataset['right'] === 'true'

/** Verdict and reason of each option, the reader's own first. */
function reasons(
  radios: readonly HTMLInputElement[],
  chosen: HTMLInputElement | null,
): HTMLElement {
  const box = document.createElement('div')
  box.className = 'reasons'
  const others = radios.filter((radio) => radio !== chosen)
  for (const radio of chosen ? [chosen, ...others] : others) {
    const line = document.createElement('p')
    const verdict = document.createElement('b')
    verdict.textContent = isRight(radio) ? 'Right.' : 'No.'
    line.append(verdict, ` “${optionText(radio)}.”`)
    const why = optionOf(radio).querySelector('.why')?.cloneNode(true)
    box.append(line, ...(why ? [why] : []))
  }
  return box
}

function said(place: HTMLElement, radio: HTMLInputElement): HTMLElement {
  const line = document.createElement('p')
  line.className = 'said'
  line.textContent = `You said: “${optionText(radio)}”. ${isRight(radio) ? 'Now see it in the numbers.' : 'Now see what the numbers say.'}`
  place.prepend(line)
  return line
}

function setUp(question: HTMLElement): void {
  const predicts = question.dataset['question'] === 'predict'
  const id = `${location.pathname}#${question.dataset['questionId'] ?? ''}`
  const radios = addRadios(question, id)
  const place = predicts ? calculatorAfter(question) : null
  question.dataset['open'] = 'false'
  if (place) closeCalculator(place)
  const actions = document.createElement('div')
  actions.className = 'act'
  const commit = button(predicts ? 'Show me' : 'Check', 'strong')
  const other = button(predicts ? 'Skip to the calculator' : 'Show the answer', 'plain')
  const status = document.createElement('p')
  status.className = 'note'
  status.setAttribute('role', 'status')
  actions.append(commit, other)
  question.append(actions, status)

  const clear = (): void => {
    delete question.dataset['answered']
    place?.querySelector('.said')?.remove()
    for (const told of [question, place]) told?.querySelector(':scope > .reasons')?.remove()
  }
  const tell = (radio: HTMLInputElement | null): void => {
    clear()
    question.dataset['answered'] = ''
    other.textContent = 'Answer again'
    ;(place ?? question).append(reasons(radios, radio))
  }
  const answer = (radio: HTMLInputElement, fresh: boolean): void => {
    radio.checked = true
    tell(radio)
    if (fresh) {
      keep(id, Number(radio.value))
      tellAnswered(question, isRight(radio))
    }
    if (!place)
      status.textContent = isRight(radio)
        ? 'Right. The reason for each answer follows.'
        : 'Not so. The reason for each answer follows.'
    else {
      openCalculator(place)
      const line = said(place, radio)
      status.textContent =
        'Your answer is kept. The numbers are in the calculator below, and the reasons under it.'
      if (fresh) goTo(place, line)
    }
  }
  commit.addEventListener('click', () => {
    const chosen = radios.find((radio) => radio.checked)
    if (chosen) answer(chosen, true)
    else status.textContent = 'Choose an answer first, or skip.'
  })
  other.addEventListener('click', () => {
    if ('answered' in question.dataset) {
      clear()
      for (const radio of radios) radio.checked = false
      status.textContent = ''
      other.textContent = predicts ? 'Skip to the calculator' : 'Show the answer'
      keep(id, null)
    } else if (place) {
      openCalculator(place)
      status.textContent = 'Skipped. The calculator is open.'
      goTo(place, place.querySelector<HTMLElement>('.sheet-inner') ?? place)
    } else tell(null)
  })
  const stored = radios.find((radio) => radio.value === String(readAnswers()[id]))
  if (stored) answer(stored, false)
}

for (const question of document.querySelectorAll<HTMLElement>(
  '[data-question]:not([data-question="number"])',
))
  setUp(question)
followAddress()
addEventListener('hashchange', followAddress)
