import { loadUnitChoice, UNITS_EVENT } from '../../src/units/choiceStore.ts'
import type { Taken } from '../../src/record/carry.ts'
import { sayAtWork } from '../../src/offline/atWork.ts'
import { LOOSE } from '../../src/record/records.ts'
import { followSheets } from '../../src/record/store/sheetStore.ts'
import { ask } from './ask.ts'
import { boxes } from './boxes.ts'
import { carryPanels } from './carryPanels.ts'
import { tellKept } from './tellKept.ts'
import { ticks } from './ticks.ts'
import { underWay } from './underWay.ts'
import type { Change } from './ticks.ts'
import { workPanels } from './workPanels.ts'
import type { WorkData } from './workPanels.ts'

/* A procedure's sheet: what is ticked and written is kept in this browser, in the open job of the chosen bike, under the procedure's and the steps' ids. */

interface Data {
  taken: readonly Taken[]
  titles: readonly { id: string; title: string }[]
  work: WorkData
}

function start(root: HTMLElement, data: Data): void {
  const procedure = root.dataset['procedure'] ?? ''
  const edition = root.dataset['edition'] ?? ''
  const progress = root.querySelector<HTMLElement>('[data-progress]')
  const titles = new Map(data.titles.map(({ id, title }) => [id, title]))
  const change: Change = (how, what) => sheets.change(how, what)
  const parts = [
    ticks(root, procedure, change),
    boxes(root, procedure, data.taken, titles, loadUnitChoice, change),
    carryPanels(root, procedure, data.taken, root.dataset['base'] ?? '/', loadUnitChoice),
    workPanels(root, procedure, data.taken, data.work, root.dataset['base'] ?? '/', loadUnitChoice),
  ]
  const sheets = followSheets(LOOSE, edition, ({ book, open, problem }) => {
    for (const part of parts) part(book)
    tellKept(root, open)
    sayAtWork(underWay(root, book))
    if (problem && progress) progress.textContent = problem
  })
  const title = document.querySelector('h1')?.textContent.trim() ?? procedure
  const again = root.querySelector<HTMLElement>('[data-again]')
  again?.querySelector('[data-ask]')?.addEventListener('click', () => {
    ask(
      again,
      {
        text: 'Clear every tick and reading of this procedure?',
        yes: 'Clear them',
        no: 'Keep them',
      },
      () => change({ do: 'clear', procedure }, `cleared: ${title}`),
    )
  })
  again?.querySelector('[data-once-more]')?.addEventListener('click', () => {
    change({ do: 'again', procedure }, `begun once more: ${title}`)
  })
  document.addEventListener(UNITS_EVENT, () => sheets.again())
}

const root = document.querySelector<HTMLElement>('[data-procedure]')
const data = document.querySelector('#readings-of-the-job')?.textContent
if (root && data) start(root, JSON.parse(data) as Data)
