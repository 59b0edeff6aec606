import { EigenvalueDecomposition, Matrix } from 'ml-matrix'
import fc from 'fast-check'
import { all, type Complex, create } from 'mathjs'
import { describe, expect, test } from 'vitest'
import {
  capsizeSpeed,
  linearModes,
  modesBySpeed,
  weaveSpeed,
  whippleMatrices,
  whippleStateMatrix,
} from '../../src/core/steering.ts'
import { expectRefusal, expectWithin } from './tolerance.ts'
import { between } from './draws.ts'

const math = create(all ?? {})

// Meijaard, Papadopoulos, Ruina and Schwab 2007, Proc. R. Soc. A 463:1955–1982: table 1 (parameters), the coefficient matrices, table 2 (eigenvalues; digits of the
// gtest by D. L. Peterson)
const benchmark = {
  w: 1.02,
  c: 0.08,
  lam: Math.PI / 10,
  g: 9.81,
  rR: 0.3,
  mR: 2.0,
  IRxx: 0.0603,
  IRyy: 0.12,
  xB: 0.3,
  zB: -0.9,
  mB: 85.0,
  IBxx: 9.2,
  IBxz: 2.4,
  IByy: 11.0,
  IBzz: 2.8,
  xH: 0.9,
  zH: -0.7,
  mH: 4.0,
  IHxx: 0.05892,
  IHxz: -0.00756,
  IHyy: 0.06,
  IHzz: 0.00708,
  rF: 0.35,
  mF: 3.0,
  IFxx: 0.1405,
  IFyy: 0.28,
}
type Rows = [number, [number, number][]][]
// speed [m/s]; eigenvalues, real and imaginary part
const TABLE_2: Rows = [
  [
    0,
    [
      [5.53094371765393, 0],
      [3.13164324790656, 0],
      [-3.13164324790656, 0],
      [-5.53094371765393, 0],
    ],
  ],
  [
    1,
    [
      [3.5269617099007, 0.8077402751993],
      [3.5269617099007, -0.8077402751993],
      [-3.13423125066578, 0],
      [-7.11008014637442, 0],
    ],
  ],
  [
    2,
    [
      [2.68234517512745, 1.68066296590675],
      [2.68234517512745, -1.68066296590675],
      [-3.07158645641514, 0],
      [-8.67387984831735, 0],
    ],
  ],
  [
    4,
    [
      [0.41325331521125, 3.07910818603206],
      [0.41325331521125, -3.07910818603206],
      [-1.42944427361326, 0],
      [-12.1586142657645, 0],
    ],
  ],
  [
    5,
    [
      [-0.32286642900409, 0],
      [-0.77534188219585, 4.46486771378823],
      [-0.77534188219585, -4.46486771378823],
      [-14.0783896927982, 0],
    ],
  ],
  [
    6,
    [
      [-0.0040669007697, 0],
      [-1.52644486584142, 5.87673060598709],
      [-1.52644486584142, -5.87673060598709],
      [-16.0853712309803, 0],
    ],
  ],
  [
    7,
    [
      [0.10268170574766, 0],
      [-2.13875644258362, 7.19525913329805],
      [-2.13875644258362, -7.19525913329805],
      [-18.15788466125262, 0],
    ],
  ],
  [
    9,
    [
      [0.15790184030917, 0],
      [-3.21675402252485, 9.69377351531791],
      [-3.21675402252485, -9.69377351531791],
      [-22.43788559040858, 0],
    ],
  ],
  [
    10,
    [
      [0.16105338653172, 0],
      [-3.72016840437287, 10.90681139476287],
      [-3.72016840437287, -10.90681139476287],
      [-24.62459635017404, 0],
    ],
  ],
]

