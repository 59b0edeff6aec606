import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import TrailFigure from '../../src/calculators/trail/Figure.tsx'
import { ends } from '../../src/units/interval.ts'
import { groundTrail, normalTrail, wheelFlop } from '../../src/core/index.ts'
import { places } from './drawn.ts'
import { drawn, expectNear, expectSound, remarksOf, result, shown } from './evaluated.ts'

const trail = loadCalculator('trail')

const EXACT = { rakePlusMinus: 0, offsetPlusMinus: 0, radiusPlusMinus: 0 }
const DEGREE = Math.PI / 180

// Moore and Kooijman, measured bicycles (BicycleParameters data set): head angle and offset with standard uncertainties of 0.2° and 1 mm,
// the radius from a roll-out over 13 turns, ± 10 mm; trail and its standard uncertainty as their program gives them [m].
const measured = [
  {
    name: 'Browser',
    head: 67.1,
    offset: 70.5,
    rollOut: 28.06,
    trail: 0.0685808540382,
    uncertainty: 0.00169464113488,
  },
  {
    name: 'Browser, instrumented',
    head: 67.1,
    offset: 70.5,
    rollOut: 27.98,
    trail: 0.0681671329298,
    uncertainty: 0.00169155184938,
  },
  {
    name: 'Crescendo',
    head: 69,
    offset: 45,
    rollOut: 27.98,
    trail: 0.0832912572138,
    uncertainty: 0.0016907620071,
  },
  {
    name: 'Yellow',
    head: 72.7,
    offset: 56.5,
    rollOut: 27.925,
    trail: 0.0473057207886,
    uncertainty: 0.00162727102983,
  },
]

