import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { Matrix, pseudoInverse } from 'ml-matrix'
import { describe, expect, test } from 'vitest'
import {
  type Bike,
  type BikeFit,
  centreOfGravityHeight,
  fitBike,
  forkForce,
  type LoadCase,
  type Observation,
  type Prior,
  solveStance,
  springForce,
} from '../../src/core/index.ts'
import { figuresOf, knownBike, readingsOf, standInOf } from './bikeReadings.ts'
import { plainBike, RIDER, sealedBike } from './bikes.ts'
import { near, same } from './near.ts'
import { expectRefusal } from './tolerance.ts'

const seeds = fc.integer({ min: 1, max: 1e6 })
/** A fit takes some 30 ms, so that few draws have to do; the same ones each time, since `npm run fit-coverage` tries thousands. */
const FEW = { numRuns: 12, seed: 1, endOnFailure: true }

/** A fit lets a stop give, these readings do not: those of a deepest stroke, which may lie on one, are left out where all has to agree to the last digits. */
const settled = (readings: Observation[]): Observation[] =>
  readings.filter(({ kind }) => kind !== 'deepest')

/** A bike without stops, friction or noise in the way, with what is known of it. */
const bike: Bike = {
  ...sealedBike(),
  fork: { ...sealedBike().fork, friction: 50 },
  rear: { ...sealedBike().rear, friction: 40 },
}
const prior: Prior = {
  bike,
  rider: RIDER,
  ranges: {
    frontRate: { limit: 1000 },
    frontPreload: { limit: 0.006 },
    frontFriction: { limit: 30 },
    rearRate: { limit: 9000 },
    sprungX: { standard: 0.02 },
  },
}
const stance = (on: boolean, settle: number, of = bike) =>
  solveStance(of, { payload: on ? [RIDER] : [] }, { settle })
const travel = (
  name: string,
  at: 'front' | 'rear',
  rider: boolean,
  settled: 'down' | 'up',
  value: number,
): Observation => ({
  kind: 'travel',
  name,
  at,
  rider,
  settled,
  value,
  plusMinus: { limit: 0.001 },
})

describe('fitBike(…) without readings, and with readings that have no error', () => {
  test('no readings give the prior back: the bike, its figures, their uncertainties', () => {
    const fit = fitBike([], prior)
    expect(fit.bike).toEqual(bike)
    expect(fit.rider).toEqual(RIDER)
    expect(fit).toMatchObject({
      converged: true,
      chiSquared: 0,
      residuals: [],
      contradictions: [],
      exchanged: [],
    })
    expect(fit.untouched).toEqual(fit.parameters)
    same(fit.values['frontRate']!.value, 9000)
    same(fit.values['frontRate']!.uncertainty, 1000 / Math.sqrt(3), 1e-9) // slopes by differences
    same(fit.values['sprungX']!.uncertainty, 0.02, 1e-9)
    near(fit.values['frontRate']!.remaining, 1, 1e-9)
    near(fit.covariance[0]![1], 0, 1e-9)
  })

  test('a range from low to high starts from its middle, whatever the bike says', () => {
    const fit = fitBike([], {
      bike,
      ranges: { frontFriction: { low: 20, high: 80 }, airHeight: { low: 0.1, high: 0.12 } },
    })
    expect(fit.values['frontFriction']).toMatchObject({ value: 50 })
    same(fit.values['frontFriction']!.uncertainty, 60 / Math.sqrt(12), 1e-9)
    same(fit.bike.fork.legs[1]!.gas!.airHeight, 0.11)
    expect(fit.rider).toBeNull()
  })

  test('nothing to fit is a result too: residuals alone', () => {
    const fit = fitBike([travel('sag', 'front', true, 'down', 0.04)], {
      bike,
      rider: RIDER,
      ranges: {},
    })
    expect(fit.parameters).toEqual([])
    near(fit.residuals[0]!.fitted, stance(true, 1).frontTravel, 1e-15)
    near(
      fit.residuals[0]!.normalised,
      (0.04 - stance(true, 1).frontTravel) / (0.001 / Math.sqrt(3)),
      1e-9,
    )
  })

  test('readings without error bring a stand-in that is wrong to the bike: each figure ten times nearer, or not touched', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const known = knownBike(seed)
        const exact = settled(readingsOf(known)).map((one) => ({
          ...one,
          plusMinus: { standard: one.kind === 'length' ? 1e-5 : 0.1 },
        }))
        const { values, parameters } = fitBike(exact, known.prior)
        for (const name of parameters) {
          const { value, uncertainty, prior: before } = values[name]!
          const off = Math.abs(value - known.truth[name]!)
          // What remains uncertain may stay off by as much, four times over; where much is left, priors pull.
          expect(off, `${name} ${value} of ${known.truth[name]}`).toBeLessThanOrEqual(
            4 * uncertainty + 1e-3 * (before?.uncertainty ?? 1),
          )
        }
      }),
      FEW,
    )
  })
})

