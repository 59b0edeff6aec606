import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  brakingOvershoot,
  compareMarks,
  DomainError,
  gasRate,
  gasVolume,
  levelChange,
  liftDeceleration,
  list,
  nonNegative,
  oneOf,
  positive,
  representable,
  sagFromMarks,
  solveStance,
  stepOvershoot,
  wholeNumber,
} from '../../src/core/index.ts'
import { GAS, plainBike, RIDER } from './bikes.ts'
import { near, same } from './near.ts'

/* Laws for the names that no published value covers and no other property test names. */

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const length = number(0, 0.4)

test('compareMarks(…) of two readings changed round has the other sign, and both are within the friction band or neither', () => {
  fc.assert(
    fc.property(length, length, number(0, 0.02), (before, after, frictionBand) => {
      const there = compareMarks({ before, after, frictionBand })
      const back = compareMarks({ before: after, after: before, frictionBand })
      expect(there.change).toBe(0 - back.change)
      expect(there.withinBand).toBe(back.withinBand)
    }),
  )
})

test('sagFromMarks(…) does not change when every reading grows by the same length', () => {
  fc.assert(
    fc.property(fc.tuple(length, length, length), length, (readings, longer) => {
      const [settledDown = 0, settledUp = 0, extended = 0] = [...readings].sort((a, b) => a - b)
      const here = sagFromMarks({ extended, settledDown, settledUp })
      const there = sagFromMarks({
        extended: extended + longer,
        settledDown: settledDown + longer,
        settledUp: settledUp + longer,
      })
      near(there.sag, here.sag, 1e-15) // rounding of lengths below a metre
      near(there.frictionBand, here.frictionBand, 1e-15)
      expect(here.sag).toBeGreaterThanOrEqual(here.frictionBand / 2 - 1e-15)
    }),
  )
})

test('liftDeceleration(…) does not change when all masses and springs grow by one factor', () => {
  fc.assert(
    fc.property(number(0.5, 2), number(0.6, 1), (scale, riderHeight) => {
      const bike = plainBike()
      const heavy = {
        ...bike,
        sprung: { ...bike.sprung, mass: bike.sprung.mass * scale },
        frontUnsprungMass: bike.frontUnsprungMass * scale,
        rearUnsprungMass: bike.rearUnsprungMass * scale,
        fork: {
          ...bike.fork,
          legs: bike.fork.legs.map((leg) => ({
            ...leg,
            spring: leg.spring.map(({ rate }) => ({ rate: rate * scale })),
          })),
        },
        rear: {
          ...bike.rear,
          spring: bike.rear.spring.map(({ rate }) => ({ rate: rate * scale })),
        },
      }
      const rider = { ...RIDER, z: riderHeight }
      const light = liftDeceleration(bike, { payload: [rider] })
      same(
        liftDeceleration(heavy, { payload: [{ ...rider, mass: rider.mass * scale }] }),
        light!,
        1e-9,
      ) // two searches, each to the last digits
    }),
    { numRuns: 25 },
  )
})

test('brakingOvershoot(…) lies between nothing and the step’s overshoot of the least damped fork', () => {
  const bike = plainBike()
  const rider = solveStance(bike, { payload: [RIDER] })
  const braking = solveStance(bike, { payload: [RIDER], deceleration: 4 })
  const change = braking.frontTravel - rider.frontTravel
  fc.assert(
    fc.property(number(0.05, 0.9), number(0.05, 0.9), number(0, 0.3), (one, other, rampTime) => {
      const [low, high] = brakingOvershoot(bike.fork, rider, braking, undefined, {
        dampingRatios: [one, other],
        rampTimes: [rampTime],
      })
      expect(low).toBeGreaterThanOrEqual(0)
      expect(high).toBeGreaterThanOrEqual(low)
      expect(high).toBeLessThanOrEqual(change * stepOvershoot(Math.min(one, other)) * (1 + 1e-12))
    }),
  )
})

test('levelChange(…) of what is poured in and drawn off again is 0, and a bore twice as wide rises a quarter as far', () => {
  fc.assert(
    fc.property(number(-1e-3, 1e-3), number(0.02, 0.06), (volume, boreDiameter) => {
      const rise = levelChange({ volume, boreDiameter })
      expect(rise + levelChange({ volume: -volume, boreDiameter })).toBe(0)
      same(levelChange({ volume, boreDiameter: 2 * boreDiameter }), rise / 4)
    }),
  )
})

test('gasVolume(…) shrinks by the tube’s area for each metre of travel, and gasRate(…) is A² p/V with it', () => {
  const area = (Math.PI / 4) * GAS.tubeDiameter ** 2
  fc.assert(
    fc.property(number(0, 0.12), number(0, 0.12), (x, y) => {
      near(gasVolume(GAS, 0.12, x) - gasVolume(GAS, 0.12, y), (y - x) * area, 1e-18) // rounding of volumes of 0.3 litres
      const volume = gasVolume(GAS, 0.12, x)
      const pressure = (101325 * gasVolume(GAS, 0.12, 0)) / volume
      same(gasRate(GAS, 0.12, x), (area ** 2 * pressure) / volume, 1e-12)
    }),
  )
})

const refuses = (guard: () => unknown): boolean => {
  try {
    guard()
    return false
  } catch (error) {
    return error instanceof DomainError && error.parameter === 'it'
  }
}

test('positive(…), nonNegative(…), wholeNumber(…) and representable(…) hand back what they allow and refuse all else by name', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.double(), fc.integer(), fc.constantFrom(0, -0, NaN, Infinity, -Infinity)),
      (value) => {
        const allowed = {
          positive: value > 0 && value < Infinity,
          nonNegative: value >= 0 && value < Infinity,
          wholeNumber: Number.isInteger(value) && value >= 0,
          representable: Number.isFinite(value),
        }
        for (const [name, guard] of Object.entries({
          positive,
          nonNegative,
          wholeNumber,
          representable,
        })) {
          if (allowed[name as keyof typeof allowed]) expect(guard('it', value)).toBe(value)
          else expect(refuses(() => guard('it', value))).toBe(true)
        }
      },
    ),
  )
})

test('oneOf(…) allows its options alone, and list(…) lists of the least length alone', () => {
  fc.assert(
    fc.property(fc.string(), fc.array(fc.integer()), fc.nat(5), (text, entries, least) => {
      const known = text === 'linear' || text === 'square'
      expect(refuses(() => oneOf('it', text, ['linear', 'square']))).toBe(!known)
      expect(refuses(() => list('it', entries, least))).toBe(entries.length < least)
      expect(refuses(() => list('it', text as never, 0))).toBe(true)
    }),
  )
})
