import {
  aimReading,
  aimStances,
  axlePlaces,
  changeBike,
  changeDraws,
  changeLooks,
  damperForce,
  fitBike,
  normalStream,
  randomStream,
  sample,
  sampleBike,
  solveStance,
  spreadOfChange,
  withSprings,
} from '../../core/index.ts'
import type { AimCases, Bike } from '../../core/index.ts'
import type { Drawn } from './bikes.ts'
import type { Part } from './part.ts'
import { placeAt, settle } from './settle.ts'

/* What the search for a change and the fit to readings are made of, beside the second method. */

const payloadOf = ({ loadCase: { payload = [] } }: Drawn) => payload
const casesOf = (drawn: Drawn): AimCases => ({ rider: { payload: payloadOf(drawn) } })
const RIDER = new Set(['rider'] as const)
const ridden = (drawn: Drawn, bike: Bike): Drawn => ({
  bike,
  loadCase: { payload: payloadOf(drawn) },
})
const CHANGE = { forkPreloadChange: 0.003, tubeRaise: 0.004 }

/** The same change by hand. */
function changed({ bike }: Drawn): Bike {
  const { geometry, fork } = bike
  return {
    ...bike,
    geometry: { ...geometry, tubeRaise: (geometry.tubeRaise ?? 0) + CHANGE.tubeRaise },
    fork: {
      ...fork,
      legs: fork.legs.map((leg) => ({ ...leg, preload: leg.preload + CHANGE.forkPreloadChange })),
    },
  }
}

/** With so many kilograms more aboard, shared out as what is there. */
function heavier(drawn: Drawn, by: number): Drawn {
  const all = payloadOf(drawn).reduce((sum, { mass }) => sum + mass, 0)
  const payload = payloadOf(drawn).map((part) => ({ ...part, mass: part.mass * (1 + by / all) }))
  return { bike: drawn.bike, loadCase: { payload } }
}

const AIM = { id: 'frontRiderSag', low: 0, high: 0.2 } as const
const TRAIL = { id: 'trail', low: 0, high: 0.3 } as const

/** A search for two millimetres less sag by preload in steps too fine to see. */
function searched(drawn: Drawn): { sag: number; told: number } {
  const sag = settle(ridden(drawn, drawn.bike)).frontTravel - 0.002
  const look = changeLooks(
    drawn.bike,
    casesOf(drawn),
  )({
    aims: [{ id: 'frontRiderSag', low: sag - 4e-4, high: sag + 4e-4 }],
    means: [{ id: 'forkPreloadChange', low: 0, high: 0.01, step: 5e-4, work: 1 }],
  })
  look.work()
  const [way] = look.found().ways
  const by = way?.change.forkPreloadChange ?? Number.NaN
  const legs = drawn.bike.fork.legs.map((leg) => ({ ...leg, preload: leg.preload + by }))
  const bike = { ...drawn.bike, fork: { ...drawn.bike.fork, legs } }
  return { sag: settle(ridden(drawn, bike)).frontTravel, told: way?.readings.frontRiderSag ?? 0 }
}

/** The generator of Blackman and Vigna in whole numbers without an end, as they print it. */
function wholeStream(seed: number): () => number {
  const WORD = 0xffffffffn
  const mixed = (word: bigint): bigint => {
    let z = ((word ^ (word >> 16n)) * 0x85ebca6bn) & WORD
    z = ((z ^ (z >> 13n)) * 0xc2b2ae35n) & WORD
    return z ^ (z >> 16n)
  }
  const s = [1n, 2n, 3n, 4n].map((k) => mixed((BigInt(seed) + k * 0x9e3779b9n) & WORD))
  const turn = (word: bigint, by: bigint): bigint => ((word << by) | (word >> (32n - by))) & WORD
  const next = (): bigint => {
    const result = (turn((s[1]! * 5n) & WORD, 7n) * 9n) & WORD
    const shifted = (s[1]! << 9n) & WORD
    s[2]! ^= s[0]!
    s[3]! ^= s[1]!
    s[1]! ^= s[2]!
    s[0]! ^= s[3]!
    s[2]! ^= shifted
    s[3] = turn(s[3]!, 11n)
    return result
  }
  return () => Number((next() >> 5n) * 67108864n + (next() >> 6n)) / 2 ** 53
}

const seedOf = ({ bike }: Drawn): number => Math.floor(bike.sprung.mass * 1e4)

/** One number of normal distribution: how far out by the chance of a pair to lie further, in which direction by a sixth of a turn and so on. */
function deviate(uniform: () => number): number {
  const outside = 1 - uniform()
  const turn = uniform()
  return Math.sqrt(2 * Math.log(1 / outside)) * Math.sin(2 * Math.PI * (turn + 0.25))
}

const [BEFORE, READ, SPREAD] = [9000, 9200, 300]

/** A shim stack that opens at 0.15 m/s, then a quarter as steep. */
const OPENING = { kind: 'digressive', knee: { velocity: 0.15, force: 105 }, after: 175 } as const

