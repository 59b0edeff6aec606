import { loadUnitChoice, UNITS_EVENT } from '../calculator/unit-choice-store.ts'
import type { Book } from '../../src/record/book.ts'
import { countBook, emptyBook, readBook } from '../../src/record/book.ts'
import type { Taken } from '../../src/record/carry.ts'
import { pairs } from '../../src/record/pairs.ts'
import { meanOf, readingUnit, showValue, unitSymbol } from '../../src/record/reading.ts'
import type { Entry } from '../../src/record/reading.ts'
import { entriesOf, tickState } from '../../src/record/sheet.ts'
import { changeBook, loadBook, onOtherTab, saveBook } from '../../src/record/store.ts'
import { ask } from './ask.ts'

/* The bench book: everything that this browser keeps of the job, to look at, print, save as a file and read back. */

const part = (root: ParentNode, name: string): HTMLElement | null => root.querySelector<HTMLElement>(`[data-${name}]`)

const typedText = (entries: readonly Entry[]): string =>
  entries
    .filter(({ typed }) => typed.trim() !== '')
    .map(({ typed, unit }) => (unitSymbol(unit) === '' ? typed : `${typed}\u00a0${unitSymbol(unit)}`))
    .join(' · ')

function cells(row: HTMLElement, texts: readonly string[]): void {
  row.querySelectorAll('td').forEach((cell, index) => {
    cell.textContent = texts[index] ?? ''
  })
}

function showRows(root: HTMLElement, all: readonly Taken[], book: Book): void {
  for (const { procedure, spec } of all) {
    const row = root.querySelector<HTMLElement>(`[data-row="${procedure} ${spec.id}"]`)
    if (!row) continue
    const entries = entriesOf(book, procedure, spec.id)
    const mean = meanOf(spec, entries)
    const shown = readingUnit(spec.unit, loadUnitChoice())
    const text = typedText(entries)
    cells(row, [text, mean === null ? '' : showValue(mean.mean, spec.unit, shown)])
    row.toggleAttribute('data-empty', text === '')
  }
}

function tickText(section: HTMLElement, procedure: string, book: Book): string {
  const steps = JSON.parse(section.dataset['steps'] ?? '[]') as [string, string][]
  const states = steps.map(([id, hash]) => tickState(book, procedure, id, hash))
  const done = states.filter((state) => state === 'ticked').length
  const changed = states.filter((state) => state === 'changed').length
  return `${done} of ${steps.length} steps ticked${changed > 0 ? `, ${changed} changed since` : ''}`
}

function showSections(root: HTMLElement, book: Book): void {
  for (const section of root.querySelectorAll<HTMLElement>('[data-sheet]')) {
    const procedure = section.dataset['sheet'] ?? ''
    const text = tickText(section, procedure, book)
    const line = part(section, 'ticks')
    if (line) line.textContent = text
    section.toggleAttribute(
      'data-empty',
      section.querySelectorAll('[data-row]:not([data-empty])').length === 0 && text.startsWith('0 of') && !text.includes('changed'),
    )
  }
}

/** Readings whose procedure or name a later edition no longer has: shown as they were written. */
function showLost(root: HTMLElement, all: readonly Taken[], book: Book): void {
  const known = new Set(all.map(({ procedure, spec }) => `${procedure} ${spec.id}`))
  const lost = Object.entries(book.sheets).flatMap(([procedure, { readings }]) =>
    Object.entries(readings).flatMap(([id, entries]) =>
      known.has(`${procedure} ${id}`) || typedText(entries) === '' ? [] : [`${procedure}, ${id}: ${typedText(entries)}`],
    ),
  )
  const list = part(root, 'lost')
  if (!list) return
  list.hidden = lost.length === 0
  list.querySelector('ul')?.replaceChildren(...lost.map((text) => Object.assign(document.createElement('li'), { textContent: text })))
}

