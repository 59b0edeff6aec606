import type { Book } from '../../src/record/book.ts'
import type { SheetChange } from '../../src/record/jobSheets.ts'
import { tickState } from '../../src/record/sheet.ts'

/** Changes what is kept, said in words for the list of changes; the page shows the result. */
export type Change = (change: SheetChange, what: string) => void

interface StepElement {
  id: string
  hash: string
  box: HTMLInputElement
  note: HTMLElement | null
}

function stepsOf(root: HTMLElement): StepElement[] {
  return [...root.querySelectorAll<HTMLElement>('[data-step]')].map((element) => ({
    // on a job card a step is named with its procedure before it
    id: (element.dataset['step'] ?? '').split('/').at(-1) ?? '',
    hash: element.dataset['hash'] ?? '',
    box: element.querySelector<HTMLInputElement>('[data-tick]')!,
    note: element.querySelector<HTMLElement>('[data-changed]'),
  }))
}

/** The beginning of a step, enough to know it by. */
const short = (text: string): string =>
  text.length > 60 ? `${text.replace(/\s+/g, ' ').slice(0, 58)}…` : text.replace(/\s+/g, ' ')

function progressText(steps: readonly StepElement[]): string {
  const done = steps.filter(({ box }) => box.checked).length
  const next = steps.findIndex(({ box }) => !box.checked) + 1
  if (done === 0) return 'Ticks and readings stay in this browser.'
  return next === 0
    ? `All ${steps.length} steps are ticked.`
    : `${done} of ${steps.length} steps ticked. Go on at step ${next}.`
}

/** The tick boxes of a procedure: kept with the words that they vouch for. */
export function ticks(root: HTMLElement, procedure: string, change: Change): (book: Book) => void {
  const steps = stepsOf(root)
  const progress = root.querySelector<HTMLElement>('[data-progress]')
  for (const { id, hash, box } of steps) {
    box.addEventListener('change', () => {
      const at = new Date().toISOString().slice(0, 10)
      const step = box.closest('.tick')?.querySelector('.what')?.textContent.trim() ?? id
      if (box.checked)
        change({ do: 'tick', procedure, step: id, hash, at }, `ticked: ${short(step)}`)
      else change({ do: 'untick', procedure, step: id }, `tick taken away: ${short(step)}`)
    })
  }
  return (book) => {
    for (const { id, hash, box, note } of steps) {
      const state = tickState(book, procedure, id, hash)
      box.checked = state === 'ticked'
      if (!note) continue
      note.hidden = state !== 'changed'
      note.textContent =
        state === 'changed'
          ? `Changed since you ticked it on ${book.sheets[procedure]?.ticks[id]?.at ?? 'an earlier day'}. Read it again, then tick it.`
          : ''
    }
    if (progress) progress.textContent = progressText(steps)
  }
}