export const FINDING: readonly Part[] = [
  {
    name: 'sample',
    core: ({ bike }) => sample(0, bike.fork.travel, 4)[3]!,
    other: ({ bike }) => bike.fork.travel - bike.fork.travel / 4,
  },
  {
    name: 'damperForce',
    core: () => damperForce({ compression: OPENING, rebound: OPENING }, 0.35),
    // 105 N at the knee, and 20 cm/s more at 175 N·s/m
    other: () => 105 + 35,
  },
  {
    name: 'changeBike',
    core: (drawn) => solveStance(changeBike(drawn.bike, CHANGE), casesOf(drawn).rider).frontTravel,
    other: (drawn) => settle(ridden(drawn, changed(drawn))).frontTravel,
  },
  {
    name: 'aimStances',
    core: (drawn) => aimStances(drawn.bike, casesOf(drawn), RIDER).rider!.rearTravel,
    other: (drawn) => settle(ridden(drawn, drawn.bike)).rearTravel,
  },
  {
    name: 'aimReading',
    core: (drawn) => {
      const stances = aimStances(drawn.bike, casesOf(drawn), RIDER)
      return aimReading('trail', stances, axlePlaces(drawn.bike, stances.rider!))
    },
    other: (drawn) => settle(ridden(drawn, drawn.bike)).trail,
  },
  {
    name: 'axlePlaces',
    core: (drawn) => axlePlaces(drawn.bike, solveStance(drawn.bike, casesOf(drawn).rider)).frontZ,
    other: (drawn) => {
      const { geometry } = drawn.bike
      const { frontTravel, rearTravel } = settle(ridden(drawn, drawn.bike))
      const axle = { x: geometry.wheelbase, z: geometry.datum.frontRadius ?? geometry.frontRadius }
      return placeAt(drawn.bike, [frontTravel, rearTravel])(axle).z
    },
  },
  {
    name: 'changeLooks',
    core: (drawn) => searched(drawn).told,
    other: (drawn) => searched(drawn).sag,
  },
  {
    name: 'spreadOfChange',
    core: (drawn) =>
      spreadOfChange(drawn.bike, casesOf(drawn), {}, [AIM], {
        rates: 0,
        preload: 0,
        carried: 2,
      })[0]!.uncertainty,
    // two kilograms, by the slope
    other: (drawn) =>
      (2 * (settle(heavier(drawn, 0.02)).frontTravel - settle(heavier(drawn, -0.02)).frontTravel)) /
      0.04,
  },
  {
    name: 'changeDraws',
    core: (drawn) => {
      const cases = casesOf(drawn)
      const draws = [drawn.bike, withSprings(drawn.bike, 8e3, 0.015)].map((bike) => ({
        bike,
        cases,
      }))
      const task = { bike: drawn.bike, cases, draws, aims: [TRAIL], fromNow: [], newRates: 0 }
      return changeDraws(task)({})[0]!.uncertainty
    },
    // of two, the deviation is what lies between over the root of two
    other: (drawn) =>
      Math.abs(
        settle(ridden(drawn, drawn.bike)).trail -
          settle(ridden(drawn, withSprings(drawn.bike, 8e3, 0.015))).trail,
      ) / Math.SQRT2,
  },
  {
    name: 'randomStream',
    core: (drawn) => randomStream(seedOf(drawn))(),
    other: (drawn) => wholeStream(seedOf(drawn))(),
  },
  {
    name: 'normalStream',
    core: (drawn) => normalStream(randomStream(seedOf(drawn)))(),
    other: (drawn) => deviate(wholeStream(seedOf(drawn))),
  },
  {
    name: 'sampleBike',
    core: (drawn) => {
      const fit = {
        bike: withSprings(drawn.bike, BEFORE, 0.015),
        rider: null,
        parameters: ['frontRate'],
        values: { frontRate: { value: BEFORE, uncertainty: 100, prior: null, remaining: null } },
        covariance: [[100 ** 2]],
      }
      return sampleBike(fit, 1, seedOf(drawn))[0]!.fork.legs[0]!.spring[0]!.rate
    },
    other: (drawn) => BEFORE + 100 * deviate(wholeStream(seedOf(drawn))),
  },
  {
    // a rate known beforehand, and read again from two forces a tenth of a metre apart: each counts by one over its variance
    name: 'fitBike',
    core: ({ bike }) => {
      const read = (name: string, length: number, value: number) => ({
        ...({ kind: 'springForce', name, at: 'front', length, value } as const),
        plusMinus: { standard: 15 },
      })
      const readings = [read('long', 0.3, 400), read('short', 0.2, 400 + READ * 0.1)]
      const prior = {
        bike: withSprings(bike, BEFORE, 0.015),
        ranges: { frontRate: { standard: SPREAD } },
      }
      return fitBike(readings, prior).values.frontRate!.value
    },
    other: () => {
      const [before, read] = [1 / SPREAD ** 2, 1 / (Math.SQRT2 * (15 / 0.1)) ** 2]
      return (BEFORE * before + READ * read) / (before + read)
    },
  },
]
