import { describe, expect, test } from 'vitest'
import { readWritten } from '../../src/machine/asWritten.ts'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { IMPERIAL, METRIC } from '../../src/units/choice.ts'
import { readWithUnit } from '../../src/units/typedUnit.ts'
import type { Unit } from '../../src/units/units.ts'

/** Exact factors of NIST SP 811, appendix B.8: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 kgf = 9.80665 N, 1 psi = 6894.757 Pa. */
const KGF = 9.80665
const LB = 0.45359237
const PSI = 6894.757

/** Relative: factors are exact but for the psi, printed with seven digits. */
const WITHIN = 1e-6

const READ: readonly [typed: string, own: Unit, value: number][] = [
  ['95', 'kg', 95],
  ['95 kg', 'kg', 95],
  ['95kg', 'kg', 95],
  ['210 lb', 'kg', 210 * LB],
  ['210 lbs.', 'kg', 210 * LB],
  ['15 st', 'kg', 15 * 14 * LB],
  ['11 st 4', 'kg', (11 * 14 + 4) * LB],
  ['11 stone 4 lb', 'kg', (11 * 14 + 4) * LB],
  ['95 kg', 'lb', 95 / LB],
  ['0.95 kg/mm', 'N/mm', 0.95 * KGF],
  ['0,95 kg/mm', 'N/mm', 0.95 * KGF],
  ['.95kgf/mm', 'N/mm', 0.95 * KGF],
  ['50 lb/in', 'N/mm', (50 * LB * KGF) / 25.4],
  ['50 lbs/inch', 'N/mm', (50 * LB * KGF) / 25.4],
  ['9 N/mm', 'kgf/mm', 9 / KGF],
  ['36 psi', 'bar', (36 * PSI) / 1e5],
  ['250 kPa', 'bar', 2.5],
  ['4.5 in', 'mm', 114.3],
  ['4.5"', 'mm', 114.3],
  ['12 cm', 'mm', 120],
  ['120mm', 'in', 120 / 25.4],
  ['5\'9"', 'in', 69],
  ['5 ft 9 in', 'mm', 69 * 25.4],
  ['68 °F', '°C', 20],
  ['25 %', '%', 25],
  ['80 kg', 'kg load', 80],
  ['800 N', 'kg load', 800 / KGF],
  ['12 kg', 'N', 12 * KGF],
  ['−5 mm', 'mm', -5],
]

describe('readWithUnit', () => {
  test.each(READ)('reads “%s” in a field of %s', (typed, own, value) => {
    const reading = readWithUnit(typed, own)
    expect(reading).toHaveProperty('value')
    const read = 'value' in reading ? reading.value : Number.NaN
    expect(Math.abs(read - value)).toBeLessThanOrEqual(Math.abs(value) * WITHIN)
  })

  test.each([
    ['95 kg', 'N/mm'],
    ['9 N/mm', 'mm'],
    ['36 psi', 'kg'],
    ['20 °C', 'mm'],
  ] as const)('takes “%s” for something else than %s', (typed, own) => {
    expect(readWithUnit(typed, own)).toMatchObject({ problem: 'other' })
  })

  test.each([
    ['1,234 mm', 'ambiguous'],
    ['nine', 'nonsense'],
    ['9 bananas', 'nonsense'],
    ['9 __proto__', 'nonsense'],
    ['9 constructor', 'nonsense'],
    ['9 9 mm', 'nonsense'],
    ['', 'empty'],
  ] as const)('makes no number of “%s”: %s', (typed, problem) => {
    expect(readWithUnit(typed, 'mm')).toEqual({ problem })
  })
})

const rate = (more: Partial<QuantityInput> = {}): QuantityInput => ({
  kind: 'quantity',
  label: 'Spring rate, one leg',
  quantity: 'rate',
  unit: 'N/mm',
  range: [3, 20],
  step: 0.1,
  default: 9,
  ...more,
})

const pressure: QuantityInput = {
  kind: 'quantity',
  label: 'Tyre pressure',
  quantity: 'pressure',
  unit: 'bar',
  range: [1, 4],
  step: 0.1,
}

describe('readWritten', () => {
  test('says what a typed unit came to, and asks nothing', () => {
    const written = readWritten(rate(), '0.95 kg/mm', METRIC)
    expect(written.note).toBe('Read as 9.32\u00a0N/mm.')
    expect(written.offers).toEqual([])
  })

  test('has nothing to say of the field’s own unit', () => {
    expect(readWritten(rate(), '9 N/mm', METRIC)).toEqual({ reading: { value: 9 }, offers: [] })
  })

  test('offers the rate that a bare 0.95 means in kilograms', () => {
    const { reading, offers } = readWritten(rate(), '0.95', METRIC)
    expect(reading).toHaveProperty('problem')
    expect(offers).toHaveLength(1)
    expect(offers[0]!.ask).toMatch(/^0\.95 kg\/mm is 9\.32.N\/mm\.$/)
    // 0.95 kgf is 9.316 N
    expect(Math.abs(offers[0]!.value - 0.95 * KGF)).toBeLessThan(1e-9)
  })

  test('offers psi for a bare 36 in a field of bar', () => {
    const { offers } = readWritten(pressure, '36', METRIC)
    expect(offers.map(({ ask }) => ask)).toEqual(['36 psi is 2.48\u00a0bar.'])
  })

  test('offers metric numbers to a reader with imperial units', () => {
    const { offers } = readWritten(rate(), '9', IMPERIAL)
    expect(offers.map(({ value }) => value)).toEqual([9])
  })

  test('asks whether 18 is the rate of both legs, and keeps it until told', () => {
    const { reading, offers } = readWritten(rate({ oneLeg: [6, 13] }), '18', METRIC)
    expect(reading).toEqual({ value: 18 })
    expect(offers.map(({ value }) => value)).toEqual([9])
  })

  test('asks nothing of a usual rate, nor of one whose half is unusual', () => {
    for (const typed of ['6', '9', '13']) {
      expect(readWritten(rate({ oneLeg: [6, 13] }), typed, METRIC).offers).toEqual([])
    }
    expect(readWritten(rate({ oneLeg: [6, 9] }), '19', METRIC).offers).toEqual([])
  })

  test('names the quantity where another unit was typed', () => {
    const { reading } = readWritten(rate(), '95 kg', METRIC)
    expect(reading).toEqual({
      problem:
        'Spring rate, one leg: “95 kg” is in kilograms. Enter spring rate, one leg in newtons per millimetre',
    })
  })

  test('offers nothing where a unit was typed and the value is out of range', () => {
    expect(readWritten(rate(), '0.95 N/mm', METRIC).offers).toEqual([])
  })
})
