import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import ProgressiveSpringFigure from '../../src/calculators/progressive-spring/Figure.tsx'
import { evaluate } from '../../src/machine/evaluate.ts'
import { NEAR_CORNER } from '../../src/calculators/progressive-spring/remarks.ts'
import { dots, valueAt } from './drawn.ts'
import {
  asDefinition,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  ROUNDING,
  shown,
} from './evaluated.ts'

const progressive = loadCalculator('progressive-spring')

const groups = [
  [24, 18],
  [12, 150],
]

describe('progressive-spring', () => {
  test('progressive-spring has no slope on solid wire, nor on the stop, and says so', () => {
    // all coils of [24, 15] and [12, 60] are shut after 75 mm, 15 of them preload
    const solid = {
      groups: [
        [24, 15],
        [12, 60],
      ],
      brakingLoad: 4000,
    }
    expect(shown(progressive, solid).now.output.brakingRate).toBeNull()
    expect(remarksOf(progressive, solid)).toMatch(
      /On the brakes the fork is on solid wire, with every coil shut, 60 mm down/,
    )
    const stop = { travel: 50, brakingLoad: 4000 }
    expect(shown(progressive, stop).now.output.brakingRate).toBeNull()
    expect(remarksOf(progressive, stop)).toMatch(
      /On the brakes the fork is on its stop, 50 mm down/,
    )
    expect(shown(progressive).now.output.brakingRate).toBe(24000)
  })

  test('progressive-spring gives results at every full travel', () => {
    for (let travel = 50; travel <= 350; travel++)
      expectNear(
        result(progressive, { travel, groups: [[9, 500]] }, 'riderTravel'),
        Math.min(travel, 38.944),
        1e-3,
      )
  })

  test('progressive-spring stacks springs end to end as Levinson, Statics and Strength of Materials, example 10.10: 6.67 in', () => {
    // A pair side by side, then two more of 3.75 lbf/in, under 10 lbf. Rates and load are taken ten times as large, to stay in range:
    // 37.5 lbf/in is 6.5672 N/mm, 100 lbf is 444.82 N a leg. The deflection stays.
    const rate = 6.5672
    const given = {
      groups: [
        [2 * rate, 400],
        [rate, 400],
        [rate, 400],
      ],
      preload: 0,
      riderLoad: 2 * 444.82,
      travel: 300,
    }
    expectNear(result(progressive, given, 'riderTravel') / 25.4, 6.67, 0.005) // half the last printed digit
  })

  test('progressive-spring keeps its numbers when it is turned over', () => {
    const { now } = shown(progressive, { groups })
    const { now: over } = shown(progressive, { groups: [...groups].reverse() })
    for (const [id, value] of Object.entries(now.output))
      if (typeof value === 'number')
        expectNear(over.output[id], value, ROUNDING * Math.max(1, Math.abs(value)))
  })

  test('progressive-spring closes the coils at one load, whatever the preload', () => {
    for (const preload of [0, 10, 40]) {
      expectNear(result(progressive, { groups, preload }, 'closingForce'), 864, 1e-6)
      expectNear(result(progressive, { groups, preload }, 'riderRate'), 24, 1e-6)
    }
    expect(remarksOf(progressive, { groups, preload: 25 }, { groups, preload: 15 })).toMatch(
      /moved the bike 10\.0 mm up and shut no coil/,
    )
  })

  test('progressive-spring says where each length closes', () => {
    const when = (given: object) =>
      (shown(progressive, { groups, ...given }).now.output.closings as unknown[][]).map(
        (row) => row[3],
      )
    expect(when({})).toEqual(['rider', 'never'])
    expect(when({ staticLoad: 900 })).toEqual(['bike', 'never'])
    expect(when({ riderLoad: 700 })).toEqual(['braking', 'never'])
    // 54 mm of squeeze shuts the close coils
    expect(when({ preload: 55 })[0]).toBe('preload')
    expect(remarksOf(progressive, { groups, preload: 55 })).toMatch(
      /preload alone has shut the close coils/,
    )
  })

  test('progressive-spring warns of a corner within five millimetres of where the bike rides', () => {
    // the corner is at 39 mm; on 24 N/mm beyond it, 5 mm are 120 N above 864 N
    const load = (beyond: number): number => 864 + 24 * beyond
    expect(remarksOf(progressive, { groups, riderLoad: load(NEAR_CORNER * 1000 - 0.1) })).toMatch(
      /from the corner where the close coils touch/,
    )
    expect(
      remarksOf(progressive, { groups, riderLoad: load(NEAR_CORNER * 1000 + 0.1) }),
    ).not.toMatch(/from the corner/)
  })

  test('progressive-spring sets one rate at the same height beside it', () => {
    // 971/2/(15 + 43.458) = 8.305 N/mm each; twice that over 135 mm is 2242.4 N; worked by hand
    expectNear(result(progressive, { groups }, 'sameLinear'), 8.305, 0.0005)
    expectNear(result(progressive, { groups }, 'linearAtEnd'), 2242.4, 0.1)
    expect(remarksOf(progressive, { groups })).toMatch(/Neither is better/)
  })

  test('progressive-spring stops at coil bind, as a result', () => {
    const text = remarksOf(progressive, {
      groups: [
        [24, 18],
        [12, 80],
      ],
    })
    // 18 + 80 − 15 = 83 mm
    expect(text).toMatch(/All coils touch at 83 mm, before the travel of 120 mm ends/)
  })

  test('progressive-spring refuses a preload that shuts every coil', () => {
    expect(
      Object.keys(
        evaluate(
          asDefinition(progressive),
          {
            groups: [
              [24, 5],
              [12, 10],
            ],
            preload: 30,
          },
          { bikes: {} },
        ).problems,
      ),
    ).toEqual(['preload'])
  })

  test('ProgressiveSpringFigure marks the corner and the three places on the curve', () => {
    const markup = drawn(progressive, ProgressiveSpringFigure, { groups })
    expectSound(markup)
    const [chart] = markup.split('</svg>')
    const [corner] = dots(chart!, 'soft')
    const [alone, rider] = dots(chart!, 'now')
    // a hundredth of a unit is 0.004 mm and 0.2 N
    expectNear(valueAt(chart!, 'x', corner![0]), 39, 0.02)
    expectNear(valueAt(chart!, 'y', corner![1]), 864, 1)
    expectNear(valueAt(chart!, 'x', alone![0]), 25, 0.02)
    expectNear(valueAt(chart!, 'x', rider![0]), 43.458, 0.02)
  })
})
