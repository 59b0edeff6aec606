import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  groundTrail,
  normalTrail,
  propagate,
  trailMoment,
  wheelFlop,
} from '../../src/core/index.ts'
import { near, same } from './near.ts'

const DEGREE = Math.PI / 180

// Moore and Kooijman’s measured bicycles, the BicycleParameters data set (github moorepants/BicycleParameters): raw and computed files.
const measured = [
  {
    name: 'Browser',
    headAngle: 67.1,
    offset: 0.0705,
    rollOut: 28.06,
    trail: 0.0685808540382,
    error: 0.00169464113488,
  },
  {
    name: 'Browserins',
    headAngle: 67.1,
    offset: 0.0705,
    rollOut: 27.98,
    trail: 0.0681671329298,
    error: 0.00169155184938,
  },
  {
    name: 'Crescendo',
    headAngle: 69,
    offset: 0.045,
    rollOut: 27.98,
    trail: 0.0832912572138,
    error: 0.0016907620071,
  },
  {
    name: 'Yellow',
    headAngle: 72.7,
    offset: 0.0565,
    rollOut: 27.925,
    trail: 0.0473057207886,
    error: 0.00162727102983,
  },
]

describe.each(measured)(
  'the measured bicycle $name',
  ({ headAngle, offset, rollOut, trail, error }) => {
    test('groundTrail(…) gives the published trail, and propagate(…) its published uncertainty', () => {
      const measure = (values: number[]): number => {
        const [roll, angle, forkOffset] = values as [number, number, number]
        return groundTrail({
          frontRadius: roll / (2 * Math.PI * 13),
          rake: Math.PI / 2 - angle,
          forkOffset,
        })
      }
      const result = propagate(
        measure,
        [rollOut, headAngle * DEGREE, offset],
        [0.01, 0.2 * DEGREE, 0.001],
      )
      near(result.value, trail, 1e-12) // all published digits
      near(result.uncertainty, error, 1e-9) // first order against first order; the numeric slope leaves 1e-10
    })
  },
)

test('groundTrail(…) gives 0.08 m for the benchmark bicycle of Meijaard et al. 2007, and normalTrail(…) 0.0760845 m', () => {
  const bicycle = {
    frontRadius: 0.35,
    rake: Math.PI / 10,
    forkOffset: 0.35 * Math.sin(Math.PI / 10) - 0.08 * Math.cos(Math.PI / 10),
  }
  near(groundTrail(bicycle), 0.08, 1e-15)
  near(normalTrail(bicycle), 0.0760845, 5e-8)
})

test('groundTrail(…) is 106.8 mm at 25° and 30 mm of offset, 101.3 at 35, and 106.8 again at 25.9°', () => {
  const at = (degrees: number, forkOffset: number): number =>
    groundTrail({ frontRadius: 0.3, rake: degrees * DEGREE, forkOffset })
  near(at(25, 0.03), 0.1068, 5e-5)
  near(at(25, 0.035), 0.1013, 5e-5)
  near(at(25.9, 0.035), 0.1068, 5e-5)
})

test('groundTrail(…) turns its sign where the offset passes R sin ε, and falls with every millimetre of it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 0.8, noNaN: true }),
      fc.double({ min: -0.2, max: 0.2, noNaN: true }),
      (rake, past) => {
        const trail = groundTrail({
          frontRadius: 0.3,
          rake,
          forkOffset: 0.3 * Math.sin(rake) + past,
        })
        if (Math.abs(past) > 1e-9) expect(Math.sign(trail)).toBe(-Math.sign(past))
        same(
          groundTrail({ frontRadius: 0.3, rake, forkOffset: 0.3 * Math.sin(rake) + past + 0.001 }) -
            trail,
          -0.001 / Math.cos(rake),
          1e-9,
        )
      },
    ),
  )
})

test('wheelFlop(…) is trail sin ε cos ε and trailMoment(…) side force × trail × cos ε', () => {
  same(
    wheelFlop({ trail: 0.1, rake: 25 * DEGREE }),
    0.1 * Math.sin(25 * DEGREE) * Math.cos(25 * DEGREE),
  )
  same(trailMoment({ sideForce: 500, trail: 0.1, rake: 25 * DEGREE }), 50 * Math.cos(25 * DEGREE))
  near(wheelFlop({ trail: 0.1, rake: 0 }), 0, 1e-18)
})

test('groundTrail(…), normalTrail(…), wheelFlop(…) and trailMoment(…) refuse what makes no sense', () => {
  const good = { frontRadius: 0.3, rake: 0.4, forkOffset: 0.03 }
  const bad: [string, number][] = [
    ['frontRadius', 0],
    ['rake', -0.1],
    ['rake', Math.PI / 2],
    ['rake', NaN],
    ['forkOffset', Infinity],
  ]
  for (const [parameter, value] of bad) {
    for (const of of [groundTrail, normalTrail])
      expect(() => of({ ...good, [parameter]: value })).toThrow(
        expect.objectContaining({ parameter }),
      )
  }
  for (const rake of [-0.1, Math.PI / 2, NaN]) {
    expect(() => wheelFlop({ trail: 0.1, rake })).toThrow(
      expect.objectContaining({ parameter: 'rake' }),
    )
    expect(() => trailMoment({ sideForce: 1, trail: 0.1, rake })).toThrow(
      expect.objectContaining({ parameter: 'rake' }),
    )
  }
  expect(() => groundTrail(undefined as never)).toThrow(
    expect.objectContaining({ parameter: 'geometry' }),
  )
  expect(() => wheelFlop({ trail: NaN, rake: 0.4 })).toThrow(
    expect.objectContaining({ parameter: 'trail' }),
  )
  expect(() => trailMoment({ sideForce: NaN, trail: 0.1, rake: 0.4 })).toThrow(
    expect.objectContaining({ parameter: 'sideForce' }),
  )
})
