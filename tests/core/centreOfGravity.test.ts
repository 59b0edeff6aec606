import fc from 'fast-check'
import { expect, test } from 'vitest'
import { centreOfGravityHeight } from '../../src/core/index.ts'
import { near, same } from './near.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Weighs a rigid bike of known centre of gravity: turns every point about the axle that stays down until the other has risen by `lift`. */
function weigh(
  wheelbase: number,
  x: number,
  z: number,
  frontRadius: number,
  rearRadius: number,
  lifted: 'front' | 'rear',
  lift: number,
) {
  const level = { frontLevel: (280 * x) / wheelbase, rearLevel: 280 * (1 - x / wheelbase) }
  // Distances from the axle that stays down, towards the lifted one.
  const [down, up, along] =
    lifted === 'rear' ? [frontRadius, rearRadius, wheelbase - x] : [rearRadius, frontRadius, x]
  const rise = up - down
  const turn = Math.asin((rise + lift) / Math.hypot(wheelbase, rise)) - Math.atan2(rise, wheelbase)
  const axle = wheelbase * Math.cos(turn) - rise * Math.sin(turn)
  const centre = along * Math.cos(turn) - (z - down) * Math.sin(turn)
  return {
    wheelbase,
    frontRadius,
    rearRadius,
    lifted,
    lift,
    ...level,
    otherWheelRaised: 280 * (1 - centre / axle),
  }
}

test('centreOfGravityHeight(…) finds the height of a bike weighed by turning it, either end lifted, wheels alike or not', () => {
  fc.assert(
    fc.property(
      number(1.2, 1.7),
      number(0.4, 0.8),
      number(0.35, 0.8),
      number(0.26, 0.36),
      number(0.26, 0.36),
      fc.constantFrom('front', 'rear'),
      number(0.1, 0.6),
      (w, x, z, f, r, end, lift) => {
        near(centreOfGravityHeight(weigh(w, x, z, f, r, end, lift)), z, 1e-9)
      },
    ),
  )
})

test('centreOfGravityHeight(…) with equal wheels is R + wheelbase × (W′ − W) cot(asin(lift/wheelbase)) ÷ total', () => {
  const height = centreOfGravityHeight({
    wheelbase: 1.45,
    frontLevel: 140,
    rearLevel: 140,
    lifted: 'rear',
    lift: 0.3,
    otherWheelRaised: 153,
    frontRadius: 0.3,
    rearRadius: 0.3,
  })
  same(height, 0.3 + (1.45 * 13) / 280 / Math.tan(Math.asin(0.3 / 1.45)), 1e-10)
})

test('centreOfGravityHeight(…) is wrong by about 13 mm when the raised reading is wrong by 0.5 kg', () => {
  const weighing = weigh(1.45, 0.71, 0.62, 0.3, 0.3, 'rear', 0.3)
  const error =
    centreOfGravityHeight({ ...weighing, otherWheelRaised: weighing.otherWheelRaised + 0.5 }) - 0.62
  near(error, 0.013, 0.002) // 12.2 mm on a 280 kg bike lifted 300 mm
})

test('centreOfGravityHeight(…) with an uncertainty carries it through: of loads, and of lengths when given', () => {
  const weighing = weigh(1.45, 0.71, 0.62, 0.3, 0.31, 'rear', 0.3)
  const result = centreOfGravityHeight({ ...weighing, uncertainty: { load: 0.5 } })
  near(result.height, 0.62, 1e-9)
  const raised =
    (centreOfGravityHeight({ ...weighing, otherWheelRaised: weighing.otherWheelRaised + 0.005 }) -
      0.62) /
    0.01
  expect(result.uncertainty).toBeGreaterThan(raised)
  expect(result.uncertainty).toBeLessThan(2 * raised)
  expect(
    centreOfGravityHeight({ ...weighing, uncertainty: { load: 0.5, length: 0.003 } }).uncertainty,
  ).toBeGreaterThan(result.uncertainty)
  expect(centreOfGravityHeight({ ...weighing, uncertainty: { load: 0 } }).uncertainty).toBe(0)
})

test('centreOfGravityHeight(…) allows all the weight on one wheel: the centre of gravity then stands above that axle', () => {
  const weighing = {
    wheelbase: 1.45,
    frontLevel: 140,
    rearLevel: 140,
    lifted: 'rear',
    lift: 0.3,
    frontRadius: 0.3,
    rearRadius: 0.3,
  } as const
  const height = centreOfGravityHeight({ ...weighing, otherWheelRaised: 280 })
  same(height, 0.3 + 0.725 / Math.tan(Math.asin(0.3 / 1.45)), 1e-10)
})

test('centreOfGravityHeight(…) refuses what makes no sense', () => {
  const good = weigh(1.45, 0.71, 0.62, 0.3, 0.31, 'rear', 0.3)
  const bad: [object, string][] = [
    [{ wheelbase: 0 }, 'wheelbase'],
    [{ frontLevel: -1 }, 'frontLevel'],
    [{ rearLevel: -1 }, 'rearLevel'],
    [{ frontLevel: 0, rearLevel: 0 }, 'rearLevel'],
    [{ lifted: 'both' }, 'lifted'],
    [{ lift: 0 }, 'lift'],
    [{ lift: 1.45 }, 'lift'],
    [{ otherWheelRaised: 300 }, 'otherWheelRaised'],
    [{ frontRadius: 0 }, 'frontRadius'],
    [{ rearRadius: NaN }, 'rearRadius'],
    [{ uncertainty: { load: -1 } }, 'uncertainty.load'],
    [{ uncertainty: { load: 1, length: NaN } }, 'uncertainty.length'],
  ]
  for (const [change, parameter] of bad) {
    expect(() => centreOfGravityHeight({ ...good, ...change }), parameter).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  }
})
