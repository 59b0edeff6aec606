import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  dampedFree,
  dampingRatio,
  logDecrement,
  naturalFrequency,
  quarterVehicle,
  staticDeflectionFrequency,
  stepOvershoot,
  transmissibility,
} from '../../src/core/damping.ts'
import { STANDARD_GRAVITY } from '../../src/core/constants.ts'
import { create, all } from 'mathjs'
import { expectRefusal, expectWithin, rounding } from './tolerance.ts'

const math = create(all ?? {})
const POUND_FORCE = 0.45359237 * STANDARD_GRAVITY
const INCH = 0.0254
const FOOT = 0.3048
const some = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('naturalFrequency', () => {
  test('naturalFrequency gives 14.36 rad/s for 25 lb on 160 lb/ft (Meriam and Kraige, Sample Problem 8/1; g = 32.2 ft/s²)', () => {
    const stiffness = (160 * POUND_FORCE) / FOOT
    const mass = (25 * POUND_FORCE) / (32.2 * FOOT)
    expectWithin(naturalFrequency({ mass, stiffness }), 14.36, 0.005) // printed to two decimals
  })

  test('naturalFrequency gives a period of 0.45 s for 35 lb on 18 lb/in (McLean and Nelson, Schaum, Example 19-2; g = 386 in/s²)', () => {
    const frequency = naturalFrequency({
      mass: (35 * POUND_FORCE) / (386 * INCH),
      stiffness: (18 * POUND_FORCE) / INCH,
    })
    expectWithin((2 * Math.PI) / frequency, 0.45, 0.005) // printed to two decimals
  })

  test('naturalFrequency gives 15.7 lb/in for an isolator that passes a twelfth at 600 rpm (Schaum, Example 19-25)', () => {
    const mass = (20 * POUND_FORCE) / (386 * INCH)
    const stiffness = (15.7 * POUND_FORCE) / INCH
    const ratio = (600 * 2 * Math.PI) / 60 / naturalFrequency({ mass, stiffness })
    expectWithin(transmissibility({ frequencyRatio: ratio, dampingRatio: 0 }), 1 / 12, 0.0005) // stiffness printed to three figures
  })

  test('naturalFrequency refuses a mass or stiffness of 0, a negative one, and what is no number', () => {
    expectRefusal(() => naturalFrequency({ mass: 0, stiffness: 1 }), 'mass')
    expectRefusal(() => naturalFrequency({ mass: 1, stiffness: -1 }), 'stiffness')
    expectRefusal(() => naturalFrequency({ mass: NaN, stiffness: 1 }), 'mass')
    expectRefusal(() => naturalFrequency({ mass: 1, stiffness: Infinity }), 'stiffness')
    expectRefusal(() => naturalFrequency({ mass: 1e-300, stiffness: 1e300 }), 'stiffness')
  })
})

describe('staticDeflectionFrequency', () => {
  test('staticDeflectionFrequency gives 4.424 Hz for 50 lb on 100 lb/in (Bevan, Theory of Machines, ch. 15, Example 4)', () => {
    const withBookGravity = Math.sqrt((32.2 * FOOT) / STANDARD_GRAVITY)
    expectWithin(
      (withBookGravity * staticDeflectionFrequency(0.5 * INCH)) / (2 * Math.PI),
      4.424,
      0.0005,
    ) // printed to three decimals
  })

  test('staticDeflectionFrequency agrees with the handbook constants 187.8/√in per minute, 0.4985/√m and 15.76/√mm (Bevan; Sarkar; Thomson)', () => {
    const hertz = (deflection: number) => staticDeflectionFrequency(deflection) / (2 * Math.PI)
    expectWithin(hertz(INCH) * 60, 187.8, 0.2) // the constants are rounded
    expectWithin(hertz(1), 0.4985, 0.0001)
    expectWithin(hertz(0.001), 15.76, 0.01)
  })

  test('staticDeflectionFrequency equals naturalFrequency of a mass that its spring carries', () => {
    fc.assert(
      fc.property(some(0.1, 1000), some(10, 1e6), (mass, stiffness) => {
        const wanted = naturalFrequency({ mass, stiffness })
        expectWithin(
          staticDeflectionFrequency((mass * STANDARD_GRAVITY) / stiffness),
          wanted,
          rounding(wanted),
        )
      }),
    )
  })

  test('staticDeflectionFrequency refuses 0 and below', () => {
    expectRefusal(() => staticDeflectionFrequency(0), 'deflection')
    expectRefusal(() => staticDeflectionFrequency(-0.1), 'deflection')
  })
})

