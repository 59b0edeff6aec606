import { describe, expect, test } from 'vitest'
import { gapFlow, orificeFlow } from '../../src/core/flow.ts'
import { expectRefusal, expectWithin, rounding } from './tolerance.ts'

const PSI = (0.45359237 * 9.80665) / 0.0254 ** 2
const GALLON_PER_MINUTE = (231 * 0.0254 ** 3) / 60

describe('orificeFlow', () => {
  const hole = {
    area: (Math.PI / 4) * 0.0254 ** 2,
    pressureDrop: 100 * PSI,
    density: 900,
    dischargeCoefficient: 0.8,
  }

  test('orificeFlow gives 252 gpm through 1 in at 100 psi, specific gravity 0.9, C = 0.8 (Esposito, Fluid Power with Applications, Example 8.4)', () => {
    expectWithin(orificeFlow(hole) / GALLON_PER_MINUTE, 252, 1) // the book's constant 38.1 is rounded
  })

  test('orificeFlow grows with the square root of the drop and in proportion to area, and is 0 without a drop', () => {
    expectWithin(
      orificeFlow({ ...hole, pressureDrop: 4 * hole.pressureDrop }),
      2 * orificeFlow(hole),
      rounding(0.1),
    )
    expectWithin(
      orificeFlow({ ...hole, area: 3 * hole.area }),
      3 * orificeFlow(hole),
      rounding(0.1),
    )
    expect(orificeFlow({ ...hole, pressureDrop: 0 })).toBe(0)
  })

  test('orificeFlow refuses a negative drop or area, a density of 0, and a coefficient outside 0 to 1', () => {
    expectRefusal(() => orificeFlow({ ...hole, pressureDrop: -1 }), 'pressureDrop')
    expectRefusal(() => orificeFlow({ ...hole, area: -1 }), 'area')
    expectRefusal(() => orificeFlow({ ...hole, density: 0 }), 'density')
    expectRefusal(() => orificeFlow({ ...hole, dischargeCoefficient: 1.2 }), 'dischargeCoefficient')
    expectRefusal(() => orificeFlow({ ...hole, dischargeCoefficient: 0 }), 'dischargeCoefficient')
  })
})

describe('gapFlow', () => {
  const ring = { meanDiameter: 0.03, gap: 5e-5, length: 0.01, pressureDrop: 1e6, viscosity: 0.03 }

  test('gapFlow tends to the exact annulus of Hagen and Poiseuille as the gap narrows (Bird, Stewart and Lightfoot, Transport Phenomena, 2.4)', () => {
    for (const gap of [1e-4, 5e-5, 2e-5]) {
      const outer = (ring.meanDiameter + gap) / 2
      const kappa = (ring.meanDiameter - gap) / 2 / outer
      const shape = 1 - kappa ** 4 + (1 - kappa ** 2) ** 2 / Math.log(kappa)
      const exact =
        ((Math.PI * ring.pressureDrop * outer ** 4) / (8 * ring.viscosity * ring.length)) * shape
      // the flat-plate form is off by (h/D)² in the exact one, which itself loses digits as kappa nears 1
      expectWithin(gapFlow({ ...ring, gap }) / exact, 1, 1e-4)
    }
  })

  test('gapFlow falls to a fifth when viscosity grows five times, where orificeFlow has no viscosity at all', () => {
    expectWithin(
      gapFlow({ ...ring, viscosity: 5 * ring.viscosity }),
      gapFlow(ring) / 5,
      rounding(gapFlow(ring)),
    )
  })

  test('gapFlow grows with the cube of the gap and is 0 for none', () => {
    expectWithin(
      gapFlow({ ...ring, gap: 2 * ring.gap }),
      8 * gapFlow(ring),
      rounding(8 * gapFlow(ring)),
    )
    expect(gapFlow({ ...ring, gap: 0 })).toBe(0)
  })

  test('gapFlow refuses a viscosity or length of 0, a negative drop, and a gap as wide as the diameter', () => {
    expectRefusal(() => gapFlow({ ...ring, viscosity: 0 }), 'viscosity')
    expectRefusal(() => gapFlow({ ...ring, length: 0 }), 'length')
    expectRefusal(() => gapFlow({ ...ring, pressureDrop: -1 }), 'pressureDrop')
    expectRefusal(() => gapFlow({ ...ring, gap: 0.03 }), 'gap')
    expectRefusal(() => gapFlow({ ...ring, meanDiameter: NaN }), 'meanDiameter')
  })
})

test('orificeFlow and gapFlow refuse what is no set of figures', () => {
  expectRefusal(() => orificeFlow(undefined as never), 'hole')
  expectRefusal(() => gapFlow(undefined as never), 'ring')
})
