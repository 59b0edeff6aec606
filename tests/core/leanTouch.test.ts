import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  effectiveLean,
  leanToTouch,
  pose,
  rolledHeight,
  solveStance,
  STANDARD_GRAVITY,
  toChassis,
  touchAngle,
} from '../../src/core/index.ts'
import { plainBike, RIDER } from './bikes.ts'
import { near } from './near.ts'
import { expectRefusal } from './tolerance.ts'

const degrees = (angle: number): number => (angle * 180) / Math.PI
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const points = fc.record({
  height: between(0.1, 0.6),
  halfWidth: between(0.1, 0.5),
  crownRadius: between(0, 0.1),
})

test('touchAngle(…) on a knife edge is height over half-width: 300 mm in 300 mm is 45°, by hand', () => {
  near(degrees(touchAngle({ height: 0.3, halfWidth: 0.3, crownRadius: 0 })!), 45, 1e-9)
})

test('touchAngle(…) on round tyres is 53.13° for a 3-4-5 triangle, worked by hand', () => {
  // ρ + (z − ρ) cos φ − y sin φ with cos φ = 0.6, sin φ = 0.8: 0.05 + 0.25 × 0.6 = 0.2 = 0.25 × 0.8
  near(degrees(touchAngle({ height: 0.3, halfWidth: 0.25, crownRadius: 0.05 })!), 53.1301, 5e-5)
})

test('touchAngle(…) is where rolledHeight(…) is 0, the first time from upright', () => {
  fc.assert(
    fc.property(points, (point) => {
      const angle = touchAngle(point)
      const end = angle ?? Math.PI / 2
      if (angle !== null) near(rolledHeight(point, angle), 0, 1e-12)
      for (let step = 0; step < 50; step++)
        expect(rolledHeight(point, (end * step) / 50)).toBeGreaterThan(0)
    }),
  )
})

test('rolledHeight(…) is that of a rigid body rolled on its crown: the turned point over the turned contact', () => {
  fc.assert(
    fc.property(points, between(0, 1.4), ({ height, halfWidth, crownRadius }, roll) => {
      // the crown's centre stays one radius above the ground; the point turns about it
      const complex = { re: halfWidth, im: height - crownRadius }
      const turned = complex.im * Math.cos(-roll) + complex.re * Math.sin(-roll)
      near(rolledHeight({ height, halfWidth, crownRadius }, roll), crownRadius + turned, 1e-12)
    }),
  )
})

test('touchAngle(…) is 0 on the ground, and null for a point that the tyre holds clear', () => {
  expect(touchAngle({ height: 0, halfWidth: 0.2, crownRadius: 0.05 })).toBe(0)
  expect(touchAngle({ height: 0.06, halfWidth: 0.02, crownRadius: 0.05 })).toBeNull()
  expect(touchAngle({ height: 0.3, halfWidth: 0.03, crownRadius: 0.05 })).toBeNull()
})

test('effectiveLean(…) balances weight and turning about the contact: the moment of both is 0', () => {
  fc.assert(
    fc.property(between(0, 1.2), between(0.4, 0.8), between(0, 0.1), (roll, height, crown) => {
      const lean = effectiveLean({ roll, centreOfGravityHeight: height, crownRadius: crown })
      const across = (height - crown) * Math.sin(roll)
      const up = crown + (height - crown) * Math.cos(roll)
      near(STANDARD_GRAVITY * across - STANDARD_GRAVITY * Math.tan(lean) * up, 0, 1e-9)
    }),
  )
  // worked by hand: 45° with 70 mm of crown and a centre 600 mm up: atan(374.8 ÷ 444.8) = 40.1°
  near(
    degrees(effectiveLean({ roll: Math.PI / 4, centreOfGravityHeight: 0.6, crownRadius: 0.07 })),
    40.12,
    0.005,
  )
})

const bike = plainBike()
const ridden = { payload: [RIDER] }
const peg = { x: 0.6, z: 0.42, halfWidth: 0.36 }

