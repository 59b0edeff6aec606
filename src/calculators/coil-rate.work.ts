import { coilRate, coilShearStress, propagate, solidLength, springForce } from '../core/index.ts'
import type { inputs, outputs } from './coil-rate.fields.ts'
import { InputRefusal } from './define.ts'
import type { InputValues, Interval, OutputValues } from './define.ts'
import { measured } from './measured.ts'

type Input = InputValues<typeof inputs>

/**
 * Shear modulus of spring steel [Pa]. The figures are those that EN 13906-1 gives for wire to EN 10270-1, -2 and -3, from memory: the paid text was
 * not read. The last is the middle of the first two and hot-rolled steel (78.5), for a spring of unknown wire.
 */
const SHEAR_MODULUS = { drawn: 81.5e9, tempered: 79.5e9, stainless: 70e9, unknown: 80e9 } as const

/** ± of each [Pa]: a batch differs by about 1 % (from memory); an unknown steel by what lies between hot-rolled and drawn wire. */
const MODULUS_LIMIT = { drawn: 0.8e9, tempered: 0.8e9, stainless: 0.8e9, unknown: 1.5e9 } as const

function refuseImpossible({ wireDiameter, outerDiameter, totalCoils, deadCoils }: Input): void {
  if (outerDiameter <= 2 * wireDiameter)
    throw new InputRefusal('outerDiameter', 'Outside diameter of the coils must be more than twice the wire diameter, or the coil has no hole')
  if (totalCoils <= deadCoils) throw new InputRefusal('totalCoils', 'Coils in all must be more than the coils that do not work')
}

/** How far one input's ± alone moves the rate, as a share of it; to first order, as `propagate` does. */
function shareOf(measure: (values: number[]) => number, value: number, limit: number): number {
  const { uncertainty, value: rate } = propagate(measure, [value], [limit])
  return uncertainty / rate
}

/** SI in, SI out. */
export function compute(input: Input): OutputValues<typeof outputs> {
  const { wireDiameter, outerDiameter, totalCoils, freeLength, deflection, material, ends, deadCoils } = input
  refuseImpossible(input)
  const activeCoils = totalCoils - deadCoils
  const meanDiameter = outerDiameter - wireDiameter
  const shape = { wireDiameter, meanDiameter, activeCoils, shearModulus: SHEAR_MODULUS[material] }
  const limits = [input.wirePlusMinus, input.outerPlusMinus, input.coilsPlusMinus]
  // the calliper reads the outside, so thicker wire also means a smaller mean coil
  const rateOf = ([wire, outer, coils, modulus]: number[]): number =>
    coilRate({ wireDiameter: wire!, meanDiameter: outer! - wire!, activeCoils: coils!, shearModulus: modulus! })
  const rate = measured(rateOf, [wireDiameter, outerDiameter, activeCoils, shape.shearModulus], [...limits, MODULUS_LIMIT[material]])
  const solid = solidLength({ wireDiameter, totalCoils, ends })
  const margin = measured(
    ([wire, coils]) => freeLength - solidLength({ wireDiameter: wire!, totalCoils: coils!, ends }) - deflection,
    [wireDiameter, totalCoils],
    [input.wirePlusMinus, input.coilsPlusMinus],
  )
  const reached = Math.min(deflection, freeLength - solid)
  const force = reached > 0 ? springForce([{ rate: rate.value }], reached) : null
  return {
    rate,
    margin: margin satisfies Interval,
    solid,
    wireShare: shareOf(([wire]) => coilRate({ ...shape, wireDiameter: wire! }), wireDiameter, input.wirePlusMinus),
    stress: force === null ? null : coilShearStress({ force, wireDiameter, meanDiameter, correction: 'bergstrasser' }),
    force,
    activeCoils,
    index: meanDiameter / wireDiameter,
    outerShare: shareOf(([mean]) => coilRate({ ...shape, meanDiameter: mean! }), meanDiameter, input.outerPlusMinus),
    coilsShare: shareOf(([coils]) => coilRate({ ...shape, activeCoils: coils! }), activeCoils, input.coilsPlusMinus),
  }
}