describe('stances solved by virtual work, by a program that shares no code or equation with this one', () => {
  interface Case {
    id: string
    bike: Bike
    load: LoadCase
    settle: number
    expected: {
      frontTravel: number
      rearTravel: number
      frontLoad: number
      frontStop: string
      rearStop: string
    }
  }
  const { cases } = JSON.parse(
    readFileSync(new URL('data/stance-cases.json', import.meta.url), 'utf8'),
  ) as { cases: Case[] }
  const usable = cases.filter(({ bike: own, load, settle, expected }) => {
    const still = !load.deceleration && !load.lean && !load.gasState && settle !== 0
    const free =
      expected.frontStop === 'none' &&
      expected.rearStop === 'none' &&
      expected.frontTravel > 0.003 &&
      expected.rearTravel > 0.003
    return (
      still &&
      free &&
      own.rear.spring.length > 0 &&
      own.fork.legs.every((leg) => leg.spring.length > 0)
    )
  })

  test('fitBike(…) is tried on those that stand on their springs, without braking, with friction one way: ten', () =>
    expect(usable).toHaveLength(10))

  test.each(usable)(
    'their travels, read as readings, bring fitBike(…) from springs 8 % off to those of $id',
    ({ bike: own, load, settle, expected }) => {
      const off = (rate: number): number => rate * 1.08
      const softer: Bike = {
        ...own,
        fork: {
          ...own.fork,
          legs: own.fork.legs.map((leg) => ({
            ...leg,
            spring: leg.spring.map((group) => ({ ...group, rate: off(group.rate) })),
          })),
        },
        rear: {
          ...own.rear,
          spring: own.rear.spring.map((group) => ({ ...group, rate: off(group.rate) })),
        },
      }
      const settled = settle > 0 ? 'down' : 'up'
      const payload = load.payload ?? []
      const readings = (['front', 'rear'] as const).map((at): Observation => {
        // The travels are good to 2e-7 m; the prior is made so wide that it weighs nothing against them.
        return {
          kind: 'travel',
          name: at,
          at,
          settled,
          payload,
          value: expected[`${at}Travel`],
          plusMinus: { standard: 1e-6 },
        }
      })
      const fit = fitBike(readings, {
        bike: softer,
        ranges: { frontRate: { standard: 4000 }, rearRate: { standard: 40000 } },
      })
      const stiffness = ({ fork, rear }: Bike): number[] => [
        fork.legs[0]!.spring[0]!.rate,
        rear.spring[0]!.rate,
      ]
      stiffness(fit.bike).forEach((rate, end) => same(rate, stiffness(own)[end]!, 1e-4))
      expect(fit.converged).toBe(true)
    },
  )
})

test('fitBike(…) finds the height of the centre of gravity that centreOfGravityHeight(…) gives from the same scales', () => {
  const { geometry, sprung } = bike
  const held = { frontTravel: 0.02, rearTravel: 0.03 }
  const loads = { level: 975, rearLevel: 905, raised: 1070 }
  const read = { kind: 'load', at: 'front', held, plusMinus: { standard: 0.01 } } as const
  const readings: Observation[] = [
    { ...read, name: 'front level', value: loads.level },
    { ...read, name: 'rear level', at: 'rear', value: loads.rearLevel },
    {
      ...read,
      name: 'front, rear axle raised',
      value: loads.raised,
      raised: { axle: 'rear', by: 0.35 },
    },
  ]
  const wide = { sprungMass: { standard: 200 }, sprungX: { standard: 1 }, sprungZ: { standard: 1 } }
  const fit = fitBike(readings, {
    bike: { ...bike, sprung: { ...sprung, mass: 140 } },
    ranges: wide,
  })
  // the same bike, hard on its springs where it was held
  const { wheelbase, ...pose } = solveStance(solid(fit.bike, held))
  const { frontRadius, rearRadius } = geometry
  const scales = {
    wheelbase,
    frontLevel: loads.level,
    rearLevel: loads.rearLevel,
    lifted: 'rear',
    lift: 0.35,
    otherWheelRaised: loads.raised,
  } as const
  near(pose.centreOfGravity.z, centreOfGravityHeight({ ...scales, frontRadius, rearRadius }), 2e-5) // 0.01 N against a prior of a metre
  expect(fit.untouched).toEqual([])
})

