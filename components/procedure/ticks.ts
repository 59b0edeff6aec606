import type { Book } from '../../src/record/book.ts'
import { ticked, tickState, unticked } from '../../src/record/sheet.ts'

/** Changes the kept book; the page shows the result. */
export type Change = (change: (book: Book) => Book) => void

interface StepElement {
  id: string
  hash: string
  box: HTMLInputElement
  note: HTMLElement | null
}

function stepsOf(root: HTMLElement): StepElement[] {
  return [...root.querySelectorAll<HTMLElement>('[data-step]')].map((element) => ({
    id: element.dataset['step'] ?? '',
    hash: element.dataset['hash'] ?? '',
    box: element.querySelector<HTMLInputElement>('[data-tick]')!,
    note: element.querySelector<HTMLElement>('[data-changed]'),
  }))
}

function progressText(steps: readonly StepElement[]): string {
  const done = steps.filter(({ box }) => box.checked).length
  const next = steps.findIndex(({ box }) => !box.checked) + 1
  if (done === 0) return 'Ticks and readings stay in this browser.'
  return next === 0 ? `All ${steps.length} steps are ticked.` : `${done} of ${steps.length} steps ticked. Go on at step ${next}.`
}

/** The tick boxes of a procedure: kept with the words that they vouch for. */
export function ticks(root: HTMLElement, procedure: string, change: Change): (book: Book) => void {
  const steps = stepsOf(root)
  const progress = root.querySelector<HTMLElement>('[data-progress]')
  for (const { id, hash, box } of steps) {
    box.addEventListener('change', () => {
      const at = new Date().toISOString().slice(0, 10)
      change((book) => (box.checked ? ticked(book, procedure, id, hash, at) : unticked(book, procedure, id)))
    })
  }
  return (book) => {
    for (const { id, hash, box, note } of steps) {
      const state = tickState(book, procedure, id, hash)
      box.checked = state === 'ticked'
      if (!note) continue
      note.hidden = state !== 'changed'
      note.textContent =
        state === 'changed' ? `Changed since you ticked it on ${book.sheets[procedure]?.ticks[id]?.at ?? 'an earlier day'}. Read it again, then tick it.` : ''
    }
    if (progress) progress.textContent = progressText(steps)
  }
}
