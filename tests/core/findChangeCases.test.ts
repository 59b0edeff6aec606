import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Aim,
  AIMS,
  aimReading,
  aimStances,
  axlePlaces,
  CASE_OF,
  changeBike,
  type ChangeWanted,
  DomainError,
  findChange,
  type Mean,
  MEANS,
  solveStance,
} from '../../src/core/index.ts'
import { plainBike, RIDER, stream } from './bikes.ts'
import { buildableBike, madeByHand, readAlone } from './changeCases.ts'

const cases = { static: {}, rider: { payload: [RIDER] } }
const now = solveStance(plainBike(), cases.rider)
const PRELOAD: Mean = { id: 'forkPreloadChange', low: -0.015, high: 0.015, step: 5e-4, work: 1 }
const REAR: Mean = { id: 'rearPreloadChange', low: -0.008, high: 0.01, step: 5e-4, work: 1 }
const TUBES: Mean = { id: 'tubeRaise', low: -0.005, high: 0.01, step: 5e-4, work: 2 }
const SPRINGS: Mean = { id: 'forkRate', rates: [8000, 9000, 10000], work: 20 }

const wanted = (aims: readonly Aim[], means: readonly Mean[]): ChangeWanted => ({
  bike: plainBike(),
  cases,
  aims,
  means,
})

describe('findChange by reasoning', () => {
  test('a stiffer spring to the old mark takes less preload, by the share that the rate grew', () => {
    const mark = {
      id: 'frontRiderSag',
      low: now.frontTravel - 2e-4,
      high: now.frontTravel + 2e-4,
    } as const
    const stiffer = { ...SPRINGS, rates: [10000] }
    const gone = {
      ...plainBike(),
      fork: {
        ...plainBike().fork,
        legs: plainBike().fork.legs.map((leg) => ({ ...leg, spring: [{ rate: 10000 }] })),
      },
    }
    // from the stiffer spring as fitted: k (p + s) must be what it was, so p = 9/10 (p₀ + s) − s, a tenth of p₀ + s less
    const { ways } = findChange({ bike: gone, cases, aims: [mark], means: [PRELOAD] })
    const less = -(0.015 + now.frontTravel) / 10
    expect(Math.abs(ways[0]!.change.forkPreloadChange! - less)).toBeLessThan(5e-4)
    // between bike alone and rider the stiffer spring moves less, so at the old mark the static sag is larger: asked for, both are changed together
    const alone = solveStance(plainBike(), {}).frontTravel
    const both = findChange(
      wanted([mark, { id: 'frontStaticSag', low: alone + 1e-3, high: 0.1 }], [PRELOAD, stiffer]),
    )
    expect(both.ways.map(({ change }) => Object.keys(change))).toEqual([
      ['forkPreloadChange', 'forkRate'],
    ])
    expect(both.ways[0]!.change.forkRate).toBe(10000)
    expect(Math.abs(both.ways[0]!.change.forkPreloadChange! - less)).toBeLessThan(5e-4)
  })

  test('where the front has to rise and the trail to stay, the rear rises with it', () => {
    const { ways } = findChange(
      wanted(
        [
          { id: 'frontRiderSag', low: 0, high: now.frontTravel - 0.008 },
          { id: 'trail', low: now.trail - 2e-4, high: now.trail + 2e-4 },
        ],
        [PRELOAD, REAR],
      ),
    )
    expect(ways).toHaveLength(1)
    const { forkPreloadChange, rearPreloadChange } = ways[0]!.change
    expect(forkPreloadChange).toBeGreaterThan(0.007)
    // 8 mm straight up at the front, over a motion ratio of 0.45, are 3 to 4 mm at the shock
    expect(rearPreloadChange).toBeGreaterThan(0.0025)
    expect(rearPreloadChange).toBeLessThan(0.0045)
  })

  test('tubes lower the front and leave its sag alone', () => {
    const { ways } = findChange(
      wanted(
        [
          { id: 'frontRiderSag', low: now.frontTravel - 5e-4, high: now.frontTravel + 5e-4 },
          { id: 'frontHeight', low: -0.0055, high: -0.0035 },
        ],
        [PRELOAD, TUBES, REAR],
      ),
    )
    expect(Object.keys(ways[0]!.change)).toEqual(['tubeRaise'])
    // along the legs 5 mm are 4.5 mm straight up at 25° of rake
    expect(ways[0]!.change.tubeRaise).toBeGreaterThan(0.0035)
    expect(ways[0]!.change.tubeRaise).toBeLessThan(0.0065)
  })

  test('with preload alone, a sag it cannot reach is told as the nearest, with what is missing', () => {
    const low = now.frontTravel - 0.03
    const found = findChange(
      wanted([{ id: 'frontRiderSag', low: low - 1e-3, high: low }], [PRELOAD]),
    )
    expect(found.meets).toBe(false)
    // a fork without gas rises by what is wound in, 15 mm at most, so that 15 mm of the 30 are missing, but for the load that moves, less than 1 mm
    expect(found.ways).toHaveLength(1)
    expect(found.ways[0]!.change).toEqual({ forkPreloadChange: 0.015 })
    expect(found.ways[0]!.misses[0]!.aim).toBe('frontRiderSag')
    expect(Math.abs(found.ways[0]!.misses[0]!.by - 0.015)).toBeLessThan(1e-3)
  })

  test('a bike that meets its aims is left as it is', () => {
    const found = findChange(
      wanted([{ id: 'trail', low: now.trail - 1e-3, high: now.trail + 1e-3 }], [PRELOAD]),
    )
    expect(found.alreadyThere).toBe(true)
    expect(found.ways).toEqual([
      { change: {}, readings: { trail: now.trail }, work: 0, size: 0, misses: [] },
    ])
  })

  test('a spring whose coils would touch within the travel is no way', () => {
    const bike = plainBike()
    const legs = bike.fork.legs.map((leg) => ({ ...leg, spring: [{ rate: 9000, closes: 0.14 }] }))
    const close = { ...bike, fork: { ...bike.fork, legs } }
    // 140 mm of spring travel less 120 mm of fork leave 20 mm of preload, 5 more than are in
    const search = (rise: number) =>
      findChange({
        bike: close,
        cases,
        aims: [{ id: 'frontRiderSag', low: 0, high: now.frontTravel - rise }],
        means: [PRELOAD],
      })
    expect(search(0.0045).meets).toBe(true)
    expect(search(0.006).meets).toBe(false)
    expect(search(0.006).ways[0]!.change.forkPreloadChange).toBeLessThanOrEqual(0.005)
  })
})

