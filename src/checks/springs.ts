import {
  coilRate,
  coilShearStress,
  estimateSpring,
  naturalFrequency,
  solidLength,
  springDeflection,
  springRate,
} from '../core/index.ts'
import { call } from './call.ts'

type Coil = Parameters<typeof coilRate>[0]
type Load = Parameters<typeof coilShearStress>[0]
type SolidCoil = Parameters<typeof solidLength>[0]

/** Two springs, one inside the other, the inner shorter: the outer carries alone until the inner is met. */
interface Nest {
  outer: Coil
  inner: Coil
  difference: number
  force: number
}

function nested({ outer, inner, difference, force }: Nest) {
  const first = coilRate(outer)
  const second = coilRate(inner)
  const both = springDeflection([{ rate: first + second }], force - first * difference)
  const stress = (coil: Coil, load: number): number =>
    coilShearStress({ ...coil, force: load, correction: 'wahl' })
  const [outerForce, innerForce] = [first * (both + difference), second * both]
  return {
    outerForce,
    innerForce,
    outerDeflection: both + difference,
    innerDeflection: both,
    outerStress: stress(outer, outerForce),
    innerStress: stress(inner, innerForce),
  }
}

/** A mass that swings on springs in series or side by side. */
function swinging({
  springs,
  arrangement,
  mass,
  amplitude,
}: {
  springs: number[]
  arrangement: 'series' | 'parallel'
  mass: number
  amplitude: number
}) {
  const groups = springs.map((rate) => ({ rate }))
  const stiffness =
    arrangement === 'series' ? springRate(groups, 0) : springs.reduce((sum, rate) => sum + rate, 0)
  const frequency = naturalFrequency({ mass, stiffness })
  return {
    period: (2 * Math.PI) / frequency,
    speed: frequency * amplitude,
    acceleration: frequency ** 2 * amplitude,
  }
}

/** A spring that its loads stretch: what grows here disappears on a fork, so lengths enter with their sign turned; a preload below 0 is the free length. */
function fromTwoLengths({
  lengths: [first = 0, second = 0],
  forces: [light = 0, heavy = 0],
}: {
  lengths: number[]
  forces: number[]
}) {
  const readings = {
    extended: second,
    staticReading: second - first,
    riderReading: 0,
    staticForce: light,
    riderForce: heavy,
  }
  const { rate, preload } = estimateSpring({ ...readings, uncertainty: { reading: 0, force: 0 } })
  return { rate, freeLength: -preload }
}

export const springs = {
  coilRate: call(['coilRate'], coilRate),
  coilShearStress: call(['coilShearStress'], coilShearStress),
  solidLength: call(['solidLength'], (coil: SolidCoil) => solidLength(coil)),
  springDeflection: call(
    ['springDeflection'],
    ({ rates, force }: { rates: number[]; force: number }) =>
      springDeflection(
        rates.map((rate) => ({ rate })),
        force,
      ),
  ),
  // stress grows in proportion to force
  forceAtStress: call(
    ['coilShearStress'],
    ({ stress, ...coil }: Load & { stress: number }) =>
      stress / coilShearStress({ ...coil, force: 1 }),
  ),
  curvatureFactor: call(
    ['coilShearStress'],
    (load: Load) =>
      coilShearStress({ ...load, force: 1 }) /
      coilShearStress({ ...load, force: 1, correction: 'none' }),
  ),
  // the rate falls in proportion to the working coils
  coilsForRate: call(
    ['coilRate'],
    ({ rate, deadCoils, ...coil }: Coil & { rate: number; deadCoils: number }) =>
      coilRate({ ...coil, activeCoils: 1 }) / rate + deadCoils,
  ),
  nestedSprings: call(['coilRate', 'coilShearStress', 'springDeflection'], nested),
  coilsInSeries: call(
    ['coilRate', 'springDeflection'],
    ({ sideBySide, force, ...coil }: Coil & { sideBySide: number[]; force: number }) =>
      springDeflection(
        sideBySide.map((count) => ({ rate: count * coilRate(coil) })),
        force,
      ),
  ),
  springFromTwoLengths: call(['estimateSpring'], fromTwoLengths),
  swingingMass: call(['springRate', 'naturalFrequency'], swinging),
}
