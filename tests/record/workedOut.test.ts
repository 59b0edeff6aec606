import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { FIGURES, figuresFeeding, keptFrom } from '../../src/bikes/figures.ts'
import { withWorkedOut } from '../../src/record/workedOut.ts'
import type { Figure } from '../../src/record/records.ts'
import { units } from '../../src/units/units.ts'
import { procedures } from '../content/entries.ts'

const figure = (value: number, plusMinus?: number, more: Partial<Figure> = {}): Figure => ({
  value,
  ...(plusMinus === undefined ? {} : { plusMinus }),
  from: 'measured',
  date: '2026-03-12',
  ...more,
})

describe('withWorkedOut(figures)', () => {
  test('two scales give mass and share, their half widths added in squares', () => {
    const found = withWorkedOut({
      frontScale: figure(98, 0.5),
      rearScale: figure(104, 0.5, { from: 'guessed', date: '2026-01-02' }),
    })
    // by hand: 98 + 104 = 202 kg ± √(0.5² + 0.5²) = 0.707; 98 ÷ 202 = 48.515 %, slopes 100·104/202² and 100·98/202² per kg
    expect(found['mass']).toMatchObject({
      value: 202,
      from: 'guessed',
      date: '2026-01-02',
      worked: ['frontScale', 'rearScale'],
    })
    expect(found['mass']?.plusMinus).toBeCloseTo(0.7071, 4)
    expect(found['frontShare']?.value).toBeCloseTo(48.5149, 4)
    expect(found['frontShare']?.plusMinus).toBeCloseTo(0.5 * Math.hypot(0.254877, 0.240172), 5)
  })
  test('mass and share give the scales, and with a rider’s scale where the rider sits', () => {
    const found = withWorkedOut({
      mass: figure(200),
      frontShare: figure(50),
      frontScaleRider: figure(137.2),
      riderMass: figure(80),
    })
    expect([found['frontScale']?.value, found['rearScale']?.value]).toEqual([100, 100])
    // (137.2 − 100) ÷ 80 = 46.5 %
    expect(found['riderShare']?.value).toBeCloseTo(46.5, 10)
    expect(found['riderShare']?.plusMinus).toBeUndefined()
  })
  test('what was given stays as it was given', () => {
    const given = { mass: figure(210), frontScale: figure(98), rearScale: figure(104) }
    expect(withWorkedOut(given)['mass']).toBe(given.mass)
  })
})

describe('the figures', () => {
  test('have ids of their own, a range that holds the typical one, and a unit that is known', () => {
    expect(new Set(FIGURES.map(({ id }) => id)).size).toBe(FIGURES.length)
    for (const { id, unit, range, typical } of FIGURES) {
      expect(unit in units, id).toBe(true)
      expect(range[0] < range[1], id).toBe(true)
      if (typical) expect(range[0] <= typical[0] && typical[1] <= range[1], id).toBe(true)
    }
  })
  test('feed inputs that there are, in their own quantity, and each input is fed by one figure', () => {
    const places = FIGURES.flatMap(({ feeds }) => feeds)
    expect(new Set(places).size).toBe(places.length)
    for (const calculator of calculatorIds)
      for (const [id, { unit }] of figuresFeeding(calculator)) {
        const input = loadCalculator(calculator).inputs[id]
        expect(input?.kind, `${calculator}.${id}`).toBe('quantity')
        if (input?.kind === 'quantity')
          expect(input.quantity, `${calculator}.${id}`).toBe(units[unit].quantity)
      }
    expect(places.filter((place) => !calculatorIds.includes(place.split('.')[0]!))).toEqual([])
  })
  test('are kept from outputs that there are, in their own quantity', () => {
    for (const calculator of calculatorIds)
      for (const { output, when, figure: kept } of keptFrom(calculator)) {
        const { inputs, outputs } = loadCalculator(calculator)
        const found = outputs[output]
        expect(found !== undefined && 'unit' in found && units[found.unit].quantity, output).toBe(
          units[kept.unit].quantity,
        )
        expect(Object.keys(when).every((id) => id in inputs)).toBe(true)
      }
  })
  test('name readings and procedures that there are', () => {
    const all = procedures()
    const readings = new Set(all.flatMap(({ readings: own = [] }) => own.map(({ id }) => id)))
    expect(FIGURES.flatMap(({ reads = [] }) => reads).filter((id) => !readings.has(id))).toEqual([])
    expect(
      FIGURES.filter(
        ({ procedure }) => procedure !== undefined && !all.some(({ id }) => id === procedure),
      ),
    ).toEqual([])
  })
})
