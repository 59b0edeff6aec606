import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  forkForceFromAxleLoad,
  frontShareFromScales,
  STANDARD_GRAVITY,
  wheelLoads,
} from '../../src/core/index.ts'
import { near, same } from './near.ts'

// The books take g as 9.81 or 9.8 m/s²: a load scales with it.
const byBook = (g: number): number => g / STANDARD_GRAVITY

test('wheelLoads(…) of a motorcycle driven at 2.5 m/s² is 514.6 and 1055 N: Bedford and Fowler, Dynamics, problem 18.9', () => {
  const loads = wheelLoads({
    masses: [{ mass: 160, x: 0.66, z: 0.66 }],
    wheelbase: 1.5,
    deceleration: -2.5 / byBook(9.81),
  })
  near(loads.front * byBook(9.81), 514.6, 0.05) // half the last printed digit, as below
  near(loads.rear * byBook(9.81), 1055, 0.5)
})

test('wheelLoads(…) of a motorcycle with and without rider is 1225 and 1225, then 1449 and 1785 N: an A-level Mechanics 2 exercise', () => {
  const bike = { mass: 250, x: 0.7, z: 0 }
  const alone = wheelLoads({ masses: [bike], wheelbase: 1.4 })
  near(alone.front * byBook(9.8), 1225, 0.5)
  near(alone.rear * byBook(9.8), 1225, 0.5)
  const ridden = wheelLoads({ masses: [bike, { mass: 80, x: 0.4, z: 0 }], wheelbase: 1.4 })
  near(ridden.front * byBook(9.8), 1449, 0.5)
  near(ridden.rear * byBook(9.8), 1785, 0.5)
})

test('wheelLoads(…) leaves no front load at 9.1227 and 9.86 m/s²: an introductory problem on the wheelie', () => {
  const first = wheelLoads({
    masses: [{ mass: 1, x: 0.73, z: 0.785 }],
    wheelbase: 1.46,
    deceleration: -9.12267515924 / byBook(9.81),
  })
  near(first.front, 0, 1e-10)
  const second = wheelLoads({
    masses: [{ mass: 1, x: 0.78, z: 0.775 }],
    wheelbase: 1.56,
    deceleration: -9.86 / byBook(9.8),
  })
  near(second.front, 0, 0.003) // 0.005 m/s² of rounding times the height over the wheelbase
})

test('wheelLoads(…) of a car is 3675 N a front wheel and 5145 N a rear wheel: NCERT Physics XI', () => {
  const loads = wheelLoads({ masses: [{ mass: 1800, x: 0.75, z: 0.5 }], wheelbase: 1.8 })
  near((loads.front * byBook(9.8)) / 2, 3675, 0.5)
  near((loads.rear * byBook(9.8)) / 2, 5145, 0.5)
})

test('wheelLoads(…) of a car that stops at 0.4 g is 3500 and 2000 N a wheel: Halliday, Resnick and Walker, chapter 12 (from memory, recomputed)', () => {
  const loads = wheelLoads({
    masses: [{ mass: 11000 / STANDARD_GRAVITY, x: 2.4, z: 0.75 }],
    wheelbase: 4.2,
    deceleration: 0.4 * STANDARD_GRAVITY,
  })
  near(loads.rear / 2, 2000, 50)
  near(loads.front / 2, 3500, 50)
})

test('wheelLoads(…) transfers m a h ÷ wheelbase, and always adds up to the weight', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -8, max: 8, noNaN: true }),
      fc.double({ min: 0.3, max: 1.2, noNaN: true }),
      (deceleration, z) => {
        const masses = [{ mass: 200, x: 0.7, z }]
        const [rest, moving] = [
          wheelLoads({ masses, wheelbase: 1.45 }),
          wheelLoads({ masses, wheelbase: 1.45, deceleration }),
        ]
        near(moving.front - rest.front, (200 * deceleration * z) / 1.45, 1e-9)
        same(moving.front + moving.rear, 200 * STANDARD_GRAVITY)
      },
    ),
  )
})

test('frontShareFromScales(…) is front over both, in any unit', () => {
  same(frontShareFromScales({ front: 98, rear: 102 }), 0.49)
  expect(frontShareFromScales({ front: 0, rear: 100 })).toBe(0)
  expect(() => frontShareFromScales({ front: 0, rear: 0 })).toThrow(
    expect.objectContaining({ parameter: 'rear' }),
  )
  expect(() => frontShareFromScales({ front: -1, rear: 2 })).toThrow(
    expect.objectContaining({ parameter: 'front' }),
  )
})

test('forkForceFromAxleLoad(…) is 971 N for 49 % of 280 kg and 640 N for half of 200 kg, less a 28 kg wheel, at 25°', () => {
  const rake = (25 * Math.PI) / 180
  near(
    forkForceFromAxleLoad({ wheelLoad: 0.49 * 280 * STANDARD_GRAVITY, unsprungMass: 28, rake }),
    971,
    0.5,
  )
  near(
    forkForceFromAxleLoad({ wheelLoad: 0.5 * 200 * STANDARD_GRAVITY, unsprungMass: 28, rake }),
    640,
    0.5,
  )
  expect(forkForceFromAxleLoad({ wheelLoad: 0, unsprungMass: 10, rake: 0 })).toBe(
    -10 * STANDARD_GRAVITY,
  )
})

test('wheelLoads(…) and forkForceFromAxleLoad(…) refuse what makes no sense', () => {
  const masses = [{ mass: 1, x: 0, z: 0 }]
  expect(() => wheelLoads({ masses: [], wheelbase: 1 })).toThrow(
    expect.objectContaining({ parameter: 'masses' }),
  )
  expect(() => wheelLoads({ masses, wheelbase: 0 })).toThrow(
    expect.objectContaining({ parameter: 'wheelbase' }),
  )
  expect(() => wheelLoads({ masses, wheelbase: 1, deceleration: NaN })).toThrow(
    expect.objectContaining({ parameter: 'deceleration' }),
  )
  expect(() => wheelLoads({ masses: [{ mass: -1, x: 0, z: 0 }], wheelbase: 1 })).toThrow(
    expect.objectContaining({ parameter: 'mass' }),
  )
  expect(() => wheelLoads(undefined as never)).toThrow(
    expect.objectContaining({ parameter: 'vehicle' }),
  )
  expect(() => wheelLoads({ masses: [{ mass: 1, x: NaN, z: 0 }], wheelbase: 1 })).toThrow(
    expect.objectContaining({ parameter: 'x' }),
  )
  expect(() => wheelLoads({ masses: [{ mass: 1, x: 0, z: NaN }], wheelbase: 1 })).toThrow(
    expect.objectContaining({ parameter: 'z' }),
  )
  expect(() => frontShareFromScales({ front: 1, rear: -1 })).toThrow(
    expect.objectContaining({ parameter: 'rear' }),
  )
  expect(() => forkForceFromAxleLoad({ wheelLoad: 1, unsprungMass: -1, rake: 0.4 })).toThrow(
    expect.objectContaining({ parameter: 'unsprungMass' }),
  )
  expect(() => forkForceFromAxleLoad({ wheelLoad: -1, unsprungMass: 1, rake: 0.4 })).toThrow(
    expect.objectContaining({ parameter: 'wheelLoad' }),
  )
  expect(() => forkForceFromAxleLoad({ wheelLoad: 1, unsprungMass: 1, rake: 2 })).toThrow(
    expect.objectContaining({ parameter: 'rake' }),
  )
})