function showPairs(root: HTMLElement, all: readonly Taken[], book: Book): void {
  const section = part(root, 'pairs')
  const found = pairs(all, book)
  if (!section) return
  section.hidden = found.length === 0
  section.querySelector('tbody')?.replaceChildren(
    ...found.map(({ label, unit, before, after }) => {
      const shown = readingUnit(unit, loadUnitChoice())
      const change = showValue(after - before, unit, shown)
      const row = document.createElement('tr')
      const head = Object.assign(document.createElement('th'), { scope: 'row', textContent: label })
      const values = [showValue(before, unit, shown), showValue(after, unit, shown), after > before ? `+${change}` : change]
      row.append(
        head,
        ...values.map((textContent, index) => Object.assign(document.createElement('td'), { textContent, className: ['was', 'is', ''][index] ?? '' })),
      )
      return row
    }),
  )
}

function saveFile(book: Book): void {
  const link = document.createElement('a')
  const day = new Date().toISOString().slice(0, 10)
  link.href = URL.createObjectURL(new Blob([`${JSON.stringify(book, null, 2)}\n`], { type: 'application/json' }))
  link.download = `bench-book-${day}.json`
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}

const amount = (book: Book): string => {
  const { readings, ticks } = countBook(book)
  return `${readings} ${readings === 1 ? 'reading' : 'readings'} and ${ticks} ${ticks === 1 ? 'tick' : 'ticks'}`
}

function start(root: HTMLElement, all: readonly Taken[]): void {
  const note = part(root, 'note')!
  const bike = root.querySelector<HTMLInputElement>('[data-bike]')!
  const file = root.querySelector<HTMLInputElement>('[data-file]')!
  const asking = part(root, 'asking')!
  const tell = (text: string, bad = false): void => {
    note.textContent = text
    note.classList.toggle('bad', bad)
  }
  const show = (): void => {
    const book = loadBook()
    const { readings, ticks } = countBook(book)
    root.toggleAttribute('data-filled', readings + ticks > 0)
    if (bike !== document.activeElement) bike.value = book.bike
    showRows(root, all, book)
    showSections(root, book)
    showPairs(root, all, book)
    showLost(root, all, book)
  }
  const put = (book: Book, text: string): void => {
    if (saveBook(book)) tell(text)
    else tell('This browser keeps nothing for this site, so the file could not be taken over', true)
    show()
  }
  bike.addEventListener('input', () => changeBook((book) => ({ ...book, bike: bike.value.slice(0, 200) })))
  part(root, 'save')?.addEventListener('click', () => {
    saveFile(loadBook())
    tell(`Saved: ${amount(loadBook())}.`)
  })
  part(root, 'print')?.addEventListener('click', () => print())
  part(root, 'clear')?.addEventListener('click', () =>
    ask(
      asking,
      { text: `Clear the bench book, ${amount(loadBook())}? Save it as a file first if you may want it again.`, yes: 'Clear it', no: 'Keep it' },
      () => put(emptyBook(), 'The bench book is empty.'),
    ),
  )
  file.addEventListener('change', () => {
    const [chosen] = file.files ?? []
    if (!chosen) return
    void chosen.text().then((text) => {
      file.value = ''
      const reading = readBook(text)
      if ('problem' in reading) return tell(`${chosen.name}: ${reading.problem}. Your bench book is as it was.`, true)
      const now = countBook(loadBook())
      const take = (): void => put(reading.book, `Read back: ${amount(reading.book)}.`)
      if (now.readings + now.ticks === 0) return take()
      tell('')
      ask(
        asking,
        { text: `Replace what is here, ${amount(loadBook())}, by the file’s ${amount(reading.book)}?`, yes: 'Replace it', no: 'Keep what is here' },
        take,
      )
    })
  })
  show()
  onOtherTab(show)
  document.addEventListener(UNITS_EVENT, show)
}

const root = document.querySelector<HTMLElement>('[data-book]')
const data = document.querySelector('#readings-of-the-job')?.textContent
if (root && data) start(root, JSON.parse(data) as Taken[])