describe('dampingRatio', () => {
  test('dampingRatio gives 0.492 for 100 lb on 200 lb/in with 85 lb s/ft (Meriam and Kraige, Sample Problem 8/6)', () => {
    const system = {
      mass: (100 * POUND_FORCE) / (32.2 * FOOT),
      stiffness: (200 * POUND_FORCE) / INCH,
      damping: (85 * POUND_FORCE) / FOOT,
    }
    expectWithin(dampingRatio(system), 0.492, 0.0005) // printed to three decimals
    expectWithin(naturalFrequency(system), 27.8, 0.05)
  })

  test('dampingRatio gives 0.0667 for a rolling cylinder of 50 kg, 75 N/m, 10 N s/m (Meriam and Kraige, Sample Problem 8/9: mass counts 3/2)', () => {
    expectWithin(dampingRatio({ mass: 75, stiffness: 75, damping: 10 }), 0.0667, 0.00005) // printed to four decimals
  })

  test('dampingRatio gives a damped frequency of 24 rad/s for 12 lb, 20 lb/in, 10 lb at 20 in/s (Schaum, Example 19-19)', () => {
    const system = {
      mass: (12 * POUND_FORCE) / (386 * INCH),
      stiffness: (20 * POUND_FORCE) / INCH,
      damping: (0.5 * POUND_FORCE) / INCH,
    }
    expectWithin(naturalFrequency(system) * Math.sqrt(1 - dampingRatio(system) ** 2), 24, 0.1) // printed to three figures, known to be 0.05 off
  })

  test('dampingRatio is 0 without damping and refuses a negative one', () => {
    expect(dampingRatio({ mass: 1, stiffness: 1, damping: 0 })).toBe(0)
    expectRefusal(() => dampingRatio({ mass: 1, stiffness: 1, damping: -1 }), 'damping')
  })
})

describe('logDecrement', () => {
  test('logDecrement gives ln 16 at the 0.4037 of a motorcycle shock absorber, its c 554.5 N s/m and k 2358 N/m (Rao, Mechanical Vibrations, Example 2.11)', () => {
    expectWithin(logDecrement(0.4037), Math.log(16), 0.0005) // ratio printed to four decimals
    const system = { mass: 200, stiffness: 2358.2652, damping: 554.4981 }
    expectWithin(dampingRatio(system), 0.4037, 0.00005)
    expectWithin(naturalFrequency(system), 3.4338, 0.0001)
    expectWithin(554.4981 / dampingRatio(system), 1373.54, 0.02)
  })

  test('logDecrement refuses a ratio below 0, and 1 or more, where nothing swings', () => {
    expectRefusal(() => logDecrement(-0.1), 'dampingRatio')
    expectRefusal(() => logDecrement(1), 'dampingRatio')
    expectRefusal(() => logDecrement(2), 'dampingRatio')
  })
})

describe('stepOvershoot', () => {
  test('stepOvershoot is exp(−half the decrement) below a ratio of 1, all of it at 0, nothing from 1 on', () => {
    for (const ratio of [0.05, 0.3, 0.4, 0.7, 0.95])
      expectWithin(stepOvershoot(ratio), Math.exp(-logDecrement(ratio) / 2), rounding(1))
    expect(stepOvershoot(0)).toBe(1)
    expect(stepOvershoot(1)).toBe(0)
    expect(stepOvershoot(3)).toBe(0)
    expectRefusal(() => stepOvershoot(-0.01), 'dampingRatio')
  })

  test('stepOvershoot falls as damping grows', () => {
    fc.assert(
      fc.property(
        some(0, 0.99),
        some(0.001, 0.5),
        (ratio, more) => stepOvershoot(ratio + more) < stepOvershoot(ratio),
      ),
    )
  })
})