describe('whippleMatrices', () => {
  test('modesBySpeed(…) of one bicycle gives the modes of each speed, in any order', () => {
    const at = modesBySpeed(benchmark)
    for (const speed of [5, 0, 9, 5]) expect(at(speed)).toEqual(linearModes(benchmark, speed))
  })

  test('whippleMatrices of the benchmark bicycle are those of the paper (section 5)', () => {
    const { M, C1, K0, K2 } = whippleMatrices(benchmark)
    const printed = {
      M: [80.81722, 2.31941332208709, 2.31941332208709, 0.29784188199686],
      C1: [0, 33.86641391492494, -0.85035641456978, 1.6854039739756],
      K0: [-80.95, -2.59951685249872, -2.59951685249872, -0.80329488458618],
      K2: [0, 76.59734589573222, 0, 2.65431523794604],
    }
    for (const [name, matrix] of Object.entries({ M, C1, K0, K2 })) {
      // printed to 14 decimals; the sums behind them round at 1e-13 of their size
      matrix
        .flat()
        .forEach((value, i) =>
          expectWithin(
            value,
            printed[name as keyof typeof printed][i] ?? NaN,
            2e-13 * Math.max(1, Math.abs(value)),
          ),
        )
    }
  })

  test('whippleMatrices do not need the two moments of inertia that never enter', () => {
    const { IByy: _body, IHyy: _bars, ...rest } = benchmark
    expect(whippleMatrices(rest)).toEqual(whippleMatrices(benchmark))
  })

  test('whippleMatrices refuses parameters that make no bicycle', () => {
    expectRefusal(() => whippleMatrices({ ...benchmark, w: 0 }), 'w')
    expectRefusal(() => whippleMatrices({ ...benchmark, rF: -0.3 }), 'rF')
    expectRefusal(() => whippleMatrices({ ...benchmark, mB: -1 }), 'mB')
    for (const lam of [2, -2, Math.PI / 2, -Math.PI / 2])
      expectRefusal(() => whippleMatrices({ ...benchmark, lam }), 'lam')
    // a front that is one point on an upright steering axis has no inertia to steer: the mass matrix is exactly singular
    expectRefusal(
      () =>
        whippleMatrices({ ...benchmark, lam: 0, c: 0, mH: 0, IHxx: 0, IHxz: 0, IHzz: 0, IFxx: 0 }),
      'parameters',
    )
    expectRefusal(() => whippleMatrices({ ...benchmark, c: NaN }), 'c')
    expectRefusal(() => whippleMatrices({ ...benchmark, IBxz: 1000, IBxx: 0 }), 'parameters')
    expectRefusal(() => whippleMatrices({ ...benchmark, mH: 0, mF: 0 }), 'mH')
    expectRefusal(() => whippleMatrices(undefined as unknown as typeof benchmark), 'parameters')
    const { zH: _missing, ...rest } = benchmark
    expectRefusal(() => whippleMatrices(rest as typeof benchmark), 'zH')
  })
})

