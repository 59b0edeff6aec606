import { describe, expect, test } from 'vitest'
import CgHeightFigure from '../../components/figures/CgHeight.tsx'
import cgHeight from '../../src/calculators/cg-height.ts'
import { evaluate } from '../../src/calculators/evaluate.ts'
import { centreOfGravityHeight, STANDARD_GRAVITY } from '../../src/core/index.ts'
import { places } from './drawn.ts'
import { asDefinition, bikes, drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'

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
  const raised = { x: still.x + Math.sign(other.x - still.x) * Math.sqrt(span ** 2 - rise ** 2), z: still.z + rise }
  const turn = Math.atan2(raised.z - still.z, raised.x - still.x) - Math.atan2(other.z - still.z, other.x - still.x)
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
  ] as const)('cg-height with the %s axle %i mm up finds the height that made the reading', (lifted, lift, height) => {
    const otherWheelRaised = loadFor(height / 1e3, lifted, lift / 1e3)
    // exact both ways: rounding of a small difference of loads
    expectNear(result(cgHeight, { lifted, lift, otherWheelRaised }, 'height'), height, 1e-6)
  })

  test('cg-height is centreOfGravityHeight, digit for digit, its ± widened to 95 %', () => {
    const kilogram = STANDARD_GRAVITY
    const { height, uncertainty } = centreOfGravityHeight({
      wheelbase: 1450 * 1e-3,
      frontLevel: 100 * kilogram,
      rearLevel: 100 * kilogram,
      lifted: 'rear',
      lift: 400 * 1e-3,
      otherWheelRaised: 107.5 * kilogram,
      frontRadius: 300 * 1e-3,
      rearRadius: 312 * 1e-3,
      uncertainty: { load: (0.5 * kilogram) / Math.sqrt(3), length: (3 * 1e-3) / Math.sqrt(3) },
    })
    const found = shown(cgHeight).now.output.height as { value: number; low: number; high: number }
    expect(found.value).toBe(height)
    // the normal distribution's factor for 95 %, to seven digits
    expectNear((found.high - found.low) / 2, 1.959964 * uncertainty, 1e-8)
  })

  test('cg-height’s reading of half a kilogram is worth about 13 mm at 400 mm of lift', () => {
    // model's figure, to the millimetre
    expectNear(result(cgHeight, {}, 'perHalfKilogram'), 13, 0.6)
    expect(remarksOf(cgHeight)).toMatch(/Half a kilogram more or less on that scale is 13 mm of height/)
  })

  test('cg-height refuses a raised load above the whole weight, at its own field', () => {
    const { problems } = evaluate(asDefinition(cgHeight), { frontLevel: 60, rearLevel: 60, otherWheelRaised: 130 }, { bikes })
    expect(problems.otherWheelRaised).toMatch(/must not be more than both level loads together/)
  })

  test('cg-height remarks ask for a higher lift when the load that moved is lost in the scale’s ±', () => {
    expect(remarksOf(cgHeight, { otherWheelRaised: 101.5, lift: 100 })).toMatch(/Raise the axle further/)
    expect(remarksOf(cgHeight)).not.toMatch(/Raise the axle further/)
    expect(remarksOf(cgHeight, { otherWheelRaised: 99 })).toMatch(/got no heavier/)
    expect(shown(cgHeight).now.remarks.some(({ caution }) => caution === 'raised-bike-on-scales')).toBe(true)
  })

  test('the cg-height figure draws the stand as high as the lift', () => {
    const markup = drawn(cgHeight, CgHeightFigure)
    expectSound(markup)
    const stand = places(markup, /rect class="metal"/, 'height')[0]!
    const scale = ((360 - 16) / (1450 + 300 + 312)) * 0.94
    // a hundredth of a unit is 0.06 mm
    expectNear(stand / scale, 400, 0.1)
  })

  test('the cg-height figure puts the centre where the raised loads balance', () => {
    const markup = drawn(cgHeight, CgHeightFigure)
    const plumb = places(markup, /line class="plumb"/, 'x1')[0]!
    const down = places(markup, /line class="shaft"/, 'x1')[0]!
    const stand = places(markup, /rect class="metal"/, 'x')[0]! + 26
    // the front carries 107.5 of 200 kg, so the weight acts that far from the raised axle's contact
    expectNear((plumb - stand) / (down - stand), 107.5 / 200, 1e-3)
  })
})
