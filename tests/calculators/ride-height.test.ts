import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import RideHeightFigure from '../../src/calculators/ride-height/Figure.tsx'
import { bikeOf, geometryOf, payloadOf } from '../../src/bikes/bikes.ts'
import type { Fitted } from '../../src/bikes/bikes.ts'
import { pose, solveStance } from '../../src/core/index.ts'
import { numberAt, parts, places } from './drawn.ts'
import { bikes, drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'
import { specs } from './bikes.ts'

const rideHeight = loadCalculator('ride-height')

const ids = Object.keys(bikes)
const MM = 1e-3

function fittedFor(id: string, by: string): Fitted {
  const spec = specs[id]!
  if (by === 'preload') return { forkPreload: spec.fork.preload + 10 * MM }
  if (by === 'tubes') return { tubeRaise: 10 * MM }
  return { frontRadius: spec.frontRadius + 10 * MM }
}

describe('ride-height', () => {
  test.each(ids.flatMap((id) => ['preload', 'tubes', 'tyre'].map((by) => [id, by] as const)))(
    'ride-height of %s by %s is solveStance and pose, digit for digit',
    (id, by) => {
      const spec = specs[id]!
      const fitted = fittedFor(id, by)
      const stance = solveStance(bikeOf(spec, fitted), { payload: [payloadOf(spec.rider, 80)] })
      const { rake, trail, wheelbase, pitch } = pose(
        geometryOf(spec, fitted),
        stance.frontTravel,
        stance.rearTravel,
      )
      const { frontLoad, rearLoad, frontShare, frontTravel, rearTravel } = stance
      const wanted = {
        exposedTube: spec.fork.exposedTube - frontTravel,
        rake,
        trail,
        wheelbase,
        frontLoad,
        frontShare,
        pitch,
        frontTravel,
        rearTravel,
        rearLoad,
      }
      expect(shown(rideHeight, { bike: id, by, amount: 10 }).now.output).toEqual(wanted)
    },
  )

  test('ride-height by a longer shock raises the back by its length over the motion ratio where the bike settles', () => {
    for (const id of ids) {
      const spec = specs[id]!
      const payload = [payloadOf(spec.rider, 80)]
      const settled = solveStance(bikeOf(spec), { payload }).rearTravel
      const { initial, slope } = spec.rear.motionRatio
      const stance = solveStance(
        bikeOf(spec, { rearRaise: (5 * MM) / (initial + slope * settled) }),
        { payload },
      )
      expect(shown(rideHeight, { bike: id, by: 'shock', amount: 5 }).now.output.trail).toBe(
        stance.trail,
      )
    }
  })

  test('ride-height with no change stands where the bike stands, whichever way was chosen', () => {
    const trails = ['preload', 'tubes', 'shock', 'tyre'].map(
      (by) => shown(rideHeight, { by, amount: 0 }).now.output.trail,
    )
    expect(new Set(trails).size).toBe(1)
    expect(shown(rideHeight, {}).before?.output.trail).toBe(trails[0])
  })

  test('ride-height of a bike whose quoted pose is unknown gives a range that holds both ends', () => {
    const trail = shown(rideHeight, { quotedFront: 'unknown' }).now.output.trail as {
      low: number
      high: number
    }
    for (const quotedFront of [0, 30]) {
      const one = Number(shown(rideHeight, { quotedFront }).now.output.trail)
      expect(one).toBeGreaterThanOrEqual(trail.low)
      expect(one).toBeLessThanOrEqual(trail.high)
    }
    // model's size of the question: a datum of 0 or 30 mm moves trail by several mm
    expect(trail.high - trail.low).toBeGreaterThan(3 * MM)
  })

  test('ride-height remarks name the change, and say that ten millimetres move too little load for a bathroom scale', () => {
    const said = remarksOf(rideHeight, { by: 'tubes', amount: 10 })
    expect(said).toMatch(/tubes 10\.0 mm up through the yokes/)
    expect(said).toMatch(
      /0\.8 kg more of 280 kg: the direction is as the trade says, the size too small for a bathroom scale/,
    )
    expect(remarksOf(rideHeight, { by: 'preload', amount: -6 })).toMatch(
      /6\.0 mm less fork preload/,
    )
    expect(remarksOf(rideHeight, { by: 'shock', amount: 6 })).toMatch(/a shock 6\.0 mm longer/)
    expect(remarksOf(rideHeight, { by: 'tyre', amount: -4 })).toMatch(
      /front tyre 4\.0 mm smaller in radius/,
    )
  })

  test('ride-height names the cautions of tubes slid down, a shorter shock and a lower bike', () => {
    const cautions = (by: string, amount: number) =>
      shown(rideHeight, { by, amount }).now.remarks.flatMap(({ caution }) => caution ?? [])
    expect(cautions('tubes', -20)).toContain('tubes-gripped-in-both-yokes')
    expect(cautions('tubes', -20)).not.toContain('ground-clearance-when-lowered')
    expect(cautions('tubes', 5)).toContain('ground-clearance-when-lowered')
    expect(cautions('shock', -5)).toEqual(
      expect.arrayContaining(['rear-clearance', 'ground-clearance-when-lowered']),
    )
    expect(cautions('shock', 5)).not.toContain('rear-clearance')
    expect(cautions('preload', -5)).toContain('ground-clearance-when-lowered')
  })

  test('ride-height remarks put a caution where trail changes by 2 % or more, and none below it', () => {
    const cautionsAt = (amount: number) =>
      shown(rideHeight, { by: 'tubes', amount }).now.remarks.flatMap(({ caution }) => caution ?? [])
    expect(cautionsAt(10)).toContain('change-of-geometry-and-speed')
    expect(cautionsAt(8.5)).not.toContain('change-of-geometry-and-speed')
    expect(cautionsAt(-10)).toContain('small-steps-only')
  })

  test('the ride-height figure draws trail and wheelbase in the proportion of the results', () => {
    const markup = drawn(rideHeight, RideHeightFigure, { by: 'tubes', amount: 10 })
    expectSound(markup)
    // the thick front and rear arrows stand at the contacts; the axis' foot is the solid dot on the ground
    const [rear, front] = places(markup, 'line[class="shaft"]', 'x1').filter(
      (_, index) => index % 2 === 1,
    )
    const foot = places(markup, 'circle[class="now solid"]', 'cx').at(-2)!
    const [base, trail] = [
      result(rideHeight, { by: 'tubes', amount: 10 }, 'wheelbase'),
      result(rideHeight, { by: 'tubes', amount: 10 }, 'trail'),
    ]
    // coordinates are rounded to a hundredth of 240 units: 2e-4 of the ratio
    expectNear((foot - front!) / (front! - rear!), trail / base, 2e-4)
  })

  test('the ride-height figure draws the ground at the tyre at the multiple that it names', () => {
    const given = { by: 'tubes', amount: 10 }
    const markup = drawn(rideHeight, RideHeightFigure, given)
    const times = Number(
      /under the front tyre, ×(\d+)/.exec(markup.replaceAll(/<!--.*?-->/g, ''))![1],
    )
    const scale = (360 - 16) / (1450 + 300 + 312)
    // the contact is where the upright centre line of the lower drawing stands
    const contact = places(markup, 'line[class="axis ink"]', 'x1').at(-1)!
    // a hundredth of a unit is 0.008 mm here
    expectNear(
      (places(markup, 'circle[class="now solid"]', 'cx').at(-1)! - contact) / (scale * times),
      result(rideHeight, given, 'trail'),
      0.01,
    )
    const before = Number(shown(rideHeight, given).before!.output.trail) * 1e3
    expectNear(
      (places(markup, 'circle[class="before hollow"]', 'cx').at(-1)! - contact) / (scale * times),
      before,
      0.01,
    )
  })

  test('the ride-height figure draws the exposed tube at the multiple that it names', () => {
    const markup = drawn(rideHeight, RideHeightFigure, { by: 'preload', amount: 10 })
    const times = Number(
      /×<!-- -->?(\d)|×(\d)/
        .exec(/the leg at the mark.*?drawing/s.exec(markup)![0])!
        .slice(1)
        .find(Boolean),
    )
    const mark = places(markup, 'line[class="mark"]', 'y1')[0]!
    const [tube] = parts(markup, 'rect[class="now fill leg-tube"]')
    const seal = numberAt(tube, 'y') + numberAt(tube, 'height')
    const scale = (360 - 16) / (1450 + 300 + 312)
    // the tube is drawn down to its seal; a hundredth of a unit is 0.02 mm here
    expectNear(
      (seal - mark) / (scale * times),
      result(rideHeight, { by: 'preload', amount: 10 }, 'exposedTube'),
      0.03,
    )
  })
})