describe('linearModes', () => {
  test.each(TABLE_2)('linearModes at %d m/s are the eigenvalues of table 2', (speed, wanted) => {
    const modes = linearModes(benchmark, speed)
    expect(modes).toHaveLength(4)
    modes.forEach(({ re, im }, i) => {
      // 13 decimals are known of some (see the note with the table)
      expectWithin(re, wanted[i]?.[0] ?? NaN, 1e-12)
      expectWithin(im, wanted[i]?.[1] ?? NaN, 1e-12)
    })
  })

  test('linearModes at the paper’s bifurcation, 0.684 m/s, hold a double eigenvalue of 3.783 1/s', () => {
    const [first, second] = linearModes(benchmark, 0.68428307889246)
    for (const mode of [first, second]) {
      // a double root doubles nothing but the sensitivity: the square root of the last digit
      expectWithin(mode?.re ?? NaN, 3.7829040512932, 1e-6)
      expectWithin(mode?.im ?? NaN, 0, 1e-6)
    }
  })

  test('linearModes agree with ml-matrix over speeds and bicycles', () => {
    fc.assert(
      fc.property(
        between(0, 15),
        fc.double({ min: -0.1, max: 0.3, noNaN: true }),
        fc.double({ min: -0.2, max: 0.8, noNaN: true }),
        (speed, c, lam) => {
          const bicycle = { ...benchmark, c, lam }
          const state = whippleStateMatrix(bicycle, speed)
          const { realEigenvalues, imaginaryEigenvalues } = new EigenvalueDecomposition(
            new Matrix(state),
          )
          const wanted = realEigenvalues
            .map((re, i) => ({ re, im: imaginaryEigenvalues[i] ?? NaN }))
            .sort((a, b) => b.re - a.re || b.im - a.im)
          // near a double eigenvalue both carry the square root of rounding
          linearModes(bicycle, speed).forEach(({ re, im }, i) => {
            expectWithin(re, wanted[i]?.re ?? NaN, 1e-5)
            expectWithin(Math.abs(im), Math.abs(wanted[i]?.im ?? NaN), 1e-5)
          })
        },
      ),
    )
  })

  test('linearModes agree with mathjs away from double eigenvalues', () => {
    for (const speed of [2, 5, 8]) {
      const { values } = math.eigs(whippleStateMatrix(benchmark, speed))
      const wanted = (values as (number | Complex)[]).map((value) =>
        typeof value === 'number' ? { re: value, im: 0 } : { re: value.re, im: value.im },
      )
      // its own stopping rule is about 1e-12 of the largest eigenvalue
      for (const { re, im } of linearModes(benchmark, speed))
        expectWithin(
          Math.min(...wanted.map((value) => Math.hypot(value.re - re, value.im - im))),
          0,
          1e-8,
        )
    }
  })

  test('linearModes come largest real part first, pairs as conjugates', () => {
    for (let speed = 0; speed <= 12; speed += 0.25) {
      const modes = linearModes(benchmark, speed)
      modes.slice(1).forEach((mode, i) => expect(mode.re).toBeLessThanOrEqual(modes[i]?.re ?? NaN))
      expectWithin(
        modes.reduce((sum, { im }) => sum + im, 0),
        0,
        0,
      )
    }
  })

  test('linearModes refuses a speed below 0', () => {
    expectRefusal(() => linearModes(benchmark, -1), 'speed')
    expectRefusal(() => linearModes(benchmark, NaN), 'speed')
  })
})

describe('whippleStateMatrix', () => {
  test('whippleStateMatrix satisfies M q̈ + v C₁ q̇ + (g K₀ + v² K₂) q = 0', () => {
    const { M, C1, K0, K2 } = whippleMatrices(benchmark)
    const v = 5
    const state = whippleStateMatrix(benchmark, v)
    const q = [0.02, -0.05, 0.3, -0.7] as const
    const [, , rollAcceleration = NaN, steerAcceleration = NaN] = state.map((row) =>
      row.reduce((sum, x, i) => sum + x * (q[i] ?? NaN), 0),
    )
    for (const i of [0, 1] as const) {
      const inertia = M[i][0] * rollAcceleration + M[i][1] * steerAcceleration
      const rates = v * (C1[i][0] * q[2] + C1[i][1] * q[3])
      const angles = [0, 1].reduce(
        (sum, j) =>
          sum +
          (benchmark.g * (K0[i][j as 0 | 1] ?? 0) + v * v * (K2[i][j as 0 | 1] ?? 0)) *
            (q[j as 0 | 1] ?? 0),
        0,
      )
      expectWithin(inertia + rates + angles, 0, 1e-11) // terms of about 100
    }
    expect(state.slice(0, 2)).toEqual([
      [0, 0, 1, 0],
      [0, 0, 0, 1],
    ])
  })
})