/** A bike that stands at given travels whatever it weighs: springs a thousand times as hard, pressed by what they carry there. */
function solid(
  of: Bike,
  { frontTravel, rearTravel }: { frontTravel: number; rearTravel: number },
): Bike {
  const leg = { spring: [{ rate: 1e9 }], preload: -frontTravel }
  return {
    ...of,
    fork: { travel: of.fork.travel, legs: [leg, leg] },
    rear: {
      travel: of.rear.travel,
      spring: [{ rate: 1e9 }],
      preload: -rearTravel * 0.45,
      motionRatio: { initial: 0.45 },
    },
  }
}

test('fitBike(…) has the covariance of weighted least squares, by slopes of solveStance(…) and a library’s matrices', () => {
  const readings = [
    travel('front alone', 'front', false, 'down', stance(false, 1).frontTravel + 4e-4),
    travel('front alone, up', 'front', false, 'up', stance(false, -1).frontTravel - 2e-4),
    travel('front rider', 'front', true, 'down', stance(true, 1).frontTravel - 3e-4),
    travel('rear rider', 'rear', true, 'up', stance(true, -1).rearTravel + 2e-4),
  ]
  const fit = fitBike(readings, prior)
  const at = fit.parameters.map((name) => fit.values[name]!.value)
  const built = ([rate = 0, preload = 0, friction = 0, rearRate = 0, x = 0]: number[]): Bike => {
    const legs = bike.fork.legs.map((leg) => ({ ...leg, spring: [{ rate }], preload }))
    const rear = { ...bike.rear, spring: [{ rate: rearRate }] }
    return { ...bike, sprung: { ...bike.sprung, x }, fork: { ...bike.fork, legs, friction }, rear }
  }
  const predicted = (values: number[]): number[] => {
    const of = built(values)
    return [
      stance(false, 1, of).frontTravel,
      stance(false, -1, of).frontTravel,
      stance(true, 1, of).frontTravel,
      stance(true, -1, of).rearTravel,
    ]
  }
  expect(fit.bike).toEqual(built(at))
  const spread = fit.parameters.map((name) => fit.values[name]!.prior!.uncertainty)
  const slopes = at.map((_, j) => {
    const moved = (by: number): number[] =>
      predicted(at.map((value, k) => (k === j ? value + by * spread[k]! : value)))
    const [ahead, behind] = [moved(1e-3), moved(-1e-3)]
    return ahead.map((value, i) => (value - behind[i]!) / 2e-3)
  })
  const rows = readings.map((_, i) => slopes.map((column) => column[i]! / (0.001 / Math.sqrt(3))))
  const whole = new Matrix([...rows, ...at.map((_, j) => at.map((__, k) => (j === k ? 1 : 0)))])
  const covariance = pseudoInverse(whole.transpose().mmul(whole))
  fit.parameters.forEach((_, i) =>
    fit.parameters.forEach((__, j) => {
      const theirs = covariance.get(i, j) * spread[i]! * spread[j]!
      near(fit.covariance[i]![j], theirs, 1e-5 * spread[i]! * spread[j]!) // central slopes over a thousandth of the prior
    }),
  )
  // and the place is the one where the weighted sum stops falling
  const left = predicted(at).map(
    (value, i) => (value - readings[i]!.value) / (0.001 / Math.sqrt(3)),
  )
  at.forEach((value, j) => {
    const pull = (value - fit.values[fit.parameters[j]!]!.prior!.value) / spread[j]!
    near(rows.reduce((sum, row, i) => sum + row[j]! * left[i]!, 0) + pull, 0, 1e-4)
  })
})

