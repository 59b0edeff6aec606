import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Aim,
  aimReading,
  AIMS,
  type AimSpread,
  aimStances,
  axlePlaces,
  type Bike,
  changeBike,
  changeSearch,
  findChange,
  solveStance,
  spreadOfChange,
} from '../../src/core/index.ts'
import { normalBelow } from '../../src/core/normal.ts'
import { normalStream } from '../../src/core/random.ts'
import { plainBike, RIDER, stream } from './bikes.ts'
import { buildableBike, randomSearch } from './changeCases.ts'
import { between } from './draws.ts'
import { near, same } from './near.ts'

test('normalBelow(z) is what tables of the normal distribution print', () => {
  // NIST/SEMATECH e-Handbook, 1.3.6.7.1 (from memory)
  for (const [z, share] of [
    [0, 0.5],
    [1, 0.841345],
    [1.959964, 0.975],
    [-1, 0.158655],
    [3, 0.99865],
  ] as const)
    expect(Math.abs(normalBelow(z) - share)).toBeLessThan(1e-6)
  expect(() => normalBelow(Number.NaN)).toThrow(/z must be a finite number/)
})

describe('spreadOfChange', () => {
  const bike = plainBike()
  const cases = { rider: { payload: [RIDER] } }
  const change = { forkPreloadChange: 0.002, rearPreloadChange: 0.001 }
  const known = { rates: 0.015, preload: 5e-4, carried: 1 }
  const now = solveStance(bike, cases.rider)
  const sag = solveStance(changeBike(bike, change, now.rearTravel), cases.rider).frontTravel
  const aims: Aim[] = [{ id: 'frontRiderSag', low: sag - 5e-4, high: sag + 2e-3 }]

  test('spreadOfChange(…) agrees with 4,000 bikes drawn at random: uncertainty within 5 %, chance within 3 points', () => {
    const normal = normalStream(stream(11))
    const draw = (): number => {
      const [fork, rear, a, b, more] = [normal(), normal(), normal(), normal(), normal()]
      const one: Bike = {
        ...bike,
        fork: {
          ...bike.fork,
          legs: bike.fork.legs.map((leg) => ({
            ...leg,
            spring: leg.spring.map((group) => ({
              ...group,
              rate: group.rate * (1 + known.rates * fork),
            })),
            preload: leg.preload + known.preload * a,
          })),
        },
        rear: {
          ...bike.rear,
          spring: bike.rear.spring.map((group) => ({
            ...group,
            rate: group.rate * (1 + known.rates * rear),
          })),
          preload: bike.rear.preload + known.preload * b,
        },
      }
      const payload = [{ ...RIDER, mass: RIDER.mass + known.carried * more }]
      return solveStance(changeBike(one, change, now.rearTravel), { payload }).frontTravel
    }
    const drawn = Array.from({ length: 4000 }, draw)
    const mean = drawn.reduce((sum, each) => sum + each, 0) / drawn.length
    const spread = Math.sqrt(drawn.reduce((sum, each) => sum + (each - mean) ** 2, 0) / 3999)
    const [{ low, high }] = aims as [Aim]
    const met = drawn.filter((each) => each >= low && each <= high).length / drawn.length
    const [told] = spreadOfChange(bike, cases, change, aims, known)
    // 4,000 draws know a standard deviation to about 1 % and a share to about 1 point; twice that, and what is not straight
    expect(Math.abs(told!.uncertainty / spread - 1)).toBeLessThan(0.05)
    expect(Math.abs(told!.chance - met)).toBeLessThan(0.03)
  })

  test('spreadOfChange(…) of an aim about now leaves out what is off both before and after', () => {
    const trail: Aim[] = [{ id: 'trail', low: now.trail - 1e-3, high: now.trail + 1e-3 }]
    const [about] = spreadOfChange(bike, cases, change, trail, known, ['trail'])
    const [alone] = spreadOfChange(bike, cases, change, trail, known)
    expect(about!.uncertainty).toBeLessThan(0.2 * alone!.uncertainty)
    const nothing = { rates: 0, preload: 0, carried: 0 }
    expect(spreadOfChange(bike, cases, change, trail, nothing)[0]!.uncertainty).toBe(0)
  })
})

