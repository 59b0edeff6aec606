import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import LeanClearanceFigure from '../../src/calculators/lean-clearance/Figure.tsx'
import { ends } from '../../src/units/interval.ts'
import { drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'

const leanClearance = loadCalculator('lean-clearance')

const alone = { passenger: 0 }

describe('lean-clearance', () => {
  test('lean-clearance puts the part where it was measured, and touches sooner than a bike that does not squat', () => {
    expectNear(result(leanClearance, alone, 'heightNow'), 300, 1e-6)
    const [roll, rigid] = [
      result(leanClearance, alone, 'roll'),
      result(leanClearance, alone, 'rigid'),
    ]
    expect(roll).toBeLessThan(rigid - 1)
    expect(result(leanClearance, alone, 'squat')).toBeGreaterThan(5)
  })

  test('lean-clearance touches where the crown’s equation is 0 for the height in that bend, worked anew', () => {
    const [roll, squat] = [
      (result(leanClearance, {}, 'roll') * Math.PI) / 180,
      result(leanClearance, {}, 'squat'),
    ]
    const height = result(leanClearance, {}, 'heightNow') - squat
    expectNear(70 + (height - 70) * Math.cos(roll) - 360 * Math.sin(roll), 0, 1e-6)
    // the turn itself needs atan of the sideways acceleration, less than the roll on round tyres
    expectNear(
      (Math.atan(result(leanClearance, {}, 'sideways')) * 180) / Math.PI,
      result(leanClearance, {}, 'effective'),
      1e-9,
    )
    expect(result(leanClearance, {}, 'effective')).toBeLessThan(result(leanClearance, {}, 'roll'))
  })

  test('lean-clearance loses lean to a passenger, luggage, a lower back and a lower front, and gets it back by preload and a higher back', () => {
    const roll = (given: object): number => result(leanClearance, { ...alone, ...given }, 'roll')
    for (const worse of [{ passenger: 70 }, { luggage: 30 }, { rearRaise: -20 }, { tubeRaise: 15 }])
      expect(roll(worse), JSON.stringify(worse)).toBeLessThan(roll({}))
    for (const better of [{ rearPreload: 8 }, { rearRaise: 20 }])
      expect(roll(better), JSON.stringify(better)).toBeGreaterThan(roll({}))
    expect(roll({ tyreRate: 100 })).toBeLessThan(roll({ tyreRate: 200 }))
    expect(roll({ crown: 90 })).toBeGreaterThan(roll({ crown: 40 }))
  })

  test('lean-clearance says nothing touches where nothing does, and that a part is down where it is', () => {
    expect(shown(leanClearance, { halfWidth: 60, height: 500 }).now.output['roll']).toBeNull()
    expect(remarksOf(leanClearance, { halfWidth: 60, height: 500 })).toMatch(/stays clear/)
    const low = { height: 60, passenger: 140, luggage: 80, rearRaise: -40, tubeRaise: 20 }
    expect(remarksOf(leanClearance, low)).toMatch(/on the ground with the bike upright/)
  })

  test('lean-clearance tells what the load costs, the caution and that it is no lean to ride to', () => {
    const told = remarksOf(leanClearance, {}, alone)
    expect(told).toMatch(/sooner than with the rider alone/)
    expect(told).toMatch(/no lean to ride to/)
    expect(told).toMatch(/cannot fold/)
  })

  test('lean-clearance widens to a range with the tyres not known', () => {
    const [low, high] = ends(
      shown(leanClearance, { crown: 'unknown', tyreRate: 'unknown' }).now.output['roll'],
    )!
    expect(high - low).toBeGreaterThan(0.02)
  })

  test('LeanClearanceFigure draws the bike leaning, now and before', () => {
    const markup = drawn(leanClearance, LeanClearanceFigure, {}, alone)
    expectSound(markup)
    expect(markup.replaceAll('\u00a0', ' ')).toMatch(
      /The part touches at [\d.]+°, before at [\d.]+°/,
    )
  })
})
