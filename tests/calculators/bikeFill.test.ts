import { expect, test } from 'vitest'
import { fillFrom } from '../../components/calculator/bikeFill.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { defaultsOf, evaluate } from '../../src/machine/evaluate.ts'
import { newBike } from '../../src/record/records.ts'
import type { Figure } from '../../src/record/records.ts'
import { bikes } from './bikes.ts'

const roadster = bikes['middleweight-roadster']!
const measured = (value: number): Figure => ({ value, from: 'measured', date: '2026-03-12' })
const bike = {
  ...newBike('b1', { name: 'Mine', like: roadster.id, made: '2026-03-12' }),
  figures: {
    'fork.travel': measured(130),
    'fork.exposedTube': measured(156),
    mass: measured(205),
    riderMass: measured(92),
  },
}

test('a card gets the bike’s values with how they are known; what is unknown is a range, or the named stand-in’s', () => {
  const { values, origins, of } = fillFrom(loadCalculator('rate-from-sag'), bike, roadster)
  expect(values).toMatchObject({
    extended: 156,
    travel: 130,
    rake: 'unknown',
    unsprungMass: 'unknown',
    airHeight: 130,
  })
  expect(origins).toMatchObject({
    extended: 'bike:measured 12 Mar',
    rake: 'bike:from the middleweight roadster: unknown on yours',
    airHeight: 'bike:from the middleweight roadster: unknown on yours',
  })
  // the stand-in's loads stand in for the scales; nothing stands in for readings that only this bike can give
  expect(values['staticLoad']).toBe(100)
  expect('staticReading' in values).toBe(false)
  expect([...of.own].sort()).toEqual(['extended', 'travel'])
  expect([...of.example].sort()).toEqual(['riderLoad', 'riderReading', 'staticReading'])
})

test('a card with a bike gets it as numbers, and the rider beside it', () => {
  const { values } = fillFrom(loadCalculator('wheel-loads'), bike, roadster)
  expect(values).toEqual({
    bike: 'middleweight-roadster;mass:205;rider.mass:92;fork.travel:130;fork.exposedTube:156',
    rider: 92,
  })
})

test.each(calculatorIds)(
  '%s computes with a bike of which four figures are known, and with one of which none is',
  (id) => {
    const calculator = loadCalculator(id)
    for (const mine of [bike, { ...bike, figures: {} }]) {
      const { values } = fillFrom(calculator, mine, roadster)
      const { now, problems, refusal } = evaluate(
        calculator,
        { ...defaultsOf(calculator), ...values },
        { bikes },
      )
      expect({ problems, refusal }).toEqual({ problems: {}, refusal: null })
      expect(now).not.toBeNull()
    }
  },
)
