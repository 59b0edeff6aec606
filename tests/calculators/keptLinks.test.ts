import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import type { Cell } from '../../src/machine/cells.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { decodeLink } from '../../src/machine/link.ts'
import { isInterval } from '../../src/units/interval.ts'
import { bikes } from './bikes.ts'

/* Links that readers have kept: written by the code of the first edition, with the numbers [SI] that it showed. */

interface Kept {
  calculator: string
  query: string
  numbers: Readonly<Record<string, number>>
}

const kept = JSON.parse(
  readFileSync('tests/calculators/data/linksOfTheFirstEdition.json', 'utf8'),
) as readonly Kept[]

/** Calculators that the first edition did not have. */
const LATER = ['chain-slack', 'lean-clearance', 'find-change']

/** Both ran the same sums; what differs is the order of some of them, within a few last digits of a double. */
const ROUNDING = 1e-9

function numberOf(output: Readonly<Record<string, unknown>>, name: string): number {
  const [id = '', end] = name.split('.')
  const cell = output[id] as Cell
  if (end === undefined) return Number(cell)
  return isInterval(cell) ? (end === 'low' ? cell.low : cell.high) : Number.NaN
}

test('a link of the first edition is kept for every calculator that it had', () => {
  const had = calculatorIds.filter((id) => !LATER.includes(id))
  expect(had.filter((id) => !kept.some(({ calculator }) => calculator === id))).toEqual([])
})

describe.each(kept.map((link) => [link.calculator, link] as const))('a link to %s', (id, link) => {
  test(`opens with the same numbers: ${link.query.slice(0, 60)}`, () => {
    const calculator = loadCalculator(id)
    const { given, problems } = decodeLink(calculator, `?${link.query}`, Object.keys(bikes))
    expect(problems).toEqual([])
    const { now } = evaluate(calculator, given, { bikes })
    for (const [name, was] of Object.entries(link.numbers)) {
      const is = numberOf(now!.output, name)
      expect(
        Math.abs(is - was),
        `${name}: ${is} where the link opened with ${was}`,
      ).toBeLessThanOrEqual(ROUNDING * Math.max(1, Math.abs(was)))
    }
  })
})