test('fitBike(…) does not depend on the order of the readings', () => {
  fc.assert(
    fc.property(seeds, fc.array(fc.nat(), { minLength: 20, maxLength: 20 }), (seed, keys) => {
      const known = knownBike(seed)
      const readings = readingsOf(known, seed)
      const shuffled = readings
        .map((one, i) => ({ one, key: keys[i] ?? 0 }))
        .sort((a, b) => a.key - b.key)
      const fit = fitBike(readings, known.prior)
      const other = fitBike(
        shuffled.map(({ one }) => one),
        known.prior,
      )
      expect(other.values).toEqual(fit.values)
      expect(other.covariance).toEqual(fit.covariance)
      expect(other.residuals.map(({ name }) => name)).toEqual(shuffled.map(({ one }) => one.name))
      expect(new Set(other.residuals)).toEqual(new Set(fit.residuals))
      expect(other.contradictions).toEqual(fit.contradictions)
    }),
    FEW,
  )
})

test('fitBike(…) with one more reading never knows a figure less well', () => {
  fc.assert(
    fc.property(seeds, fc.nat(19), (seed, place) => {
      // Readings that agree with the stand-in leave the fit where it is, so that the slopes are the same with one more.
      const { prior: known } = knownBike(seed)
      const readings = settled(readingsOf(standInOf(knownBike(seed))))
      const more = fitBike(readings, known)
      const less = fitBike(
        readings.filter((_, i) => i !== place % readings.length),
        known,
      )
      for (const name of less.parameters) {
        expect(more.values[name]!.uncertainty, name).toBeLessThanOrEqual(
          less.values[name]!.uncertainty * (1 + 1e-6),
        ) // slopes by differences
        if (less.values[name]!.prior)
          expect(less.values[name]!.remaining).toBeLessThanOrEqual(1 + 1e-9)
      }
    }),
    FEW,
  )
})

test('fitBike(…) says which figures the readings did not touch', () => {
  const fit = fitBike([travel('rear rider', 'rear', true, 'down', stance(true, 1).rearTravel)], {
    ...prior,
    ranges: { ...prior.ranges, rearFriction: { limit: 0.1 }, rearPreload: { limit: 0.01 } },
  })
  expect(fit.untouched).toEqual(
    expect.arrayContaining(['frontRate', 'frontPreload', 'frontFriction', 'rearFriction']),
  )
  expect(fit.untouched).not.toContain('rearPreload')
})

test('fitBike(…) scales a spring of several groups as one, keeps where they close, and changes both legs alike', () => {
  const groups = [{ rate: 20000, closes: 0.03 }, { rate: 16000 }]
  const stepped: Bike = {
    ...bike,
    fork: {
      ...bike.fork,
      legs: [
        { spring: groups, preload: 0.01 },
        { spring: [{ rate: 8000 }], preload: 0.02 },
      ],
    },
  }
  const first = 1 / (1 / 20000 + 1 / 16000)
  const fit = fitBike([], {
    bike: stepped,
    ranges: {
      frontRate: { low: first, high: first * 1.2 },
      frontPreload: { low: 0.011, high: 0.013 },
    },
  })
  const [left, right] = fit.bike.fork.legs
  same(left!.spring[0]!.rate, 22000)
  expect(left!.spring[0]!.closes).toBe(0.03)
  same(left!.spring[1]!.rate, 17600)
  same(right!.spring[0]!.rate, 8800)
  near(left!.preload, 0.012, 1e-15)
  near(right!.preload, 0.022, 1e-15)
  same(springForce(left!.spring, 0.02), 1.1 * springForce(groups, 0.02))
})

test('fitBike(…) lets a hanging wheel hang on a top-out spring that is stronger than the preload', () => {
  const pulled: Bike = { ...bike, fork: { ...bike.fork, topOut: { rate: 60000, length: 0.02 } } }
  const hanging: Observation = {
    kind: 'length',
    name: 'hanging',
    at: 'front',
    settled: 'hanging',
    value: 0.15,
    plusMinus: { limit: 0.001 },
  }
  const fit = fitBike([hanging], { bike: pulled, ranges: {} })
  const out = fit.values['frontExtended']!.value - 0.15
  expect(out).toBeGreaterThan(0.003)
  // there the fork pulls as hard as the wheel weighs along the axis
  near(forkForce(pulled.fork, out), -17 * 9.80665 * Math.cos(bike.geometry.rake), 1e-6)
})

