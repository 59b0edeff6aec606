import { loadCalculator } from '../../src/calculators/index.ts'
import { render } from 'preact-render-to-string'
import { describe, expect, test } from 'vitest'
import RideHeightFigure from '../../src/calculators/ride-height/Figure.tsx'
import StanceFigure from '../../src/calculators/stance/Figure.tsx'
import { Leg } from '../../src/drawing/Leg.tsx'
import { parts, places } from './drawn.ts'
import { drawn, expectNear, expectSound } from './evaluated.ts'

const rideHeight = loadCalculator('ride-height')
const stance = loadCalculator('stance')

interface Heights {
  /** where the tube with the cap ends on top, where the thick or thin tube in the yokes ends below, and the upper yoke's top [units] */
  top: number
  bottom: number
  yoke: number
  mark: number
}

/** Reads the leg of one state back out of a drawing. */
function heightsOf(markup: string, { upsideDown = false, state = 'now' } = {}): Heights {
  const group = parts(markup, 'g.leg').find((each) => each.querySelector(`.${state}`))!.outerHTML
  const tube = `rect.leg-${upsideDown ? 'outer' : 'tube'}`
  const top = places(group, tube, 'y')[0]!
  return {
    top,
    bottom: top + places(group, tube, 'height')[0]!,
    yoke: places(group, 'rect.upper-yoke', 'y')[0]!,
    mark: places(group, 'line.mark', 'y1')[0]!,
  }
}

const SCALE = 700
const leg = (by: number, upsideDown: boolean) =>
  render(
    <svg>
      <Leg
        x={60}
        seal={200}
        scale={SCALE}
        exposed={0.115}
        tubeDiameter={0.043}
        state="now"
        raise={{ by, text: 'raise' }}
        upsideDown={upsideDown}
      />
    </svg>,
  )

// lengths are written to hundredths of a unit, and two of them make a difference
const ROUNDED = 0.021

describe('Leg', () => {
  test.each([false, true])(
    'Leg with its tube up in the yokes (upside-down: %s) stands out of them by exactly that more, at an unchanged length',
    (upsideDown) => {
      const level = heightsOf(leg(0, upsideDown), { upsideDown })
      expect(level.yoke).toBeGreaterThan(level.top)
      for (const by of [-0.02, -0.005, 0.0025, 0.01, 0.02, 0.03]) {
        const markup = leg(by, upsideDown)
        expectSound(markup)
        const raised = heightsOf(markup, { upsideDown })
        expectNear(raised.yoke - raised.top - (level.yoke - level.top), by * SCALE, ROUNDED)
        expectNear(raised.bottom - raised.top, level.bottom - level.top, ROUNDED)
        // and the dimension says so: from the yoke to where its edge was
        expect(markup).toContain('raise')
      }
      expect(leg(0, upsideDown)).not.toContain('raise')
    },
  )

  test.each([
    ['ride-height', rideHeight, RideHeightFigure, (amount: number) => ({ by: 'tubes', amount })],
    ['stance', stance, StanceFigure, (tubeRaise: number) => ({ tubeRaise })],
  ] as const)(
    'in the %s figure the tube stands out by the raise, and is as long above the mark as before',
    (_, definition, figure, given) => {
      /** Lengths above mark and yoke [mm]: the leg is magnified by whole times the side view's scale, which the caption names. */
      const lengths = (amount: number): { out: number; above: number } => {
        const markup = drawn(definition, figure, given(amount))
        const times = Number(
          /the leg at the mark, ×(\d)/.exec(markup.replaceAll(/<!--.*?-->/g, ''))![1],
        )
        const scale = ((360 - 16) / (1450 + 300 + 312)) * times
        const { top, yoke, mark } = heightsOf(markup)
        return { out: (yoke - top) / scale, above: (mark - top) / scale }
      }
      const level = lengths(0)
      for (const amount of [-10, 5, 10, 20]) {
        const raised = lengths(amount)
        // hundredths of a unit at 0.6 units a millimetre and more
        expectNear(raised.out - level.out, amount, 0.04)
        expectNear(raised.above, level.above, 0.04)
      }
    },
  )
})
