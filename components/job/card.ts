import { loadUnitChoice, UNITS_EVENT } from '../../src/units/choiceStore.ts'
import type { Book } from '../../src/record/book.ts'
import type { Taken } from '../../src/record/carry.ts'
import { barNext, barSays } from '../../src/jobs/sum.ts'
import { sayAtWork } from '../../src/offline/atWork.ts'
import { followSheets } from '../../src/record/store/sheetStore.ts'
import { boxes } from '../procedure/boxes.ts'
import { carryPanels } from '../procedure/carryPanels.ts'
import { tellKept } from '../procedure/tellKept.ts'
import { ticks } from '../procedure/ticks.ts'
import { underWay } from '../procedure/underWay.ts'
import { workPanels } from '../procedure/workPanels.ts'
import type { WorkData } from '../procedure/workPanels.ts'
import { answersKept } from './answers.ts'
import { comparePanel } from './compare.ts'
import type { ComparedRow } from './compare.ts'
import { handOver } from './handOver.ts'
import type { HandedRow } from './handOver.ts'
import { kept } from './kept.ts'
import type { Change } from '../procedure/ticks.ts'
import { filter } from './filter.ts'

/* A job card: the sheets of several procedures on one page. Each keeps its ticks and readings as its own page does. */

interface Data {
  taken: readonly Taken[]
  titles: readonly { id: string; title: string }[]
  work: WorkData
  compared: readonly ComparedRow[]
  handed: readonly HandedRow[]
}

/** Where the work stands: the first step in sight that is not ticked. */
function tellBar(root: HTMLElement): void {
  const bar = document.querySelector<HTMLElement>('[data-job-bar]')
  const says = bar?.querySelector('[data-bar-says]')
  const next = bar?.querySelector<HTMLAnchorElement>('[data-bar-next]')
  if (!says || !next) return
  const steps = [...root.querySelectorAll<HTMLElement>('[data-step]:not([hidden])')]
  const open = steps.filter((step) => !step.querySelector<HTMLInputElement>('[data-tick]')?.checked)
  const gates = [
    ...root.querySelectorAll<HTMLInputElement>('[data-gate]:not([hidden]) [data-gate-tick]'),
  ]
  const passed = gates.filter(({ checked }) => checked).length
  const [first] = open
  const done = steps.length - open.length
  says.textContent = barSays(done, steps.length, passed, gates.length)
  const text = (of: ParentNode | null | undefined, part: string): string =>
    of?.querySelector(part)?.textContent ?? ''
  next.href = first ? `#${first.id}` : '#asks-title'
  next.textContent = first
    ? barNext(
        done,
        text(first, '[data-number]'),
        text(first.closest('[data-part]'), '[data-part-title]'),
      )
    : 'All ticked'
}

function start(root: HTMLElement, form: HTMLFormElement, data: Data): void {
  const titles = new Map(data.titles.map(({ id, title }) => [id, title]))
  const sheets: ((book: Book) => void)[] = []
  const kind = root.dataset['job'] ?? ''
  const edition = root.querySelector<HTMLElement>('[data-edition]')?.dataset['edition'] ?? ''
  const asked = filter(root, form, {
    shown: () => tellBar(root),
    answered: () => answers.answered(),
  })
  const answers = answersKept(kind, asked, (how, what) => followed.change(how, what))
  const change: Change = (how, what) => {
    followed.change(how, what)
    answers.done()
  }
  for (const list of root.querySelectorAll<HTMLElement>('[data-procedure]')) {
    const procedure = list.dataset['procedure'] ?? ''
    sheets.push(
      ticks(list, procedure, change),
      boxes(list, procedure, data.taken, titles, loadUnitChoice, change),
      carryPanels(list, procedure, data.taken, list.dataset['base'] ?? '/', loadUnitChoice),
      workPanels(
        list,
        procedure,
        data.taken,
        data.work,
        list.dataset['base'] ?? '/',
        loadUnitChoice,
      ),
    )
  }
  sheets.push(
    handOver(root, data.handed, data.taken, loadUnitChoice),
    kept(root, kind, change),
    comparePanel(root, data.compared, data.taken, data.work, loadUnitChoice),
  )
  const followed = followSheets(kind, edition, ({ book, open }) => {
    for (const sheet of sheets) sheet(book)
    answers.shown(open.job)
    tellBar(root)
    tellKept(root, open)
    sayAtWork(underWay(root, book))
  })
  document.addEventListener(UNITS_EVENT, () => followed.again())
  for (const button of root.querySelectorAll<HTMLElement>('[data-print]'))
    button.addEventListener('click', () => {
      // one of the two papers: the card, or the sheet that the rider takes home
      root.dataset['paper'] = button.dataset['print'] ?? ''
      print()
      delete root.dataset['paper']
    })
  root.querySelector<HTMLInputElement>('[data-density]')?.addEventListener('change', (event) => {
    root.toggleAttribute('data-dense', (event.target as HTMLInputElement).checked)
  })
}

const root = document.querySelector<HTMLElement>('[data-job]')
const form = root?.querySelector<HTMLFormElement>('[data-asks]')
const data = document.querySelector('#readings-of-the-job')?.textContent
if (root && form && data) start(root, form, JSON.parse(data) as Data)
