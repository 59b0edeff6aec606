/* The last steps of a worked example, left to the reader: the script folds what follows behind a button. Where the answer is
   a number, it is typed first, and a number that a known mistake gives is answered by naming the mistake. */

import { button, keep, readAnswers } from './answers.ts'
import { tellAnswered } from './missed.ts'
import { isNear, knownIn, numberField, typedNumber } from './typed.ts'

/** The rest of the exercise, after its question, behind a button. */
function folded(turn: HTMLElement): HTMLDetailsElement {
  const rest: Element[] = []
  let next = turn.querySelector('.ask')?.nextElementSibling ?? null
  while (next) {
    rest.push(next)
    next = next.nextElementSibling
  }
  const fold = document.createElement('details')
  const summary = document.createElement('summary')
  summary.textContent = 'How it is worked out'
  fold.append(summary, ...rest)
  turn.append(fold)
  return fold
}

function askForNumber(turn: HTMLElement, fold: HTMLDetailsElement): void {
  const own = turn.dataset['turn'] ?? ''
  const id = `${location.pathname}#${own}`
  const known = knownIn(turn)
  const right = known.find((each) => each.right)
  if (!right) return
  turn.dataset['open'] = 'false'
  const { row, input } = numberField(turn, own)
  const check = button('Check', 'strong')
  row.append(' ', check)
  const said = document.createElement('div')
  said.setAttribute('role', 'status')
  fold.before(row, said)
  const tell = (words: string, reason?: Node | null): void => {
    const line = document.createElement('p')
    line.textContent = words
    said.replaceChildren(line, ...(reason ? [reason] : []))
  }
  const take = (fresh: boolean): void => {
    const typed = typedNumber(input)
    if ('problem' in typed) return tell(typed.problem)
    const met = known.find((each) => isNear(each, typed.value))
    if (fresh) {
      keep(id, typed.value)
      tellAnswered(turn, met?.right === true)
    }
    const why = met?.element.querySelector('.why')?.cloneNode(true)
    if (met?.right) {
      tell(`Right: ${met.shown}.`, why)
      fold.open = true
    } else if (met) tell(`Not ${met.shown}.`, why)
    else tell('Not that. Go through the steps above once more, or see how it is worked out.')
  }
  check.addEventListener('click', () => take(true))
  input.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') take(true)
  })
  const stored = readAnswers()[id]
  if (typeof stored !== 'number') return
  input.value = String(stored)
  take(false)
}

for (const turn of document.querySelectorAll<HTMLElement>('[data-turn]')) {
  const fold = folded(turn)
  if (turn.dataset['unit'] !== undefined) askForNumber(turn, fold)
}
