import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import CgHeightFigure from '../../src/calculators/cg-height/Figure.tsx'
import { evaluate } from '../../src/machine/evaluate.ts'
import { centreOfGravityHeight, STANDARD_GRAVITY } from '../../src/core/index.ts'
import { places } from './drawn.ts'
import {
  asDefinition,
  bikes,
  drawn,
  expectNear,
  expectSound,
  remarksOf,
  result,
  shown,
} from './evaluated.ts'

const cgHeight = loadCalculator('cg-height')

/** The load on the wheel that stays down, from a height: the other way round than the calculator, with places turned one by one. */
function loadFor(height: number, lifted: 'front' | 'rear', lift: number): number {
  const [base, front, rear, share, total] = [1.45, 0.3, 0.312, 0.5, 200]
  const [still, other] =
    lifted === 'rear'
      ? [
          { x: base, z: front },
          { x: 0, z: rear },
        ]
      : [
          { x: 0, z: rear },
          { x: base, z: front },
        ]
  // the raised axle keeps its distance from the other and stands `lift` higher
  const span = Math.hypot(other.x - still.x, other.z - still.z)
  const rise = other.z + lift - still.z
  const raised = {
    x: still.x + Math.sign(other.x - still.x) * Math.sqrt(span ** 2 - rise ** 2),
    z: still.z + rise,
  }
  const turn =
    Math.atan2(raised.z - still.z, raised.x - still.x) -
    Math.atan2(other.z - still.z, other.x - still.x)
  const centre = { x: share * base - still.x, z: height - still.z }
  const x = still.x + centre.x * Math.cos(turn) - centre.z * Math.sin(turn)
  return (total * (raised.x - x)) / (raised.x - still.x)
}

describe('cg-height', () => {
  test.each([
    ['rear', 400, 500],
    ['rear', 250, 620],
    ['front', 400, 480],
    ['front', 600, 555],
  ] as const)(
    'cg-height with the %s axle %i mm up finds the height that made the reading',
    (lifted, lift, height) => {
      const otherWheelRaised = loadFor(height / 1e3, lifted, lift / 1e3)
      // exact both ways: rounding of a small difference of loads
      expectNear(result(cgHeight, { lifted, lift, otherWheelRaised }, 'height'), height, 1e-6)
    },
  )

  test('cg-height is centreOfGravityHeight, digit for digit, its ± widened to 95 %', () => {
    const kilogram = STANDARD_GRAVITY
    const { height, uncertainty } = centreOfGravityHeight({
      wheelbase: 1450 * 1e-3,
      frontLevel: 100 * kilogram,
      rearLevel: 100 * kilogram,
      lifted: 'rear',
      lift: 300 * 1e-3,
      otherWheelRaised: 105.5 * kilogram,
      frontRadius: 300 * 1e-3,
      rearRadius: 312 * 1e-3,
      uncertainty: { load: (0.5 * kilogram) / Math.sqrt(3), length: (3 * 1e-3) / Math.sqrt(3) },
    })
    const found = shown(cgHeight).now.output.height as { value: number; low: number; high: number }
    expect(found.value).toBe(height)
    // the normal distribution's factor for 95 %, to seven digits
    expectNear((found.high - found.low) / 2, 1.959964 * uncertainty, 1e-8)
  })

  test('cg-height’s reading of half a kilogram is worth about 17 mm at 300 mm of lift', () => {
    // 0.5/200 of the reach of 1416 mm over the turn's sine, 0.2071
    expectNear(result(cgHeight, {}, 'perHalfKilogram'), 17.1, 0.1)
    // and a lift of 400 mm makes it the 13 mm of the model
    expectNear(result(cgHeight, { lift: 400, otherWheelRaised: 107.5 }, 'perHalfKilogram'), 13, 0.6)
    expect(remarksOf(cgHeight)).toMatch(
      /Half a kilogram more or less on that scale is 17 mm of height/,
    )
  })

  test('cg-height’s limit on fuel is what the card gives: 10 kg that run 100 mm forward are 24 mm', () => {
    // raised by 300 mm the axles are 1416 mm apart along the ground, and the run of 100 mm along the bike is 98 mm there: 10 · 98/1416 = 0.69 kg
    const more = (kilograms: number) =>
      result(cgHeight, { otherWheelRaised: 105.5 + kilograms }, 'height') -
      result(cgHeight, {}, 'height')
    expectNear(more((10 * 97.8) / 1416), 23.6, 0.6)
    expect(cgHeight.leavesOut.join()).toMatch(
      /10 kg of fuel that run 100 mm forward add 0\.7 kg on that scale, which reads as 24 mm/,
    )
  })

  test('cg-height refuses a lift that would stand the bike on end, at its own field', () => {
    for (const given of [
      { lift: 800, wheelbase: 900 },
      { lift: 770, lifted: 'front', wheelbase: 948, frontRadius: 409, rearRadius: 182 },
    ])
      expect(evaluate(asDefinition(cgHeight), given as never, { bikes }).problems.lift).toMatch(
        /cannot be raised so far/,
      )
  })

  test('cg-height refuses a raised load above the whole weight, at its own field', () => {
    const { problems } = evaluate(
      asDefinition(cgHeight),
      { frontLevel: 60, rearLevel: 60, otherWheelRaised: 130 },
      { bikes },
    )
    expect(problems.otherWheelRaised).toMatch(/cannot carry more than both wheels did together/)
  })

  test('cg-height remarks ask for a finer scale when the load that moved is lost in the scale’s ±', () => {
    expect(remarksOf(cgHeight, { otherWheelRaised: 101.5, lift: 100 })).toMatch(
      /finer scale and more readings\. Raise the axle to 300 mm if it was less, and no further/,
    )
    expect(remarksOf(cgHeight)).not.toMatch(/finer scale/)
    expect(remarksOf(cgHeight, { otherWheelRaised: 99 })).toMatch(/got no heavier/)
    expect(
      shown(cgHeight).now.remarks.some(({ caution }) => caution === 'raised-bike-on-scales'),
    ).toBe(true)
  })

  test('the cg-height figure draws the stand as high as the lift', () => {
    const markup = drawn(cgHeight, CgHeightFigure)
    expectSound(markup)
    const stand = places(markup, 'rect[class="metal"]', 'height')[0]!
    const scale = ((360 - 16) / (1450 + 300 + 312)) * 0.92
    // a hundredth of a unit is 0.06 mm
    expectNear(stand / scale, 300, 0.1)
  })

  test('the cg-height figure puts the centre where the raised loads balance', () => {
    const markup = drawn(cgHeight, CgHeightFigure)
    const plumb = places(markup, 'line[class="plumb"]', 'x1')[0]!
    const down = places(markup, 'line[class="shaft"]', 'x1')[0]!
    const stand = places(markup, 'rect[class="metal"]', 'x')[0]! + 26
    // the front carries 105.5 of 200 kg, so the weight acts that far from the raised axle's contact
    expectNear((plumb - stand) / (down - stand), 105.5 / 200, 1e-3)
  })
})
