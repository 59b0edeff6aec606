import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type CoilGroup,
  DomainError,
  springDeflection,
  springEnergy,
  springForce,
  springLimit,
  springRate,
} from '../../src/core/index.ts'
import { near, same } from './near.ts'
import { between } from './draws.ts'

const group = fc.record({
  rate: fc.double({ min: 1e3, max: 1e6, noNaN: true }),
  closes: fc.option(between(0, 0.2), { nil: undefined }),
})
const stack = fc.array(group, { minLength: 1, maxLength: 5 })
const share = between(0, 1)

// A deflection inside the stack's reach.
const reach = (groups: CoilGroup[], part: number): number =>
  part * Math.min(springLimit(groups) ?? 0.3, 0.3)

describe('one coil group', () => {
  test('springForce(…) is rate × deflection', () => same(springForce([{ rate: 9000 }], 0.05), 450))

  test('springForce(…) is 0 at or below 0: a coil spring cannot pull', () => {
    expect(springForce([{ rate: 9000 }], 0)).toBe(0)
    expect(springForce([{ rate: 9000 }], -0.01)).toBe(0)
    expect(springRate([{ rate: 9000 }], -0.01)).toBe(0)
    expect(springEnergy([{ rate: 9000 }], -0.01)).toBe(0)
    expect(springRate([{ rate: 9000 }], 0)).toBe(9000)
  })

  test('springLimit(…) is null for a group that never closes', () =>
    expect(springLimit([{ rate: 9000 }])).toBeNull())

  test('springForce(…) past coil bind is refused, at coil bind is not', () => {
    same(springForce([{ rate: 9000, closes: 0.1 }], 0.1), 900)
    expect(() => springForce([{ rate: 9000, closes: 0.1 }], 0.1001)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'deflection', value: 0.1001 }),
    )
    expect(() => springRate([{ rate: 9000, closes: 0.1 }], 0.1001)).toThrow(DomainError)
    expect(() => springEnergy([{ rate: 9000, closes: 0.1 }], 0.1001)).toThrow(DomainError)
  })

  test('springRate(…) at coil bind is the slope before it, since there is none after', () =>
    expect(springRate([{ rate: 9000, closes: 0.1 }], 0.1)).toBe(9000))

  test('springDeflection(…) stays at coil bind under any greater force', () =>
    expect(springDeflection([{ rate: 9000, closes: 0.1 }], 5000)).toBe(0.1))
})

describe('an empty stack', () => {
  test('springForce([]) is 0 at any deflection, with no limit and no energy', () => {
    expect(springForce([], 0.3)).toBe(0)
    expect(springRate([], 0.3)).toBe(0)
    expect(springEnergy([], 0.3)).toBe(0)
    expect(springLimit([])).toBeNull()
    expect(springDeflection([], 0)).toBe(0)
  })

  test('springDeflection([], force) is refused: nothing carries it', () =>
    expect(() => springDeflection([], 1)).toThrow(DomainError))
})

