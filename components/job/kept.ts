import type { Book } from '../../src/record/book.ts'
import { entriesOf, tickState } from '../../src/record/sheet.ts'
import type { Change } from '../procedure/ticks.ts'

/* What a card keeps beside its steps: its gates' ticks, initials and the maker's torques. They are on a sheet of the job's own. */

const today = (): string => new Date().toISOString().slice(0, 10)

/** The sheet of a job. */
export const sheetOfJob = (job: string): string => `job.${job}`

/** Boxes are named "torque.procedure.step.0", "initials.procedure.step", "sign.gate.0"; a gate's tick vouches for its words. */
export function kept(root: HTMLElement, job: string, change: Change): (book: Book) => void {
  const sheet = sheetOfJob(job)
  const boxes = [...root.querySelectorAll<HTMLInputElement>('[data-kept]')]
  const gates = [...root.querySelectorAll<HTMLInputElement>('[data-gate-tick]')]
  const idOf = (gate: HTMLInputElement): string => `gate.${gate.dataset['gateTick'] ?? ''}`
  const hashOf = (gate: HTMLInputElement): string => gate.dataset['hash'] ?? ''
  for (const box of boxes)
    box.addEventListener('input', () => {
      const entry = { typed: box.value, unit: '', value: null }
      const [reading, at] = [box.dataset['kept'] ?? '', today()]
      const what = `${box.labels?.[0]?.textContent.trim() ?? reading}: ${box.value}`
      change({ do: 'write', procedure: sheet, reading, box: 0, entry, at }, what)
    })
  for (const gate of gates)
    gate.addEventListener('change', () => {
      const step = idOf(gate)
      if (gate.checked)
        change(
          { do: 'tick', procedure: sheet, step, hash: hashOf(gate), at: today() },
          `${step}: done`,
        )
      else change({ do: 'untick', procedure: sheet, step }, `${step}: open again`)
    })
  return (book) => {
    for (const box of boxes) {
      const text = entriesOf(book, sheet, box.dataset['kept'] ?? '')[0]?.typed ?? ''
      if (box !== document.activeElement && box.value !== text) box.value = text
    }
    for (const gate of gates)
      gate.checked = tickState(book, sheet, idOf(gate), hashOf(gate)) === 'ticked'
  }
}
