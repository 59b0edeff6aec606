import { describe, expect, test } from 'vitest'
import { loadCalculator } from '../../src/calculators/index.ts'
import { ALLOWED, runSecondMethod, secondFailures } from '../../src/checks/second/run.ts'
import { secondOutputs } from '../../src/checks/second/calculators.ts'
import { PART_ALLOWED, runParts } from '../../src/checks/second/parts.ts'
import { stackForce } from '../../src/checks/second/laws.ts'
import { settle } from '../../src/checks/second/settle.ts'
import { drawBike } from '../../src/checks/second/bikes.ts'
import { randomStream, solveStance, springForce } from '../../src/core/index.ts'
import { bikes } from '../calculators/bikes.ts'

describe('the second method', () => {
  test('settles random bikes where the core does, and the laws hold', () => {
    const run = runSecondMethod(40)
    expect(secondFailures(run)).toEqual([])
    expect(run.compared).toBe(40)
    // it is another way of reckoning, so that it cannot agree to the last digit
    expect(run.worst.rearTravel).toBeGreaterThan(0)
  })

  test('sees a tyre or a pivot that is a millimetre off, and a kilogram too many', () => {
    const drawn = drawBike(randomStream(3))
    const stance = solveStance(drawn.bike, drawn.loadCase)
    const { geometry } = drawn.bike
    const changes = [
      { ...drawn, bike: { ...drawn.bike, geometry: { ...geometry, frontRadius: geometry.frontRadius + 1e-3 } } },
      { ...drawn, bike: { ...drawn.bike, geometry: { ...geometry, pivot: { ...geometry.pivot, z: geometry.pivot.z + 1e-3 } } } },
      { ...drawn, bike: { ...drawn.bike, sprung: { ...drawn.bike.sprung, mass: drawn.bike.sprung.mass + 1 } } },
    ]
    for (const changed of changes) {
      const other = settle(changed)
      const apart = Object.entries(other).map(([name, value]) => Math.abs(value - Number(stance[name as keyof typeof other])))
      expect(Math.max(...apart)).toBeGreaterThan(1e3 * ALLOWED.apart)
    }
  })

  test('secondFailures names what is off', () => {
    const run = { ...runSecondMethod(2), weight: 1e-3 }
    run.worst = { ...run.worst, trail: 1e-5 }
    expect(secondFailures(run)).toHaveLength(2)
    expect(secondFailures({ ...run, energy: Number.NaN })[1]).toMatch(/energy/)
  })

  test('has its own way to what single functions give', () => {
    const parts = runParts(6)
    expect(parts.length).toBeGreaterThan(15)
    expect(parts.filter(({ apart }) => !(apart <= PART_ALLOWED))).toEqual([])
  })

  test('has springs of its own that are the core’s', () => {
    const groups = [{ rate: 4e4, closes: 0.01 }, { rate: 1e4 }]
    // halving leaves the last digits of a force of a kilonewton
    for (const by of [-0.01, 0, 0.004, 0.03, 0.09]) expect(Math.abs(stackForce(groups, by) - springForce(groups, by))).toBeLessThan(1e-9)
  })

  test('gives what calculators give', () => {
    const outputs = secondOutputs(loadCalculator, bikes)
    expect(outputs.length).toBeGreaterThan(70)
    expect(outputs.filter(({ apart, allowed }) => !(apart <= allowed))).toEqual([])
  })
})