describe('trail', () => {
  test('trail is groundTrail and normalTrail, digit for digit', () => {
    const steering = { rake: 24.5 * DEGREE, forkOffset: 0.035, frontRadius: 0.298 }
    const { output } = shown(trail, { rake: 24.5, forkOffset: 35, frontRadius: 298 }).now
    const length = groundTrail(steering)
    expect((output.trail as { value: number }).value).toBe(length)
    expect((output.normalTrail as { value: number }).value).toBe(normalTrail(steering))
    expect(output.flop).toBe(wheelFlop({ trail: length, rake: steering.rake }))
  })

  test.each(measured)(
    'trail of the measured bicycle $name, with the published ±',
    ({ head, offset, rollOut, trail: wanted, uncertainty }) => {
      const radius = (rollOut / (2 * Math.PI * 13)) * 1e3
      // the data set gives standard uncertainties; a limit that is equally likely throughout is √3 of one
      const limit = Math.sqrt(3)
      const given = {
        rake: 90 - head,
        forkOffset: offset,
        frontRadius: radius,
        rakePlusMinus: 0.2 * limit,
        offsetPlusMinus: limit,
        radiusPlusMinus: (10 / (2 * Math.PI * 13)) * limit,
      }
      expectNear(result(trail, given, 'trail') / 1e3, wanted, 1e-12)
      const [low, high] = ends(shown(trail, given).now.output.trail)!
      // 1.959964 is the normal distribution's factor for 95 %; numeric against hand derivatives: one part in 10⁶
      expectNear((high - low) / 2 / 1.959964, uncertainty, 2e-9)
    },
  )

  test('trail’s sensitivities are the slopes worked by hand', () => {
    // per radian R + c tan ε, per offset −1/cos ε, per radius tan ε; half-step differences over a degree bend by 3e-4
    const length = result(trail, EXACT, 'trail')
    expectNear(
      result(trail, {}, 'perDegree'),
      (300 + length * Math.tan(25 * DEGREE)) * DEGREE,
      2e-3,
    )
    expectNear(result(trail, {}, 'perOffset'), -1 / Math.cos(25 * DEGREE), 1e-9)
    expectNear(result(trail, {}, 'perRadius'), Math.tan(25 * DEGREE), 1e-9)
  })

  test('trail with an unknown rake spans the typical range', () => {
    const [low, high] = ends(shown(trail, { ...EXACT, rake: 'unknown' }).now.output.trail)!
    expectNear(low * 1e3, result(trail, { ...EXACT, rake: 23.5 }, 'trail'), 1e-9)
    expectNear(high * 1e3, result(trail, { ...EXACT, rake: 27 }, 'trail'), 1e-9)
  })

  test('trail remarks say what a degree is worth, and speak up outside 70 to 130 mm', () => {
    expect(remarksOf(trail)).toMatch(
      /One degree of rake moves trail by 6\.1 mm, as much as 5\.5 mm of offset/,
    )
    expect(remarksOf(trail)).not.toMatch(/commonly have/)
    expect(remarksOf(trail, { rake: 21, forkOffset: 45 })).toMatch(/commonly have 70 to 130 mm/)
    expect(remarksOf(trail, { rake: 15, forkOffset: 100 })).toMatch(/behind the tyre’s contact/)
  })

  test('the trail figure draws trail to the scale of the radius', () => {
    const markup = drawn(trail, TrailFigure, { rake: 26, forkOffset: 40, frontRadius: 290 })
    expectSound(markup)
    const [ground] = places(markup, /line class="ground"/, 'y1')
    const axle = {
      x: places(markup, /circle class="now solid"/, 'cx').at(-1)!,
      y: places(markup, /circle class="now solid"/, 'cy').at(-1)!,
    }
    const foot = places(markup, /circle class="now solid"/, 'cx').at(-2)!
    // hundredths of a unit on 99 units of radius
    expectNear(
      ((foot - axle.x) / (ground! - axle.y)) * 290,
      result(trail, { rake: 26, forkOffset: 40, frontRadius: 290 }, 'trail'),
      0.06,
    )
  })

  test.each([
    { rake: 25, forkOffset: 30, frontRadius: 300 },
    { rake: 33, forkOffset: 80, frontRadius: 320 },
    { rake: 20, forkOffset: -10, frontRadius: 290 },
  ])(
    'the trail figure draws the steering axis through the head bearings, parallel to the leg and behind it by the offset: %o',
    (given) => {
      const markup = drawn(trail, TrailFigure, given)
      const line = (name: string) => {
        const tag = new RegExp(`line class="${name}"`)
        const [x1, y1, x2, y2] = ['x1', 'y1', 'x2', 'y2'].map((attribute) =>
          places(markup, tag, attribute),
        ) as [number[], number[], number[], number[]]
        return x1
          .map((x, index) => ({
            from: [x, y1[index]!] as const,
            to: [x2[index]!, y2[index]!] as const,
          }))
          .find(({ from, to }) => from[0] !== to[0])!
      }
      const [axis, leg] = [line('now axis heavy'), line('axis ink')]
      const slope = ({ from, to }: typeof axis) =>
        Math.atan2(Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])) / DEGREE
      // ends are rounded to a hundredth of a unit, on lines of 140 units and more: 0.01 degrees
      expectNear(slope(axis), given.rake, 0.01)
      expectNear(slope(leg), given.rake, 0.01)
      /** signed distance of a place ahead of the axis [units] */
      const ahead = ([x, y]: readonly [number, number]) =>
        (x - axis.from[0]) * Math.cos(given.rake * DEGREE) -
        (y - axis.from[1]) * Math.sin(given.rake * DEGREE)
      const ground = places(markup, /line class="ground"/, 'y1')[0]!
      const scale =
        (ground - places(markup, /circle class="now solid"/, 'cy').at(-1)!) / given.frontRadius
      // hundredths of a unit at 0.3 units a millimetre
      expectNear(ahead(leg.from) / scale, given.forkOffset, 0.1)
      const corners = [
        ...markup.match(/class="bearing" d="([^"]*)"/)![1]!.matchAll(/(-?[\d.]+) (-?[\d.]+)/g),
      ].map(([, x, y]) => [Number(x), Number(y)] as const)
      expect(corners).toHaveLength(8)
      expectNear(corners.reduce((sum, corner) => sum + ahead(corner), 0) / 8 / scale, 0, 0.1)
    },
  )
})
