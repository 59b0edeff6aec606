import { readTable } from '../../src/lesson/readings.ts'
import { spreadOf } from '../../src/lesson/spread.ts'
import type { Spread } from '../../src/lesson/spread.ts'
import { tellSpread } from '../../src/lesson/tellSpread.ts'

/* The page on which a class's readings are worked out: in the browser, nothing sent. */

const NAMES = {
  part: 'Bikes',
  reader: 'Readers',
  interaction: 'Readers on some bikes more than on others',
  repeat: 'Repeats',
} as const

const item = (name: string, text: string): HTMLElement => {
  const element = document.createElement(name)
  element.textContent = text
  return element
}

function showSum(body: HTMLElement, { study }: Spread): void {
  const rows = (Object.keys(NAMES) as (keyof typeof NAMES)[]).map((name) => {
    const { sumOfSquares, degreesOfFreedom, meanSquare } = study.lines[name]
    const row = document.createElement('tr')
    const head = item('th', NAMES[name])
    head.setAttribute('scope', 'row')
    row.append(
      head,
      item('td', sumOfSquares.toFixed(3)),
      item('td', String(degreesOfFreedom)),
      item('td', meanSquare.toFixed(4)),
    )
    return row
  })
  const total = document.createElement('tr')
  total.append(
    item('th', 'Total'),
    item('td', study.total.toFixed(3)),
    item('td', ''),
    item('td', ''),
  )
  body.replaceChildren(...rows, total)
}

function workOut(form: HTMLFormElement, result: HTMLElement): void {
  const read = readTable(form.querySelector('textarea')!.value)
  const problems = 'problems' in read ? read.problems : []
  form
    .querySelector('[data-readings-problems]')!
    .replaceChildren(...problems.map((problem) => item('p', problem)))
  result.hidden = problems.length > 0
  if (!('lines' in read)) return
  const spread = spreadOf(read.lines)
  result
    .querySelector('[data-readings-says]')!
    .replaceChildren(...tellSpread(spread).map((text) => item('li', text)))
  showSum(result.querySelector<HTMLElement>('[data-readings-sum]')!, spread)
}

const form = document.querySelector<HTMLFormElement>('[data-readings]')
const result = document.querySelector<HTMLElement>('[data-readings-result]')
if (form && result) {
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    workOut(form, result)
  })
  form.querySelector<HTMLInputElement>('[type="file"]')!.addEventListener('change', (event) => {
    const file = (event.currentTarget as HTMLInputElement).files?.[0]
    void file?.text().then((text) => {
      form.querySelector('textarea')!.value = text
      workOut(form, result)
    })
  })
}
