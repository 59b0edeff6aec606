import { loadUnitChoice, UNITS_EVENT } from '../calculator/unit-choice-store.ts'
import type { Book } from '../../src/record/book.ts'
import type { Taken } from '../../src/record/carry.ts'
import { startedAgain } from '../../src/record/sheet.ts'
import { changeBook, loadBook, onOtherTab } from '../../src/record/store.ts'
import { ask } from './ask.ts'
import { boxes } from './boxes.ts'
import { carryPanels } from './carry-panels.ts'
import { ticks } from './ticks.ts'

/* A procedure's sheet: what is ticked and written is kept in this browser, under the procedure's and the steps' ids. */

interface Data {
  taken: readonly Taken[]
  titles: readonly { id: string; title: string }[]
}

function start(root: HTMLElement, data: Data): void {
  const procedure = root.dataset['procedure'] ?? ''
  const edition = root.dataset['edition'] ?? ''
  const progress = root.querySelector<HTMLElement>('[data-progress]')
  const titles = new Map(data.titles.map(({ id, title }) => [id, title]))
  const change = (how: (book: Book) => Book): void => {
    const { book, kept } = changeBook((now) => ({ ...how(now), edition }))
    show(book)
    if (!kept && progress) progress.textContent = 'This browser keeps nothing for this site. Print the page, or write the readings on paper.'
  }
  const parts = [
    ticks(root, procedure, change),
    boxes(root, procedure, data.taken, titles, loadUnitChoice, change),
    carryPanels(root, procedure, data.taken, root.dataset['base'] ?? '/', loadUnitChoice),
  ]
  const show = (book: Book): void => {
    for (const part of parts) part(book)
  }
  const again = root.querySelector<HTMLElement>('[data-again]')
  again?.querySelector('[data-ask]')?.addEventListener('click', () => {
    ask(again, { text: 'Clear every tick and reading of this procedure?', yes: 'Clear them', no: 'Keep them' }, () =>
      change((book) => startedAgain(book, procedure)),
    )
  })
  show(loadBook())
  onOtherTab(() => show(loadBook()))
  document.addEventListener(UNITS_EVENT, () => show(loadBook()))
  // a page that the browser kept while the reader was at the calculator
  addEventListener('pageshow', (event) => {
    if (event.persisted) show(loadBook())
  })
}

const root = document.querySelector<HTMLElement>('[data-procedure]')
const data = document.querySelector('#readings-of-the-job')?.textContent
if (root && data) start(root, JSON.parse(data) as Data)