describe('findChange’s parts', () => {
  test('changeBike changes what is named, as done by hand, and nothing else', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const { bike } = buildableBike(stream(seed))
        expect(changeBike(bike, {})).toEqual({
          ...bike,
          geometry: { ...bike.geometry, rearRaise: 0 },
        })
        const change = {
          tubeRaise: 0.003,
          forkPreloadChange: 0.002,
          rearRate: 95000,
          shockLengthChange: 0.002,
        }
        expect(changeBike(bike, change, 0.03)).toEqual(madeByHand(bike, change, 0.03))
      }),
    )
  })

  test('aimReading reads each aim of aimStances where CASE_OF says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const { bike, cases: loads } = buildableBike(stream(seed))
        const stances = aimStances(bike, loads, new Set(AIMS.map((aim) => CASE_OF[aim])))
        const places = axlePlaces(bike, stances.rider!)
        const { readings } = readAlone(bike, loads, {}, AIMS)
        for (const aim of AIMS)
          expect(Math.abs(aimReading(aim, stances, places) - readings[aim])).toBeLessThan(1e-9)
      }),
    )
  })

  test('MEANS and aims are refused by name where they make no sense', () => {
    const aim: Aim = { id: 'trail', low: 0.09, high: 0.1 }
    const refused = (aims: readonly Aim[], means: readonly Mean[]): unknown => {
      try {
        return findChange(wanted(aims, means))
      } catch (error) {
        return error instanceof DomainError ? error.parameter : error
      }
    }
    expect(MEANS).toHaveLength(7)
    expect(refused([], [PRELOAD])).toBe('aims')
    expect(refused([aim, aim], [PRELOAD])).toBe('aims')
    expect(refused([{ ...aim, low: 0.2 }], [PRELOAD])).toBe('aims.low')
    expect(refused([aim], [PRELOAD, PRELOAD])).toBe('means')
    expect(refused([aim], [{ ...PRELOAD, step: 0 }])).toBe('means.step')
    expect(refused([aim], [{ ...PRELOAD, step: 1e-6 }])).toBe('means.step')
    expect(refused([aim], [{ ...PRELOAD, low: 1 }])).toBe('means.low')
    expect(refused([aim], [{ id: 'forkRate', work: 1 }])).toBe('means.rates')
  })
})
