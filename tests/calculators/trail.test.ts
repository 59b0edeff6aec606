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
})

type Place = readonly [number, number]
interface Line {
  from: Place
  to: Place
}

/** The lines of one look, in the order drawn. */
function lines(markup: string, look: string): Line[] {
  const tag = `line[class="${look}"]`
  const [x1, y1, x2, y2] = ['x1', 'y1', 'x2', 'y2'].map((end) => places(markup, tag, end)) as [
    number[],
    number[],
    number[],
    number[],
  ]
  return x1.map((x, at) => ({ from: [x, y1[at]!], to: [x2[at]!, y2[at]!] }))
}

const isUpright = ({ from, to }: Line): boolean => from[0] === to[0]
const fromUpright = ({ from, to }: Line): number =>
  Math.atan2(Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])) / DEGREE

/** Where the drawing puts the axis on the road, the axle, and the axis on the magnified road; and its scale [units per mm]. */
function read(markup: string, { frontRadius }: { frontRadius: number }) {
  const [x, y] = ['cx', 'cy'].map((at) => places(markup, 'circle[class="now solid"][cx]', at)) as [
    number[],
    number[],
  ]
  const [foot, axle, magnified] = x.map((each, at): Place => [each, y[at]!]) as [
    Place,
    Place,
    Place,
  ]
  const [ground, road] = places(markup, 'line[class="ground"]', 'y1') as [number, number]
  const [under, contact] = lines(markup, 'axis ink').filter(isUpright) as [Line, Line]
  const scale = (ground - axle[1]) / frontRadius
  const times = Number(/the ground, ×(\d+)</.exec(markup)![1])
  return { foot, axle, magnified, ground, road, under, contact, scale, times }
}

const plain = (markup: string): string => markup.replaceAll('\u00a0', ' ').replaceAll('−', '-')

describe.each([
  { rake: 26, forkOffset: 40, frontRadius: 290 },
  { rake: 25, forkOffset: 30, frontRadius: 300 },
  { rake: 33, forkOffset: 80, frontRadius: 320 },
  { rake: 20, forkOffset: -10, frontRadius: 290 },
  // the axis meets the road behind the contact
  { rake: 15, forkOffset: 100, frontRadius: 300 },
])('the trail figure of %o', (given) => {
  const markup = drawn(trail, TrailFigure, given)
  const [length, normal] = [result(trail, given, 'trail'), result(trail, given, 'normalTrail')]
  const found = read(markup, given)
  const { foot, axle, magnified, ground, road, contact, scale, times } = found

  test('the trail figure draws the trail on the ground to the scale of the radius', () => {
    expectSound(markup)
    expect(foot[1]).toBe(ground)
    // the contact is under the axle
    expect(found.under.from).toEqual(axle)
    expect(found.under.to).toEqual([axle[0], ground])
    // hundredths of a unit at 0.16 units a millimetre
    expectNear((foot[0] - axle[0]) / scale, length, 0.06)
    const radius = new RegExp(`d="M[\\d.]+ ${ground}L[\\d.]+ ${axle[1]}"`)
    expect(markup).toMatch(radius)
    expect(plain(markup)).toContain(`rotate(-90)" dy="-0.35em">${given.frontRadius.toFixed(1)} mm<`)
  })

  test('the trail figure magnifies the ground by as much as it says, and writes what it draws', () => {
    expect(times).toBeGreaterThan(1)
    expect(markup).toContain(`Right, the ground ×${times}: where`)
    expect(magnified[1]).toBe(road)
    const unit = scale * times
    // hundredths of a unit at half a unit a millimetre and more; the scale itself is known to a part in 10,000
    expectNear((magnified[0] - contact.from[0]) / unit, length, 0.03)
    expect(plain(markup)).toContain(`>now ${length.toFixed(1)} mm<`)
    expect(plain(markup)).toContain(
      length < 0 ? 'behind the tyre’s contact' : 'ahead of the tyre’s',
    )
    const [across] = lines(markup, 'now thin') as [Line]
    expect(across.from).toEqual([contact.from[0], road])
    const [dx, dy] = [across.to[0] - across.from[0], across.from[1] - across.to[1]]
    expectNear(Math.hypot(dx, dy) / unit, Math.abs(normal), 0.03)
    expect(plain(markup)).toContain(`>${normal.toFixed(1)} mm<`)
    // at right angles to the axis, and on it; hundredths of a unit on lines of 50 units and more
    const front = markup.slice(0, markup.indexOf('data-view="ground"'))
    const axis = lines(front, 'now axis').at(-1)!
    expectNear(fromUpright(axis), given.rake, 0.02)
    expectNear(
      Math.atan2(dy, dx * Math.sign(normal)) / DEGREE,
      given.rake * Math.sign(normal),
      0.02,
    )
    const down = (across.to[1] - axis.from[1]) / (axis.to[1] - axis.from[1])
    expect(down).toBeGreaterThan(0)
    expect(down).toBeLessThan(1)
    expectNear(axis.from[0] + down * (axis.to[0] - axis.from[0]), across.to[0], 0.02)
  })

  test('the trail figure draws the steering axis through the head bearings, parallel to the leg and behind it by the offset', () => {
    const [axis] = lines(markup, 'now axis heavy') as [Line]
    const leg = lines(markup, 'axis ink').find((line) => !isUpright(line))!
    expect(axis.to).toEqual(foot)
    // ends are rounded to a hundredth of a unit, on lines of 120 units and more: 0.01 degrees
    expectNear(fromUpright(axis), given.rake, 0.01)
    expectNear(fromUpright(leg), given.rake, 0.01)
    /** signed distance of a place ahead of the axis [units] */
    const ahead = ([x, y]: Place) =>
      (x - axis.from[0]) * Math.cos(given.rake * DEGREE) -
      (y - axis.from[1]) * Math.sin(given.rake * DEGREE)
    // hundredths of a unit at 0.16 units a millimetre
    expectNear(ahead(leg.from) / scale, given.forkOffset, 0.1)
    expectNear(ahead(axle) / scale, given.forkOffset, 0.1)
    const corners = [
      ...markup.match(/class="bearing" d="([^"]*)"/)![1]!.matchAll(/(-?[\d.]+) (-?[\d.]+)/g),
    ].map(([, x, y]): Place => [Number(x), Number(y)])
    expect(corners).toHaveLength(8)
    expectNear(corners.reduce((sum, corner) => sum + ahead(corner), 0) / 8 / scale, 0, 0.1)
  })
})

test('the trail figure draws before and now on one scale, in both places', () => {
  const given = { rake: 25, forkOffset: 30, frontRadius: 300 }
  const held = { ...given, rake: 26, forkOffset: 40 }
  const markup = drawn(trail, TrailFigure, given, held)
  const { axle, contact, scale, times } = read(markup, given)
  const [front, under] = places(markup, 'circle[class="before hollow"]', 'cx') as [number, number]
  const length = result(trail, held, 'trail')
  expectNear((front - axle[0]) / scale, length, 0.06)
  expectNear((under - contact.from[0]) / (scale * times), length, 0.03)
  expect(plain(markup)).toContain(`>before ${length.toFixed(1)} mm<`)
})
