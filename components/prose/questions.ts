/* Questions in the text. As served, answers and reasons are in sight, so that a page works printed or without script. This
   script closes them, turns options into radio buttons, and opens them again once the reader has answered. */

const KEY = 'witness-mark.answers'

type Answers = Record<string, number>

function readAnswers(): Answers {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}')
    return typeof stored === 'object' && stored !== null ? (stored as Answers) : {}
  } catch {
    return {}
  }
}

function keep(id: string, choice: number | null): void {
  const { [id]: _gone, ...rest } = readAnswers()
  try {
    localStorage.setItem(KEY, JSON.stringify(choice === null ? rest : { ...rest, [id]: choice }))
  } catch {
    // not kept; the page works on
  }
}

function button(text: string, className: string): HTMLButtonElement {
  const element = document.createElement('button')
  element.type = 'button'
  element.className = className
  element.textContent = text
  return element
}

/** Turns each option into a radio button whose label is the answer. */
function addRadios(question: HTMLElement, id: string): HTMLInputElement[] {
  return [...question.querySelectorAll<HTMLElement>('[data-option]')].map((option, index) => {
    const answer = option.querySelector<HTMLElement>('.answer')!
    const why = answer.querySelector<HTMLElement>('.why')
    const label = document.createElement('label')
    const radio = document.createElement('input')
    radio.type = 'radio'
    radio.name = id
    radio.value = String(index)
    const words = document.createElement('span')
    for (const node of [...answer.childNodes]) if (node !== why) words.append(node)
    label.append(radio, words)
    answer.replaceChildren(label)
    const verdict = option.querySelector<HTMLElement>('.verdict')!
    option.append(verdict, ...(why ? [why] : []))
    return radio
  })
}

const optionText = (radio: HTMLInputElement): string => radio.closest('label')?.textContent?.trim() ?? ''

/** The calculator that a prediction keeps closed: the next one after it in the chapter. */
function calculatorAfter(question: HTMLElement): HTMLElement | null {
  for (const place of document.querySelectorAll<HTMLElement>('[data-calculator-place]')) {
    if (question.compareDocumentPosition(place) & Node.DOCUMENT_POSITION_FOLLOWING) return place
  }
  return null
}

function closeCalculator(place: HTMLElement): () => void {
  place.classList.add('closed')
  const note = document.createElement('p')
  note.className = 'closed-note'
  note.textContent = 'The calculator opens when you have said what you expect, or skipped.'
  place.prepend(note)
  return () => {
    place.classList.remove('closed')
    note.remove()
  }
}

function showSaid(place: HTMLElement, said: string, isRight: boolean): void {
  place.querySelector('.said')?.remove()
  const line = document.createElement('p')
  line.className = 'said'
  line.textContent = `You said: “${said.replace(/\.$/, '')}”. ${isRight ? 'Now see it in the numbers.' : 'Now see what the numbers say.'}`
  place.prepend(line)
}

function setUp(question: HTMLElement): void {
  const predicts = question.dataset['question'] === 'predict'
  const id = `${location.pathname}#${question.dataset['questionId'] ?? ''}`
  const radios = addRadios(question, id)
  const place = predicts ? calculatorAfter(question) : null
  question.dataset['open'] = 'false'
  const openCalculator = place ? closeCalculator(place) : null
  const actions = document.createElement('div')
  actions.className = 'act'
  const commit = button(predicts ? 'Show me' : 'Check', 'strong')
  const other = button(predicts ? 'Skip to the calculator' : 'Show the answer', 'plain')
  const status = document.createElement('p')
  status.className = 'note'
  status.setAttribute('role', 'status')
  actions.append(commit, other)
  question.append(actions, status)

  const answer = (index: number, fresh: boolean): void => {
    const radio = radios[index]
    if (!radio) return
    radio.checked = true
    question.dataset['open'] = 'true'
    const isRight = radio.closest<HTMLElement>('[data-option]')?.dataset['right'] === 'true'
    openCalculator?.()
    if (place) showSaid(place, optionText(radio), isRight)
    status.textContent = isRight ? 'Right. The reasons stand under each answer.' : 'Not so. The reason stands under your answer.'
    other.textContent = 'Answer again'
    if (fresh) keep(id, index)
  }
  commit.addEventListener('click', () => {
    const chosen = radios.findIndex((radio) => radio.checked)
    if (chosen === -1) status.textContent = 'Choose an answer first, or skip.'
    else answer(chosen, true)
  })
  other.addEventListener('click', () => {
    if (question.dataset['open'] === 'true') {
      question.dataset['open'] = 'false'
      for (const radio of radios) radio.checked = false
      status.textContent = ''
      other.textContent = predicts ? 'Skip to the calculator' : 'Show the answer'
      keep(id, null)
      return
    }
    if (predicts) openCalculator?.()
    else question.dataset['open'] = 'true'
    status.textContent = predicts ? 'Skipped. The calculator is open.' : ''
    if (place) place.scrollIntoView({ block: 'start' })
  })
  const stored = readAnswers()[id]
  if (stored !== undefined) answer(stored, false)
}

for (const question of document.querySelectorAll<HTMLElement>('[data-question]')) setUp(question)