describe('dampedFree', () => {
  test('dampedFree gives 7e^(−4t) − 6e^(−5t) for 1 kg, 9 N s/m, 20 N/m (Dorf and Bishop, Modern Control Systems, DP3.1, a motorcycle shock absorber)', () => {
    const system = { mass: 1, damping: 9, stiffness: 20, displacement: 1, velocity: 2 }
    expectWithin(dampedFree(system, 0.5), 0.4548369909128961, 1e-14) // rounding
  })

  test('dampedFree peaks at 0.25 m after 0.3678 s from 1.4294 m/s (Rao, Example 2.11, last part)', () => {
    const system = {
      mass: 200,
      stiffness: 2358.2652,
      damping: 554.4981,
      displacement: 0,
      velocity: 1.4294,
    }
    expectWithin(dampedFree(system, 0.3678), 0.25, 0.0001) // velocity printed to four decimals
    expect(dampedFree(system, 0.36)).toBeLessThan(dampedFree(system, 0.3678))
    expect(dampedFree(system, 0.375)).toBeLessThan(dampedFree(system, 0.3678))
  })

  test('dampedFree agrees with the matrix exponential of mathjs, below, at and above critical damping', () => {
    for (const damping of [0, 3, 39.9999, 40, 40.0001, 90]) {
      const [mass, stiffness, displacement, velocity, time] = [4, 100, 0.03, -0.4, 0.37]
      const rate = math.matrix([
        [0, time],
        [(-stiffness / mass) * time, (-damping / mass) * time],
      ])
      const [wanted = NaN] = math
        .multiply(math.expm(rate), [displacement, velocity])
        .toArray() as number[]
      // mathjs' Padé form is good to about 1e-12 here
      expectWithin(
        dampedFree({ mass, stiffness, damping, displacement, velocity }, time),
        wanted,
        1e-12,
      )
    }
  })

  test('dampedFree starts at its displacement, comes to rest with damping, and neither stiffness nor damping is a must', () => {
    const start = { mass: 2, stiffness: 50, damping: 100, displacement: 0.1, velocity: 5 }
    expect(dampedFree(start, 0)).toBe(0.1)
    expectWithin(dampedFree(start, 1e6), 0, 1e-300)
    expectWithin(dampedFree({ ...start, stiffness: 0, damping: 0 }, 3), 15.1, rounding(15.1))
    expectWithin(dampedFree({ ...start, stiffness: 0 }, 1e9), 0.1 + (5 * 2) / 100, rounding(1))
  })

  test('dampedFree under a damper beyond measure creeps back as e^(−kt/c): the mass no longer matters', () => {
    const system = { mass: 1, stiffness: 1, damping: 2e9, displacement: 1, velocity: 0 }
    expectWithin(dampedFree(system, 2e9), Math.exp(-1), 1e-12) // the slow root is k/c to 1 part in 4e18
  })

  test('dampedFree without damping keeps its energy', () => {
    fc.assert(
      fc.property(
        some(0.5, 300),
        some(100, 1e5),
        some(-0.1, 0.1),
        some(-2, 2),
        some(0, 2),
        (mass, stiffness, displacement, velocity, time) => {
          const x = (t: number) =>
            dampedFree({ mass, stiffness, damping: 0, displacement, velocity }, t)
          const quarter = Math.PI / 2 / Math.sqrt(stiffness / mass)
          // a quarter of a period later the displacement shows the speed
          const amplitude = Math.hypot(displacement, velocity / Math.sqrt(stiffness / mass))
          // the phase ω t carries its own rounding
          expectWithin(
            Math.hypot(x(time), x(time + quarter)),
            amplitude,
            amplitude * 1e-11 + 1e-300,
          )
        },
      ),
    )
  })

  test('dampedFree refuses a time, damping or stiffness below 0 and a mass of 0', () => {
    const system = { mass: 1, stiffness: 1, damping: 1, displacement: 1, velocity: 0 }
    expectRefusal(() => dampedFree(system, -1), 'time')
    expectRefusal(() => dampedFree({ ...system, damping: -1 }, 1), 'damping')
    expectRefusal(() => dampedFree({ ...system, stiffness: -1 }, 1), 'stiffness')
    expectRefusal(() => dampedFree({ ...system, mass: 0 }, 1), 'mass')
    expectRefusal(() => dampedFree({ ...system, velocity: NaN }, 1), 'velocity')
    expectRefusal(() => dampedFree(undefined as unknown as typeof system, 1), 'system')
  })
})

