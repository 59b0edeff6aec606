import { readTable } from '../../src/lesson/readings.ts'
import { spreadOf } from '../../src/lesson/spread.ts'
import type { Spread } from '../../src/lesson/spread.ts'
import { tellSpread } from '../../src/lesson/tellSpread.ts'
import { item, onText } from './textForm.ts'

/* The page on which a class's readings are worked out: in the browser, nothing sent. */

const NAMES = {
  part: 'Bikes',
  reader: 'Readers',
  interaction: 'Readers on some bikes more than on others',
  repeat: 'Repeats',
} as const

interface SumLine {
  sumOfSquares: number
  degreesOfFreedom: number
}

/** The lines of the sum, by name: two-way, or with one bike readers and repeats alone. */
function sumOf({ study, readersAlone }: Spread): [string, SumLine][] {
  if (study === null)
    return [
      [NAMES.reader, readersAlone.between],
      [NAMES.repeat, readersAlone.within],
    ]
  return (Object.keys(NAMES) as (keyof typeof NAMES)[]).map((name) => [
    NAMES[name],
    study.lines[name],
  ])
}

function showSum(body: HTMLElement, spread: Spread): void {
  const lines = sumOf(spread)
  const rows = lines.map(([name, { sumOfSquares, degreesOfFreedom }]) => {
    const row = document.createElement('tr')
    const head = item('th', name)
    head.setAttribute('scope', 'row')
    row.append(
      head,
      item('td', sumOfSquares.toFixed(3)),
      item('td', String(degreesOfFreedom)),
      item('td', (sumOfSquares / degreesOfFreedom).toFixed(4)),
    )
    return row
  })
  const total = document.createElement('tr')
  const all = lines.reduce((sum, [, { sumOfSquares }]) => sum + sumOfSquares, 0)
  total.append(item('th', 'Total'), item('td', all.toFixed(3)), item('td', ''), item('td', ''))
  body.replaceChildren(...rows, total)
}

const form = document.querySelector<HTMLFormElement>('[data-readings]')
const result = document.querySelector<HTMLElement>('[data-readings-result]')
if (form && result)
  onText(form, (text) => {
    const read = readTable(text)
    if ('problems' in read) {
      result.hidden = true
      return read.problems
    }
    const spread = spreadOf(read.lines)
    result
      .querySelector('[data-readings-says]')!
      .replaceChildren(...tellSpread(spread).map((told) => item('li', told)))
    showSum(result.querySelector<HTMLElement>('[data-readings-sum]')!, spread)
    result.hidden = false
    return []
  })