describe('weaveSpeed and capsizeSpeed', () => {
  test('weaveSpeed of the benchmark is 4.29238253634111 m/s, where the pair swings at 3.435 rad/s (Meijaard et al., table 2)', () => {
    const speed = weaveSpeed(benchmark) ?? NaN
    expectWithin(speed, 4.29238253634111, 1e-12) // digits as printed
    const [first] = linearModes(benchmark, speed)
    expectWithin(first?.re ?? NaN, 0, 1e-11)
    expectWithin(first?.im ?? NaN, 3.43503384866144, 1e-11)
  })

  test('capsizeSpeed of the benchmark is 6.02426201538837 m/s, where one eigenvalue is 0 (Meijaard et al., table 2)', () => {
    const speed = capsizeSpeed(benchmark) ?? NaN
    expectWithin(speed, 6.02426201538837, 1e-12)
    expectWithin(linearModes(benchmark, speed)[0]?.re ?? NaN, 0, 1e-11)
  })

  test('weaveSpeed and capsizeSpeed mark where the real parts of linearModes change sign, for bicycles of other trail and tilt', () => {
    let found = 0
    for (const c of [-0.02, 0, 0.04, 0.12, 0.2]) {
      for (const lam of [0.15, 0.3, 0.45]) {
        const bicycle = { ...benchmark, c, lam }
        const weave = weaveSpeed(bicycle)
        if (weave !== null) {
          found += 1
          const pair = (speed: number) =>
            linearModes(bicycle, speed).find(({ im }) => im > 0)?.re ?? NaN
          expect(pair(weave * 0.999)).toBeGreaterThan(0)
          expect(pair(weave * 1.001)).toBeLessThan(0)
        }
        const capsize = capsizeSpeed(bicycle)
        if (capsize !== null) {
          found += 1
          const nearest = Math.min(
            ...linearModes(bicycle, capsize).map(({ re, im }) => Math.hypot(re, im)),
          )
          expectWithin(nearest, 0, 1e-9) // an eigenvalue of 0 to the rounding of the largest
        }
      }
    }
    expect(found).toBeGreaterThan(10)
  })

  // Bicycles found by drawing parameters at random: speeds on both sides of 0 or none, weave that begins before it ends, a₃ below 0.
  const others = [
    { c: -0.058, lam: 0.361, xH: 1.199, IFyy: 0.383, IRyy: 0.432, xB: 0.573, zB: -0.688, mH: 0.68 },
    { c: -0.032, lam: 0.066, xH: 0.978, IFyy: 0, IRyy: 0.206, xB: 0.416, zB: -0.665, mH: 11.82 },
    { c: -0.112, lam: 0.806, xH: 0.855, IFyy: 0, IRyy: 0.232, xB: 0.44, zB: -0.844, mH: 2.91 },
    { c: 0.351, lam: 0.184, xH: 0.628, IFyy: 0.791, IRyy: 0.155, xB: 0.181, zB: -0.746, mH: 9.35 },
    {
      c: 0.246,
      lam: -0.052,
      xH: 0.664,
      IFyy: 0.655,
      IRyy: 0.264,
      xB: 0.739,
      zB: -0.576,
      mH: 17.65,
    },
    { c: 0.02, lam: -0.064, xH: 0.894, IFyy: 0.058, IRyy: 0.35, xB: 0.856, zB: -0.548, mH: 6.16 },
  ]

  test.each(others)(
    'weaveSpeed of %o is the first at which two eigenvalues at once leave the growing side, or null',
    (change) => {
      const bicycle = { ...benchmark, ...change }
      const growing = (speed: number): number =>
        linearModes(bicycle, speed).filter(({ re }) => re > 0).length
      const weave = weaveSpeed(bicycle)
      if (weave !== null) expect(growing(weave * (1 - 1e-5)) - growing(weave * (1 + 1e-5))).toBe(2)
      const step = 0.02
      for (let v = 0.01; v + step < Math.min(weave ?? 25, 25); v += step)
        expect(growing(v) - growing(v + step), `${v} m/s`).toBeLessThan(2)
    },
  )

  test('weaveSpeed and capsizeSpeed are null where no speed does it', () => {
    // with the masses on the ground nothing falls, and nothing capsizes
    expect(capsizeSpeed({ ...benchmark, c: 0, lam: 0, xH: 1.02, IFyy: 0, IRyy: 0 })).toBeNull()
    expect(weaveSpeed({ ...benchmark, c: -0.3 })).toBeNull()
  })
})