test('fitBike(…) takes the mean of both ways for a reading so named, a free bike on the scales, and an axle raised on springs', () => {
  const up = stance(true, -1).frontTravel
  const down = stance(true, 1).frontTravel
  const read = (one: object): number =>
    fitBike([{ plusMinus: { limit: 1 }, value: 0, name: 'it', ...one } as Observation], {
      ...prior,
      ranges: {},
    }).residuals[0]!.fitted
  near(read({ kind: 'travel', at: 'front', settled: 'mean', rider: true }), (up + down) / 2, 1e-15)
  near(read({ kind: 'load', at: 'rear', rider: true }), stance(true, 0).rearLoad, 1e-9)
  const luggage = { mass: 20, x: -0.1, z: 0.9 }
  near(
    read({ kind: 'load', at: 'rear', payload: [luggage] }),
    solveStance(bike, { payload: [luggage] }).rearLoad,
    1e-9,
  )
  // Raised by nothing to speak of it is level, and the higher the back, the more the front carries.
  const lifted = (by: number): number =>
    read({ kind: 'load', at: 'front', raised: { axle: 'rear', by } })
  near(lifted(1e-9), stance(false, 0).frontLoad, 1e-4)
  expect(lifted(0.3)).toBeGreaterThan(lifted(0.1) + 20)
  expect(read({ kind: 'load', at: 'front', raised: { axle: 'front', by: 0.3 } })).toBeLessThan(
    lifted(1e-9) - 20,
  )
})

test('fitBike(…) holds friction at nothing where the readings want less, and stays a bike', () => {
  const readings = [
    travel('down', 'front', true, 'down', stance(true, 0).frontTravel - 0.004),
    travel('up', 'front', true, 'up', stance(true, 0).frontTravel + 0.004),
  ]
  const fit = fitBike(readings, prior)
  expect(fit.values['frontFriction']!.value).toBe(0)
  expect(fit.contradictions).toEqual([['down', 'up']])
  expect(fit.exchanged).toEqual([['down', 'up']])
})

describe('two readings that contradict each other', () => {
  const fits = (readings: Observation[]): BikeFit => fitBike(readings, prior)
  const [alone, rider] = [stance(false, 1), stance(true, 1)]
  const good = [
    travel('front alone', 'front', false, 'down', alone.frontTravel),
    travel('front rider', 'front', true, 'down', rider.frontTravel),
    travel('rear alone', 'rear', false, 'down', alone.rearTravel),
    travel('rear rider', 'rear', true, 'down', rider.rearTravel),
  ]

  test('are named, where the same thing was read twice with two results', () => {
    const { contradictions, exchanged } = fits([
      ...good,
      { ...good[1]!, name: 'front rider again', value: rider.frontTravel + 0.007 },
    ])
    expect(contradictions).toEqual([['front rider', 'front rider again']])
    expect(exchanged).toEqual([])
  })

  test('are a reading and a figure, where only what was known beforehand speaks against it', () => {
    const stiff = springForce([{ rate: 9000 }], 0.05) * 1.6
    const readings: Observation[] = [0.03, 0.06, 0.08].map((at) => ({
      kind: 'springForce',
      name: `pressed to ${at}`,
      at: 'front',
      length: 0.3 - at,
      value: (stiff / 0.05) * at,
      plusMinus: { limit: 5 },
    }))
    const { contradictions, values } = fitBike(readings, prior)
    expect(contradictions).toHaveLength(1)
    expect(contradictions[0]![0]).toMatch('pressed')
    expect(contradictions[0]![1]).toBe('frontRate')
    expect(values['frontRate']!.value).toBeGreaterThan(12000)
  })

  test('are not found among good readings', () =>
    expect(fits(good)).toMatchObject({ contradictions: [], exchanged: [] }))

  test('are found later or sooner with another threshold', () => {
    const readings = [
      ...good,
      { ...good[1]!, name: 'front rider again', value: rider.frontTravel + 0.0017 },
    ]
    expect(fitBike(readings, prior, { threshold: 2.5 }).contradictions).toEqual([])
    expect(fitBike(readings, prior, { threshold: 1.5 }).contradictions).toHaveLength(1)
  })
})