describe('transmissibility', () => {
  test('transmissibility is 1 at rest and at √2 for every damping ratio (standard result: Rao, Inman, Thomson)', () => {
    for (const zeta of [0.01, 0.1, 0.5, 1, 3]) {
      expectWithin(transmissibility({ frequencyRatio: Math.SQRT2, dampingRatio: zeta }), 1, 1e-12) // √2 is rounded
      expect(transmissibility({ frequencyRatio: 0, dampingRatio: zeta })).toBe(1)
    }
  })

  test('transmissibility at a damping ratio of 0.1 peaks at √(√(1 + 8ζ²) − 1)/(2ζ) (standard result)', () => {
    const peak = Math.sqrt(Math.sqrt(1 + 8 * 0.01) - 1) / 0.2
    const at = (frequencyRatio: number) => transmissibility({ frequencyRatio, dampingRatio: 0.1 })
    expect(at(peak)).toBeGreaterThan(at(peak - 1e-4))
    expect(at(peak)).toBeGreaterThan(at(peak + 1e-4))
  })

  test('transmissibility gives 0.632 mm from 2 mm for 50 kg on four springs of 7.5 kN/m shaken at 50 rad/s (Meriam and Kraige, Sample Problem 8/4)', () => {
    const frequencyRatio = 50 / naturalFrequency({ mass: 50, stiffness: 30000 })
    expectWithin(0.002 * transmissibility({ frequencyRatio, dampingRatio: 0 }), 0.000632, 5e-7) // printed to three figures
  })

  test('transmissibility gives 67.9 lb passed on of 50 lb at 30 rad/s, 100 lb on 200 lb/in with 85 lb s/ft (Meriam and Kraige, Sample Problem 8/6)', () => {
    const system = {
      mass: (100 * POUND_FORCE) / (32.2 * FOOT),
      stiffness: (200 * POUND_FORCE) / INCH,
      damping: (85 * POUND_FORCE) / FOOT,
    }
    const share = transmissibility({
      frequencyRatio: 30 / naturalFrequency(system),
      dampingRatio: dampingRatio(system),
    })
    expectWithin(0.625 * 80 * share, 67.9, 0.05) // printed to one decimal
  })

  test('transmissibility agrees with the plain formula on both sides of resonance', () => {
    fc.assert(
      fc.property(some(0, 50), some(0.001, 3), (frequencyRatio, zeta) => {
        const twice = (2 * zeta * frequencyRatio) ** 2
        const wanted = Math.sqrt((1 + twice) / ((1 - frequencyRatio ** 2) ** 2 + twice))
        // next to resonance 1 − r² loses digits in the plain formula
        expectWithin(
          transmissibility({ frequencyRatio, dampingRatio: zeta }),
          wanted,
          1e-9 * wanted,
        )
      }),
    )
  })

  test('transmissibility stays finite at extremes and refuses resonance without damping', () => {
    expect(transmissibility({ frequencyRatio: 1e300, dampingRatio: 0.3 })).toBeLessThan(1e-299)
    expect(transmissibility({ frequencyRatio: 1e200, dampingRatio: 1e300 })).toBe(1)
    expect(transmissibility({ frequencyRatio: 1, dampingRatio: 1.7e308 })).toBe(1)
    expectRefusal(
      () =>
        transmissibility(undefined as unknown as { frequencyRatio: number; dampingRatio: number }),
      'shaking',
    )
    expectRefusal(() => transmissibility({ frequencyRatio: 1, dampingRatio: 0 }), 'dampingRatio')
    expectRefusal(
      () => transmissibility({ frequencyRatio: -1, dampingRatio: 0.1 }),
      'frequencyRatio',
    )
    expectRefusal(() => transmissibility({ frequencyRatio: 1, dampingRatio: -0.1 }), 'dampingRatio')
  })
})

describe('quarterVehicle', () => {
  test('quarterVehicle gives the square roots of the eigenvalues that mathjs finds', () => {
    fc.assert(
      fc.property(
        some(20, 300),
        some(5, 60),
        some(3000, 60000),
        some(60000, 400000),
        (sprungMass, unsprungMass, springRate, tyreRate) => {
          const { values } = math.eigs([
            [springRate / sprungMass, -springRate / Math.sqrt(sprungMass * unsprungMass)],
            [
              -springRate / Math.sqrt(sprungMass * unsprungMass),
              (springRate + tyreRate) / unsprungMass,
            ],
          ])
          const [low = NaN, high = NaN] = (values as number[])
            .map((value) => Math.sqrt(Number(value)))
            .sort((a, b) => a - b)
          const { body, wheel } = quarterVehicle({ sprungMass, unsprungMass, springRate, tyreRate })
          // the oracle finds the small eigenvalue only to the rounding of the large one
          expectWithin(body, low, 1e-9 * high)
          expectWithin(wheel, high, 1e-9 * high)
        },
      ),
    )
  })

  test('quarterVehicle puts the body below the spring alone on a rigid tyre, and tends to it as the tyre hardens', () => {
    const end = { sprungMass: 110, unsprungMass: 14, springRate: 20000 }
    const alone = Math.sqrt(20000 / 110)
    expect(quarterVehicle({ ...end, tyreRate: 180000 }).body).toBeLessThan(alone)
    expectWithin(quarterVehicle({ ...end, tyreRate: 1e12 }).body, alone, 1e-6) // off by about k/(2 kt)
  })

  test('quarterVehicle refuses a mass or rate of 0 and below', () => {
    const end = { sprungMass: 110, unsprungMass: 14, springRate: 20000, tyreRate: 180000 }
    for (const name of ['sprungMass', 'unsprungMass', 'springRate', 'tyreRate'] as const) {
      expectRefusal(() => quarterVehicle({ ...end, [name]: 0 }), name)
      expectRefusal(() => quarterVehicle({ ...end, [name]: NaN }), name)
    }
  })
})
