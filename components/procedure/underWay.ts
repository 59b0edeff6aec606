import type { Book } from '../../src/record/book.ts'
import { sheetOf } from '../../src/record/sheet.ts'

/** Whether the work on this page has begun and is not done: something is ticked or written, and a step in sight is open. */
export function underWay(root: HTMLElement, book: Book): boolean {
  const lists = [root, ...root.querySelectorAll<HTMLElement>('[data-procedure]')]
  const begun = lists.some(({ dataset }) => {
    const { ticks, readings } = sheetOf(book, dataset['procedure'] ?? '')
    return Object.keys(ticks).length > 0 || Object.keys(readings).length > 0
  })
  const open = root.querySelector('[data-step]:not([hidden]) [data-tick]:not(:checked)')
  return begun && open !== null
}