describe('spreadOfChange, on random bikes', () => {
  const seeds = fc.integer({ min: 0, max: 2 ** 31 })
  const changes = fc.record({
    forkPreloadChange: between(-0.004, 0.004),
    tubeRaise: between(-0.004, 0.004),
  })
  const anyKnown = fc.record({
    rates: between(0.002, 0.03),
    preload: between(1e-4, 1e-3),
    carried: between(0.2, 3),
  })

  test('spreadOfChange(…) adds what each source leaves open in squares', () => {
    fc.assert(
      fc.property(seeds, changes, anyKnown, (seed, change, known) => {
        const { bike, cases } = buildableBike(stream(seed))
        const aims = AIMS.map((id): Aim => ({ id, low: -1, high: 1 }))
        const nothing = { rates: 0, preload: 0, carried: 0 }
        const each = [
          { rates: known.rates },
          { preload: known.preload },
          { carried: known.carried },
        ]
        const parts = each.map((one) =>
          spreadOfChange(bike, cases, change, aims, { ...nothing, ...one }),
        )
        for (const [at, { uncertainty }] of spreadOfChange(
          bike,
          cases,
          change,
          aims,
          known,
        ).entries())
          // a stance balances to 1e-9 N or so: 1e-12 m, of spreads of micrometres and more
          same(uncertainty, Math.hypot(...parts.map((part) => part[at]!.uncertainty)), 1e-9)
      }),
      { numRuns: 15 },
    )
  })

  test('spreadOfChange(…) shares all chance among windows that touch, about the reading itself', () => {
    const wide: Aim[] = [{ id: 'frontRiderSag', low: -9, high: 9 }]
    const cut = between(-3, 3)
    fc.assert(
      fc.property(seeds, changes, anyKnown, cut, cut, (seed, change, known, one, other) => {
        const { bike, cases } = buildableBike(stream(seed))
        const { rearTravel } = solveStance(bike, cases.rider)
        const sag = solveStance(changeBike(bike, change, rearTravel), cases.rider).frontTravel
        const [{ uncertainty }] = spreadOfChange(bike, cases, change, wide, known) as [AimSpread]
        const [first, last] = [Math.min(one, other), Math.max(one, other)]
        const ends = [-9, sag + first * uncertainty, sag + last * uncertainty, 9]
        const chances = [0, 1, 2].map((at) => {
          const aims: Aim[] = [{ id: 'frontRiderSag', low: ends[at]!, high: ends[at + 1]! }]
          return spreadOfChange(bike, cases, change, aims, known)[0]!.chance
        })
        // two stances to 1e-12 m, of spreads of a tenth of a millimetre and more
        const wanted = [normalBelow(first), normalBelow(last) - normalBelow(first)]
        for (const [at, chance] of [...wanted, 1 - normalBelow(last)].entries())
          near(chances[at], chance, 1e-7)
      }),
      { numRuns: 15 },
    )
  })
})

describe('changeSearch', () => {
  test('changeSearch answers one task after the other, in any order, as findChange answers each alone', () => {
    const seeds = fc.integer({ min: 2001, max: 2999 })
    const tasks = fc.shuffledSubarray([[1], [0], [0, 2]], { minLength: 2 })
    fc.assert(
      fc.property(seeds, tasks, (seed, cuts) => {
        const { bike, cases, aims, means } = randomSearch(seed)
        const find = changeSearch(bike, cases)
        for (const cut of cuts) {
          const fewer = means.slice(...cut)
          const { tally: _, ...alone } = findChange({ bike, cases, aims, means: fewer })
          const { tally: __, ...next } = find({ aims, means: fewer })
          expect(next).toEqual(alone)
        }
      }),
      { numRuns: 20 },
    )
  })

  test('changeSearch without the nearest gives no way where none meets all aims', () => {
    const { bike, cases, means } = randomSearch(7)
    const aims: Aim[] = [{ id: 'frontRiderSag', low: 1e-4, high: 2e-4 }]
    const find = changeSearch(bike, cases)
    expect(find({ aims, means, nearest: false })).toMatchObject({ ways: [], meets: false })
    const { ways } = find({ aims, means })
    for (const { change, readings } of ways) {
      const now = aimStances(bike, cases, new Set(['rider'] as const))
      const places = axlePlaces(bike, now.rider!)
      const made = changeBike(bike, change, now.rider!.rearTravel)
      const after = aimStances(made, cases, new Set(['rider'] as const))
      const alone = aimReading('frontRiderSag', after, places)
      // a hundredth of a millimetre
      expect(Math.abs(alone - readings.frontRiderSag!)).toBeLessThan(1e-5)
    }
  })
})