describe('fitBike(…) refuses', () => {
  const one = travel('it', 'front', false, 'down', 0.03)
  const refuse = (change: object, parameter: string): void =>
    expectRefusal(() => fitBike([{ ...one, ...change }], prior), parameter)

  test('readings that make no sense', () => {
    expectRefusal(() => fitBike(undefined as never, prior), 'observations')
    expectRefusal(() => fitBike([undefined as never], prior), 'observations')
    refuse({ name: '' }, 'observations.name')
    refuse({ name: 'frontRate' }, 'observations.name')
    expectRefusal(() => fitBike([one, one], prior), 'observations.name')
    refuse({ value: NaN }, 'it.value')
    refuse({ value: -0.001 }, 'it.value')
    refuse({ kind: 'weight' }, 'it.kind')
    refuse({ at: 'middle' }, 'it.at')
    refuse({ settled: 'hanging' }, 'it.settled')
    refuse({ kind: 'length', settled: 'sideways' }, 'it.settled')
    refuse({ plusMinus: { limit: 0 } }, 'it.plusMinus.limit')
    refuse({ plusMinus: { standard: -1 } }, 'it.plusMinus.standard')
    refuse({ plusMinus: { limit: 1, standard: 1 } }, 'it.plusMinus')
    refuse({ plusMinus: {} }, 'it.plusMinus')
    refuse({ plusMinus: undefined }, 'it.plusMinus')
    refuse({ kind: 'springForce', length: 0 }, 'it.length')
    refuse({ kind: 'deepest', deceleration: -1 }, 'it.deceleration')
    refuse({ kind: 'deepest', deceleration: 5 }, 'it.decelerationPlusMinus')
    refuse({ kind: 'load', raised: { axle: 'left', by: 1 } }, 'it.raised.axle')
    refuse({ kind: 'load', raised: { axle: 'rear', by: 0 } }, 'it.raised.by')
    refuse({ kind: 'load', held: { frontTravel: -1, rearTravel: 0 } }, 'it.held.frontTravel')
    refuse({ kind: 'load', held: { frontTravel: 0 } }, 'it.held.rearTravel')
    refuse({ payload: 80 }, 'it.payload')
  })

  test('a prior that makes no sense, or speaks of what the bike has not', () => {
    expectRefusal(() => fitBike([], undefined as never), 'prior')
    expectRefusal(() => fitBike([], { ranges: {} } as never), 'prior.bike')
    expectRefusal(() => fitBike([], { bike } as never), 'prior.ranges')
    expectRefusal(
      () => fitBike([], { bike, ranges: { colour: { limit: 1 } } } as never),
      'prior.ranges',
    )
    expectRefusal(
      () => fitBike([], { bike, ranges: { frontRate: { low: 2, high: 1 } } }),
      'prior.ranges.frontRate.high',
    )
    expectRefusal(
      () => fitBike([], { bike, ranges: { frontFriction: { low: -9, high: 1 } } }),
      'prior.ranges.frontFriction',
    )
    expectRefusal(
      () => fitBike([], { bike, ranges: { frontExtended: { limit: 0.01 } } }),
      'prior.ranges.frontExtended',
    )
    expectRefusal(
      () => fitBike([], { bike, ranges: { brakingExponent: { low: 0.4, high: 0.8 } } }),
      'prior.ranges.brakingExponent',
    )
    expectRefusal(
      () => fitBike([], { bike: plainBike(), ranges: { airHeight: { limit: 0.01 } } }),
      'ranges.airHeight',
    )
    expectRefusal(
      () => fitBike([], { bike, ranges: { riderMass: { limit: 5 } } }),
      'ranges.riderMass',
    )
    expectRefusal(
      () => fitBike([{ ...one, rider: true } as Observation], { bike, ranges: {} }),
      'prior.rider',
    )
    expectRefusal(() => fitBike([], prior, { threshold: 0 }), 'options.threshold')
  })
})

test('figuresOf(…), by which these tests read a bike, has the names of the fit', () => {
  const known = knownBike(1)
  expect(Object.keys(figuresOf(known.bike, known.rider))).toEqual(Object.keys(known.prior.ranges))
})