test('leanToTouch(…) is where the point of the pressed bike touches, lower than the upright bike’s', () => {
  const touch = leanToTouch(bike, ridden, peg, { crownRadius: 0.06 })!
  near(
    rolledHeight({ height: touch.height, halfWidth: 0.36, crownRadius: 0.06 }, touch.roll),
    0,
    1e-9,
  )
  const { stance, effectiveLean: lean } = touch
  near(stance.frontTravel, solveStance(bike, { ...ridden, lean }).frontTravel, 1e-12)
  const upright = solveStance(bike, ridden).toGround(peg).z
  expect(touch.height).toBeLessThan(upright)
  const rigid = touchAngle({ height: upright, halfWidth: 0.36, crownRadius: 0.06 })!
  expect(touch.roll).toBeLessThan(rigid)
  expect(rigid - touch.roll).toBeGreaterThan(0.01)
})

test('leanToTouch(…) on springs too stiff to move is touchAngle(…) of the upright bike', () => {
  const leg = { spring: [{ rate: 9e7 }], preload: 0 }
  const stiff = {
    ...bike,
    fork: { travel: 0.12, legs: [leg, leg] },
    rear: { ...bike.rear, spring: [{ rate: 9e8 }], preload: 0 },
  }
  const upright = solveStance(stiff, ridden).toGround(peg).z
  const touch = leanToTouch(stiff, ridden, peg, { crownRadius: 0.05 })!
  // springs ten thousand times as stiff still give some micrometres
  near(touch.roll, touchAngle({ height: upright, halfWidth: 0.36, crownRadius: 0.05 })!, 1e-4)
})

test('leanToTouch(…) on tyres that squash is earlier, with less payload later, and null for a point well inside', () => {
  const roll = (loadCase: object, options: object = {}): number =>
    leanToTouch(bike, loadCase, peg, { crownRadius: 0.06, ...options })!.roll
  expect(roll(ridden, { tyres: { rear: { stiffness: 150e3 } } })).toBeLessThan(roll(ridden))
  expect(roll({})).toBeGreaterThan(roll(ridden))
  expect(leanToTouch(bike, {}, { ...peg, halfWidth: 0.05 }, { crownRadius: 0.06 })).toBeNull()
  expect(leanToTouch(bike, {}, { ...peg, z: -0.1 }, { crownRadius: 0.06 })!.roll).toBe(0)
})

test('rolledHeight(…), touchAngle(…), effectiveLean(…) and leanToTouch(…) refuse what makes no sense', () => {
  const point = { height: 0.3, halfWidth: 0.3, crownRadius: 0.05 }
  expectRefusal(() => touchAngle({ ...point, crownRadius: -1 }), 'crownRadius')
  expectRefusal(() => touchAngle({ ...point, halfWidth: -1 }), 'halfWidth')
  expectRefusal(() => touchAngle({ ...point, height: Number.NaN }), 'height')
  expectRefusal(() => rolledHeight(point, Number.NaN), 'roll')
  expectRefusal(
    () => effectiveLean({ roll: 0.5, centreOfGravityHeight: 0.05, crownRadius: 0.06 }),
    'centreOfGravityHeight',
  )
  expectRefusal(
    () => leanToTouch(bike, ridden, { ...peg, halfWidth: -1 }, { crownRadius: 0.06 }),
    'halfWidth',
  )
})

test('toChassis(…) undoes toGround(…) in any pose, and refuses what is no place', () => {
  fc.assert(
    fc.property(
      between(0, 0.12),
      between(0, 0.13),
      between(-1, 2),
      between(-1, 2),
      (f, r, x, z) => {
        const at = pose(bike.geometry, f, r)
        const back = toChassis(at, at.toGround({ x, z }))
        near(back.x, x, 1e-12)
        near(back.z, z, 1e-12)
      },
    ),
  )
  expectRefusal(() => toChassis(pose(bike.geometry, 0, 0), { x: Number.NaN, z: 0 }), 'place.x')
})
