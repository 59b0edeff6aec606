import { scaleLinear, scaleLog } from 'd3-scale'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { layOut } from '../../src/drawing/chartScale.ts'
import type { Axis } from '../../src/drawing/chartTypes.ts'
import { createSay } from '../../src/units/say.ts'
import { METRIC } from '../../src/units/choice.ts'

/* Oracle: d3-scale, a general-purpose library, which the site does not load since it weighs more than all charts together. */

const flat: Axis = { label: 'x', unit: 'N', domain: [0, 1] }
const laidOut = (y: Axis, values: readonly number[]) =>
  layOut({
    prefix: 'p',
    say: createSay(METRIC),
    takeaway: '',
    caption: '',
    x: flat,
    y,
    curves: [{ points: values.map((value) => [0, value] as const), as: 'now' }],
    table: { caption: '', columns: [], rows: [] },
  })

const value = fc.double({ min: -1e5, max: 1e5, noNaN: true })
/** Two ends apart by more than rounding, the lower first. */
const ends = fc
  .tuple(value, value)
  .map(([a, b]): [number, number] => [Math.min(a, b), Math.max(a, b)])
  .filter(([low, high]) => high - low > 1e-3)
const count = fc.integer({ min: 2, max: 10 })
// the same arithmetic in another order: a millionth of a viewBox unit
const NEAR = 1e-6

test('layOut places a linear axis and its ticks as d3-scale does', () => {
  fc.assert(
    fc.property(ends, count, value, (domain, ticks, between) => {
      const { frame, yTicks } = laidOut({ label: 'y', unit: 'N', ticks, domain }, [])
      const oracle = scaleLinear(domain, [frame.bottom, frame.top])
      expect(yTicks).toHaveLength(oracle.ticks(ticks).length)
      oracle
        .ticks(ticks)
        .forEach((tick, index) =>
          expect(Math.abs(yTicks[index]!.at - oracle(tick))).toBeLessThan(NEAR),
        )
      const at = oracle(between)
      expect(Math.abs(frame.y(between) - at)).toBeLessThan(NEAR * Math.max(1, Math.abs(at)))
    }),
  )
})

test('layOut without a domain holds the data between two ticks, no further than two steps beyond it', () => {
  fc.assert(
    fc.property(ends, count, ([low, high], ticks) => {
      const { frame, yTicks } = laidOut({ label: 'y', unit: 'N', ticks }, [low, high])
      const [first, second, last] = [yTicks[0]!.at, yTicks[1]!.at, yTicks.at(-1)!.at]
      expect(
        [first, last].map(
          (at) => Math.abs(at - frame.bottom) < NEAR || Math.abs(at - frame.top) < NEAR,
        ),
      ).toEqual([true, true])
      const step = Math.abs(second - first)
      for (const [end, edge] of [
        [low, first],
        [high, last],
      ] as const)
        expect(Math.abs(frame.y(end) - edge)).toBeLessThan(2 * step + NEAR)
    }),
  )
})

test('layOut places a logarithmic axis as d3-scale does, with ticks at 1, 2 and 5 of each decade', () => {
  const positive = fc.double({ min: 1e-3, max: 1e4, noNaN: true })
  fc.assert(
    fc.property(fc.tuple(positive, positive, positive), ([a, b, between]) => {
      fc.pre(Math.max(a, b) / Math.min(a, b) > 1.001)
      const { frame, yTicks } = laidOut({ label: 'y', unit: 'N', scale: 'log' }, [a, b])
      const oracle = scaleLog([Math.min(a, b), Math.max(a, b)], [frame.bottom, frame.top])
      expect(Math.abs(frame.y(between) - oracle(between))).toBeLessThan(
        NEAR * Math.max(1, Math.abs(oracle(between))),
      )
      for (const { at, text } of yTicks) {
        expect(text).toMatch(/^(0\.0*)?[125]0*$/)
        expect(Math.abs(at - oracle(Number(text)))).toBeLessThan(NEAR)
      }
    }),
  )
  expect(
    laidOut({ label: 'y', unit: 'N', scale: 'log', domain: [1, 100] }, []).yTicks.map(
      ({ text }) => text,
    ),
  ).toEqual(['1', '2', '5', '10', '20', '50', '100'])
})
