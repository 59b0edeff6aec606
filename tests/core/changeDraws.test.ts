import fc from 'fast-check'
import { standardDeviation } from 'simple-statistics'
import { expect, test } from 'vitest'
import {
  type Aim,
  type Bike,
  changeBike,
  changeDraws,
  DomainError,
  solveStance,
} from '../../src/core/index.ts'
import { stream } from './bikes.ts'
import { buildableBike } from './changeCases.ts'
import { between } from './draws.ts'
import { near, same } from './near.ts'

const seeds = fc.integer({ min: 0, max: 2 ** 31 })

/** A bike, and what it might be too: its sprung mass and its fork springs a few per cent off. */
function drawnBikes(seed: number, count: number) {
  const next = stream(seed)
  const { bike, cases } = buildableBike(next)
  const off = (): number => 1 + 0.04 * (next() - 0.5)
  const draws = Array.from({ length: count }, () => {
    const rate = off()
    const one: Bike = {
      ...bike,
      sprung: { ...bike.sprung, mass: bike.sprung.mass * off() },
      fork: {
        ...bike.fork,
        legs: bike.fork.legs.map((leg) => ({
          ...leg,
          spring: leg.spring.map((group) => ({ ...group, rate: group.rate * rate })),
        })),
      },
    }
    return { bike: one, cases }
  })
  return { bike, cases, draws }
}

test('changeDraws(…) tells the spread and the share of what each drawn bike reads by itself', () => {
  fc.assert(
    fc.property(seeds, between(-0.003, 0.003), between(0, 1), (seed, preload, cut) => {
      const { bike, cases, draws } = drawnBikes(seed, 12)
      const change = { forkPreloadChange: preload }
      const sags = draws.map((one) => {
        const { rearTravel } = solveStance(one.bike, cases.rider)
        return solveStance(changeBike(one.bike, change, rearTravel), cases.rider).frontTravel
      })
      const [least, most] = [Math.min(...sags), Math.max(...sags)]
      const edge = least + cut * (most - least)
      const task = (low: number, high: number) =>
        changeDraws({
          bike,
          cases,
          draws,
          aims: [{ id: 'frontRiderSag', low, high } satisfies Aim],
          fromNow: [],
          newRates: 0,
        })(change)[0]!
      const [under, over] = [task(-9, edge), task(edge, 9)]
      // a dozen values of some hundredths of a metre, each balanced to 1e-12 m
      near(under.uncertainty, standardDeviation(sags) * Math.sqrt(12 / 11), 1e-9)
      same(under.uncertainty, over.uncertainty)
      const clear = sags.filter((sag) => Math.abs(sag - edge) > 1e-9)
      const below = clear.filter((sag) => sag < edge).length
      // a bike that reads the edge itself may stand on either side
      near(under.chance, below / 12, (12 - clear.length) / 12 + 1e-12)
      near(under.chance + over.chance, 1, (12 - clear.length) / 12 + 1e-12)
    }),
    { numRuns: 20 },
  )
})

test('changeDraws(…) of copies of one bike is sure, and of a reading told from now says what the bike itself will read', () => {
  fc.assert(
    fc.property(seeds, between(-0.003, 0.003), (seed, raise) => {
      const { bike, cases } = drawnBikes(seed, 1)
      const { rearTravel } = solveStance(bike, cases.rider)
      const change = { tubeRaise: raise }
      const { trail } = solveStance(changeBike(bike, change, rearTravel), cases.rider)
      for (const fromNow of [[], ['trail']] as const) {
        const [told] = changeDraws({
          bike,
          cases,
          draws: [
            { bike, cases },
            { bike, cases },
          ],
          aims: [{ id: 'trail', low: trail - 1e-6, high: trail + 1e-6 }],
          fromNow,
          newRates: 0,
        })(change)
        near(told!.uncertainty, 0, 1e-12)
        expect(told!.chance).toBe(1)
      }
    }),
    { numRuns: 20 },
  )
})

test('changeDraws(…) refuses a task without bikes and an uncertainty below 0', () => {
  const { bike, cases, draws } = drawnBikes(7, 2)
  const task = { bike, cases, draws, aims: [], fromNow: [], newRates: 0 }
  expect(() => changeDraws({ ...task, draws: [] })).toThrow(DomainError)
  expect(() => changeDraws({ ...task, newRates: -1 })).toThrow(/newRates/)
})
