import { FEWEST, groupSizes, MOST, readPeople } from '../../src/lesson/groups.ts'
import { loadUnitChoice } from '../../src/units/choiceStore.ts'
import { commaText } from '../../src/worksheet/decimalMark.ts'

/* A lesson's page with a script: rows for as many people as there are, the class's units and decimal mark, and which sheets to print. */

const form = document.querySelector<HTMLFormElement>('[data-lesson-order]')

/** Texts as built, with points. */
const built = new Map<Text, string>()

/** Writes every number of the sheets with a comma, or with the point that it was built with. */
function mark(comma: boolean): void {
  for (const sheet of document.querySelectorAll('.sheet-page')) {
    const walker = document.createTreeWalker(sheet, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node as Text
      if (!built.has(text)) built.set(text, text.data)
      text.data = comma ? commaText(built.get(text)!) : built.get(text)!
    }
  }
}

/** Parts each value into its metric and its imperial text, so that a style can show one of them alone. */
function partValues(): void {
  for (const value of document.querySelectorAll('.sheet-page [data-value]')) {
    const small = value.querySelector('small')
    if (small === null) continue
    const part = (name: string, text: string): HTMLSpanElement => {
      const span = document.createElement('span')
      span.className = name
      span.textContent = text
      return span
    }
    const imperial = (small.textContent ?? '').trim().replace(/^\(|\)$/g, '')
    small.remove()
    value.replaceChildren(part('metric', value.textContent ?? ''), part('imperial', imperial))
  }
}

/** Makes a table's body as long as the class: its first row, again and again, with its number. */
function fillRows(people: number): void {
  for (const holder of document.querySelectorAll('[data-rows]')) {
    const body = holder.querySelector('tbody')
    const first = body?.querySelector('tr')
    if (!body || !first) continue
    const rows = Array.from({ length: people }, (_, index) => {
      const row = first.cloneNode(true) as HTMLTableRowElement
      if (row.cells[0]) row.cells[0].textContent = String(index + 1)
      return row
    })
    body.replaceChildren(...rows)
  }
}

function tellGroups(people: number): void {
  for (const place of document.querySelectorAll('[data-groups]'))
    place.textContent = groupSizes(people, 3)
      .filter((size) => size > 0)
      .join(', ')
  for (const place of document.querySelectorAll('[data-people]')) place.textContent = String(people)
}

function chooseSheets(form: HTMLFormElement): void {
  const chosen = new Set(new FormData(form).getAll('sheets').map(String))
  let first = true
  for (const sheet of document.querySelectorAll<HTMLElement>('[data-sheet]')) {
    const inside = chosen.has(sheet.dataset['sheet']!)
    sheet.toggleAttribute('data-left-out', !inside)
    sheet.classList.toggle('first', inside && first)
    first &&= !inside
  }
}

/** The questions for two weeks later come in the class's units and with its mark. */
function addressLater(units: string, comma: boolean): void {
  const inClass = (address: string): string =>
    address.replace(/units=.*$/, `units=${units}${comma ? '&mark=comma' : ''}`)
  for (const told of document.querySelectorAll<HTMLElement>('[data-later]')) {
    if (told instanceof HTMLAnchorElement) told.href = inClass(told.href)
    else told.textContent = inClass(told.textContent)
  }
}

function apply(form: HTMLFormElement): void {
  const data = new FormData(form)
  const read = readPeople(form.querySelector<HTMLInputElement>('[name="people"]')!.value)
  const problem = form.querySelector<HTMLElement>('[data-problem]')!
  problem.textContent = 'problem' in read ? read.problem : ''
  if ('people' in read) {
    fillRows(read.people)
    tellGroups(read.people)
  }
  document.documentElement.classList.toggle('units-imperial', data.get('units') === 'imperial')
  document.documentElement.classList.toggle('units-metric', data.get('units') === 'metric')
  const comma = data.get('mark') === 'comma'
  mark(comma)
  addressLater(data.get('units') === 'imperial' ? 'imperial' : 'metric', comma)
  chooseSheets(form)
}

if (form) {
  partValues()
  const units = form.querySelector<HTMLSelectElement>('[name="units"]')!
  // what was chosen before the script came is kept
  if (loadUnitChoice().length === 'in') units.value = 'imperial'
  const people = form.querySelector<HTMLInputElement>('[name="people"]')!
  people.min = String(FEWEST)
  people.max = String(MOST)
  form.addEventListener('input', () => apply(form))
  form.addEventListener('submit', (event) => event.preventDefault())
  for (const button of form.querySelectorAll<HTMLElement>('[data-tick]'))
    button.addEventListener('click', () => {
      const which = button.dataset['tick']
      for (const box of form.querySelectorAll<HTMLInputElement>('[name="sheets"]'))
        box.checked = which === 'all' || (which === 'each') === (box.dataset['each'] !== undefined)
      apply(form)
    })
  form.querySelector('[data-print]')?.addEventListener('click', () => print())
  apply(form)
}
