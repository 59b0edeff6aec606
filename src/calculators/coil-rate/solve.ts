import {
  coilRate,
  coilShearStress,
  leastGaps,
  propagate,
  solidLength,
  springForce,
} from '../../core/index.ts'
import type statement from './statement.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import { measured } from '../../machine/measured.ts'

type Input = InputOf<typeof statement>

/**
 * Shear modulus of spring steel [Pa]. The figures are those that EN 13906-1 gives for wire to EN 10270-1, -2 and -3, from memory: the paid text was
 * not read. The last is the middle of the first two and hot-rolled steel (78.5), for a spring of unknown wire.
 */
const SHEAR_MODULUS = { drawn: 81.5e9, tempered: 79.5e9, stainless: 70e9, unknown: 80e9 } as const

/** ± of each [Pa]: a batch differs by about 1 % (from memory); an unknown steel by what lies between hot-rolled and drawn wire. */
const MODULUS_LIMIT = { drawn: 0.8e9, tempered: 0.8e9, stainless: 0.8e9, unknown: 1.5e9 } as const

/** No spring wire bears more in shear [Pa]: thin drawn wire breaks near 2,100 MPa in tension, and shears at about seven tenths of that. From memory. */
const STRONGEST_WIRE = 1.5e9

function refuseImpossible({
  wireDiameter,
  outerDiameter,
  totalCoils,
  deadCoils,
  freeLength,
  ends,
}: Input): void {
  if (outerDiameter <= 2 * wireDiameter)
    throw new InputRefusal(
      'outerDiameter',
      'The outside diameter of the coils must be more than twice the wire’s, or the coil has no hole. Check both',
    )
  if (totalCoils <= deadCoils)
    throw new InputRefusal(
      'totalCoils',
      'There must be more coils in all than coils that do not work. Count both again',
    )
  if (solidLength({ wireDiameter, totalCoils, ends }) >= freeLength)
    throw new InputRefusal(
      'freeLength',
      'So many coils of this wire, all touching, are already longer than the free length. Check wire, count and length',
    )
}

/** The rate from wire, outside diameter, coils that work and modulus: the calliper reads the outside, so thicker wire also means a smaller mean coil. */
const rateOf = ([wire, outer, activeCoils, shearModulus]: number[]): number =>
  coilRate({
    wireDiameter: wire!,
    meanDiameter: outer! - wire!,
    activeCoils: activeCoils!,
    shearModulus: shearModulus!,
  })

/**
 * How far each reading's ± alone moves the rate, as a share of it; to first order, as `propagate` does. The calliper holds the outside: each part
 * of the ± is taken as the whole is, with the other readings as they are.
 */
function sharesOf(readings: readonly number[], limits: readonly number[]): number[] {
  return limits.map((limit, index) => {
    const alone = ([value]: number[]): number =>
      rateOf(readings.map((reading, at) => (at === index ? value! : reading)))
    const { uncertainty, value: rate } = propagate(alone, [readings[index]!], [limit])
    return uncertainty / rate
  })
}

/** SI in, SI out. */
function compute(input: Input): OutputOf<typeof statement> {
  const {
    wireDiameter,
    outerDiameter,
    totalCoils,
    freeLength,
    deflection,
    material,
    ends,
    deadCoils,
  } = input
  refuseImpossible(input)
  const activeCoils = totalCoils - deadCoils
  const meanDiameter = outerDiameter - wireDiameter
  const shape = { wireDiameter, meanDiameter, activeCoils, shearModulus: SHEAR_MODULUS[material] }
  const limits = [input.wirePlusMinus, input.outerPlusMinus, input.coilsPlusMinus]
  const readings = [wireDiameter, outerDiameter, activeCoils, shape.shearModulus]
  const rate = measured(rateOf, readings, [...limits, MODULUS_LIMIT[material]])
  const [wireShare, outerShare, coilsShare] = sharesOf(readings, limits)
  const solid = solidLength({ wireDiameter, totalCoils, ends })
  const margin = measured(
    ([wire, coils]) =>
      freeLength - solidLength({ wireDiameter: wire!, totalCoils: coils!, ends }) - deflection,
    [wireDiameter, totalCoils],
    [input.wirePlusMinus, input.coilsPlusMinus],
  )
  const reached = Math.min(deflection, freeLength - solid)
  const force = springForce([{ rate: rate.value }], reached)
  const stress = coilShearStress({ force, wireDiameter, meanDiameter, correction: 'bergstrasser' })
  // a squeeze that no wire bears has no force either: one of the figures is wrong
  const bearable = stress <= STRONGEST_WIRE
  return {
    rate,
    margin: margin satisfies Interval,
    solid,
    leastGap: leastGaps(shape),
    wireShare: wireShare!,
    stress: bearable ? stress : null,
    force: bearable ? force : null,
    activeCoils,
    index: meanDiameter / wireDiameter,
    outerShare: outerShare!,
    coilsShare: coilsShare!,
  }
}

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => undefined }
  },
})