describe('groups in series', () => {
  test('springRate(…) of 4000 and 6000 N/m is 2400 N/m: Bansal, Engineering Mechanics, example 16.15', () => {
    const rate = springRate([{ rate: 4000 }, { rate: 6000 }], 0.01)
    same(rate, 2400)
    near(2 * Math.PI * Math.sqrt(50 / rate), 0.9069, 5e-5) // the printed period of 50 kg, half its last digit
  })

  test('springRate(…) of series springs never exceeds the softest one, and equals 1/Σ(1/k)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1e3, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 5 }),
        (rates) => {
          const rate = springRate(
            rates.map((k) => ({ rate: k })),
            0.01,
          )
          expect(rate).toBeLessThanOrEqual(Math.min(...rates) * (1 + 1e-12))
          same(rate, 1 / rates.reduce((sum, k) => sum + 1 / k, 0))
        },
      ),
    )
  })

  test('springForce(…) stiffens where the first group closes, and springRate(…) is the slope to the right of it', () => {
    const groups = [{ rate: 10000, closes: 0.05 }, { rate: 20000 }]
    same(springForce(groups, 0.06), 400)
    same(springForce(groups, 0.075), 500)
    same(springForce(groups, 0.1), 1000)
    same(springRate(groups, 0.0749), 1 / (1 / 10000 + 1 / 20000))
    expect(springRate(groups, 0.07500001)).toBe(20000)
    expect(springRate([{ rate: 4096, closes: 0.5 }, { rate: 4096 }], 1)).toBe(4096)
  })

  test('springForce(…) and springEnergy(…) of three groups worked by hand: joints at 17.5 mm and 40 mm, then 40 N/mm', () => {
    // 10, 20 and 40 N/mm in series are 5714 N/m; the first closes at 100 N, 20 and 40 are 13,333 N/m, the second closes at 400 N
    const groups = [{ rate: 40000 }, { rate: 20000, closes: 0.02 }, { rate: 10000, closes: 0.01 }]
    same(springForce(groups, 0.0175), 100)
    same(springForce(groups, 0.04), 400)
    same(springForce(groups, 0.05), 800)
    same(springEnergy(groups, 0.05), 0.0175 * 50 + 0.0225 * 250 + 0.01 * 600)
    same(springEnergy(groups, 0.04), 0.0175 * 50 + 0.0225 * 250)
  })

  test('springRate(…) of a single group is its rate to the last digit, and of a stack solid from the start 0', () => {
    for (let rate = 1; rate <= 200; rate++) expect(springRate([{ rate }], 0.01)).toBe(rate)
    expect(springRate([{ rate: 1e4, closes: 0 }], 0)).toBe(0)
  })

  test('springLimit(…) is the sum of what the groups close by, or null if one never does', () => {
    same(
      springLimit([
        { rate: 1e4, closes: 0.05 },
        { rate: 2e4, closes: 0.02 },
      ]),
      0.07,
    )
    expect(springLimit([{ rate: 1e4, closes: 0.05 }, { rate: 2e4 }])).toBeNull()
  })

  test('springForce(…) takes a group that closes at 0 for a solid spacer', () => {
    same(springForce([{ rate: 1e4, closes: 0 }, { rate: 2e4 }], 0.01), 200)
    expect(springLimit([{ rate: 1e4, closes: 0 }])).toBe(0)
    expect(springForce([{ rate: 1e4, closes: 0 }], 0)).toBe(0)
  })

  test('springDeflection(springForce(x)) is x, and is Σ min(F/k, closes)', () => {
    fc.assert(
      fc.property(stack, share, (groups, part) => {
        const deflection = reach(groups, part)
        const force = springForce(groups, deflection)
        near(springDeflection(groups, force), deflection, 1e-12) // rounding of a few lengths
        same(
          springDeflection(groups, force),
          groups.reduce(
            (sum, { rate, closes }) => sum + Math.min(force / rate, closes ?? Infinity),
            0,
          ),
        )
      }),
    )
  })

  test('springForce(…) does not depend on the order of the groups', () => {
    fc.assert(
      fc.property(stack, share, (groups, part) =>
        same(
          springForce([...groups].reverse(), reach(groups, part)),
          springForce(groups, reach(groups, part)),
          1e-9,
        ),
      ),
    )
  })

  test('springForce(…) never falls and springRate(…) never falls', () => {
    fc.assert(
      fc.property(stack, share, share, (groups, a, b) => {
        const [low, high] = [reach(groups, Math.min(a, b)), reach(groups, Math.max(a, b))]
        expect(springForce(groups, high)).toBeGreaterThanOrEqual(
          springForce(groups, low) * (1 - 1e-12),
        )
        expect(springRate(groups, high)).toBeGreaterThanOrEqual(springRate(groups, low))
      }),
    )
  })

  test('springEnergy(…) is the integral of springForce(…)', () => {
    fc.assert(
      fc.property(stack, share, (groups, part) => {
        const end = reach(groups, part)
        const steps = 4000
        let sum = 0
        for (let i = 0; i < steps; i++)
          sum += (springForce(groups, ((i + 0.5) * end) / steps) * end) / steps
        // The midpoint rule on a kinked line: an error of one step's kink at most.
        near(springEnergy(groups, end), sum, 1e-5 * sum + 1e-15)
      }),
      { numRuns: 40 },
    )
  })

  test('springForce(…) is proportional to all rates at once', () => {
    fc.assert(
      fc.property(stack, share, (groups, part) => {
        const doubled = groups.map((each) => ({ ...each, rate: 2 * each.rate }))
        same(
          springForce(doubled, reach(groups, part)),
          2 * springForce(groups, reach(groups, part)),
          1e-9,
        )
      }),
    )
  })
})

test('springForce(…) and its kin refuse what makes no sense', () => {
  for (const rate of [0, -1, NaN, Infinity])
    expect(() => springForce([{ rate }], 0.01)).toThrow(
      expect.objectContaining({ parameter: 'rate' }),
    )
  for (const closes of [-0.01, NaN, Infinity])
    expect(() => springForce([{ rate: 1, closes }], 0)).toThrow(
      expect.objectContaining({ parameter: 'closes' }),
    )
  expect(() => springForce([{ rate: 1 }], NaN)).toThrow(DomainError)
  expect(() => springDeflection([{ rate: 1 }], -1)).toThrow(DomainError)
  expect(() => springDeflection([{ rate: -1 }], 0)).toThrow(
    expect.objectContaining({ parameter: 'rate' }),
  )
  expect(() => springForce(null as never, 0)).toThrow(DomainError)
  expect(() => springForce([null as never], 0)).toThrow(DomainError)
})
