import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { flowCupTime, flowCupViscosity, tubeDrainTime } from '../../src/core/index.ts'
import type { FlowCup } from '../../src/core/index.ts'
import { near, same } from './near.ts'

const tube = {
  viscosity: 86e-6,
  volume: 50e-6,
  length: 1,
  bore: 0.004,
  head: 0.5,
  gravity: 9.80665,
}

interface Published {
  cases: {
    id: string
    inputs: { t_s?: number }
    expected: Record<string, { value: number; tol_abs: number }>
  }[]
}
/* ISO 2431:2019 as transcribed in public sources: the file tells them, with its tolerances. */
const { cases } = JSON.parse(
  readFileSync(new URL('data/flow_cup.json', import.meta.url), 'utf8'),
) as Published
const expectedOf = (id: string) => cases.find((each) => each.id === id)!.expected

test('flowCupViscosity(…) gives the published viscosity of the 3 mm cup at 57 s', () => {
  const { value, tol_abs: tolerance } = expectedOf('iso2431-3mm')['nu']!
  near(flowCupViscosity({ hole: 3, time: 57 }) * 1e6, value, tolerance)
})

test.each(Object.entries(expectedOf('iso2431-ranges')))(
  'flowCupViscosity(…) meets the supplier’s table at %s',
  (key, { value, tol_abs: tolerance }) => {
    const [, hole, time] = /^c(\d)_(\d+)$/.exec(key)!
    near(
      flowCupViscosity({ hole: Number(hole) as FlowCup, time: Number(time) }) * 1e6,
      value,
      tolerance,
    )
  },
)

test('flowCupTime(…) turns flowCupViscosity(…) back', () => {
  fc.assert(
    fc.property(
      fc.constantFrom<FlowCup>(3, 4, 5, 6),
      fc.double({ min: 5, max: 800, noNaN: true }),
      (hole, nu) => {
        same(
          flowCupViscosity({ hole, time: flowCupTime({ hole, viscosity: nu * 1e-6 }) }),
          nu * 1e-6,
          1e-9,
        )
      },
    ),
  )
})

test('tubeDrainTime(…): twice the viscosity, the length or the volume takes twice the time; twice the bore a sixteenth', () => {
  fc.assert(
    fc.property(fc.double({ min: 10e-6, max: 300e-6, noNaN: true }), (viscosity) => {
      const { time } = tubeDrainTime({ ...tube, viscosity })
      const again = (change: Partial<typeof tube>): number =>
        tubeDrainTime({ ...tube, viscosity, ...change }).time
      for (const change of [
        { viscosity: 2 * viscosity },
        { length: 2 },
        { volume: 100e-6 },
        { head: 0.25 },
      ])
        same(again(change), 2 * time)
      same(again({ bore: 0.008 }), time / 16)
    }),
  )
})

test('tubeDrainTime(…) by hand: 86 mm²/s through a metre of 4 mm bore under half a metre of head', () => {
  const { time, reynolds, kinetic } = tubeDrainTime(tube)
  // 128 × 86e-6 × 1 × 50e-6 ÷ (π × 9.80665 × 0.5 × 2.56e-10) = 139.6 s, to four figures
  near(time, 139.6, 0.05)
  // 0.358 cm³/s over 12.57 mm² is 28.5 mm/s; × 4 mm ÷ 86 mm²/s
  near(reynolds, 1.325, 0.005)
  expect(kinetic).toBeLessThan(1e-3)
})

test('flowCupViscosity(…) and tubeDrainTime(…) refuse what leaves nothing', () => {
  expect(() => flowCupViscosity({ hole: 3, time: 20 })).toThrow(/longer/)
  expect(() => tubeDrainTime({ ...tube, bore: 0 })).toThrow()
})
