import { coilRate, coilShearStress, propagate, solidLength, springForce } from '../core/index.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import type { Interval } from './define.ts'
import { measured } from './measured.ts'
import { remarksOf } from './coil-rate.remarks.ts'

/**
 * Shear modulus of spring steel [Pa]. The figures are those that EN 13906-1 gives for wire to EN 10270-1, -2 and -3, from memory: the paid text was
 * not read. The last is the middle of the first two and hot-rolled steel (78.5), for a spring of unknown wire.
 */
const SHEAR_MODULUS = { drawn: 81.5e9, tempered: 79.5e9, stainless: 70e9, unknown: 80e9 } as const

/** ± of each [Pa]: a batch differs by about 1 % (from memory); an unknown steel by what lies between hot-rolled and drawn wire. */
const MODULUS_LIMIT = { drawn: 0.8e9, tempered: 0.8e9, stainless: 0.8e9, unknown: 1.5e9 } as const

const length = (label: string, range: readonly [number, number], step: number, standard: number, hint: string) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range, step, default: standard, procedure: 'test-a-spring' }) as const
const plusMinus = (label: string, standard: number, most: number, step: number) =>
  ({ kind: 'quantity', label, quantity: 'length', unit: 'mm', range: [0, most], step, default: standard, more: true }) as const

const inputs = {
  wireDiameter: length('Wire diameter', [2, 20], 0.05, 4.5, 'Bare wire: scrape the paint off first.'),
  outerDiameter: length('Outside diameter of the coils', [10, 150], 0.1, 27.5, 'Across the coils, from outside to outside.'),
  totalCoils: {
    kind: 'quantity',
    label: 'Coils in all',
    hint: 'From one wire end to the other, part turns too.',
    quantity: 'coils',
    unit: 'coils',
    range: [3, 80],
    step: 0.25,
    default: 40,
    procedure: 'test-a-spring',
  },
  freeLength: length('Free length', [40, 700], 1, 350, 'Standing on a flat plate, no load.'),
  deflection: {
    kind: 'quantity',
    label: 'Most it is squeezed on the bike',
    hint: 'Preload and full travel together; at a shock, preload and stroke.',
    quantity: 'length',
    unit: 'mm',
    range: [1, 400],
    step: 1,
    default: 135,
    more: true,
  },
  material: {
    kind: 'choice',
    label: 'Wire',
    options: { drawn: 'cold-drawn steel', tempered: 'oil-tempered steel', stainless: 'stainless steel', unknown: 'steel, I don’t know which' },
    default: 'unknown',
    more: true,
  },
  ends: {
    kind: 'choice',
    label: 'Ends',
    options: { closedGround: 'closed and ground flat', closed: 'closed, not ground', plain: 'cut, not closed' },
    default: 'closedGround',
    more: true,
  },
  deadCoils: {
    kind: 'quantity',
    label: 'Coils that do not work',
    hint: 'The end coils that lie on their neighbours: commonly one at each end.',
    quantity: 'coils',
    unit: 'coils',
    range: [0, 6],
    step: 0.25,
    default: 2,
    typical: [1.5, 2.5],
    typicalFrom: 'common practice, no published source',
    more: true,
  },
  wirePlusMinus: plusMinus('Wire is within ±', 0.05, 0.5, 0.01),
  outerPlusMinus: plusMinus('Outside diameter is within ±', 0.1, 2, 0.05),
  coilsPlusMinus: {
    kind: 'quantity',
    label: 'Working coils are within ±',
    quantity: 'coils',
    unit: 'coils',
    range: [0, 2],
    step: 0.05,
    default: 0.25,
    more: true,
  },
} as const

const outputs = {
  rate: { label: 'Rate (± covers about 95 %)', quantity: 'rate', unit: 'N/mm', digits: 2, lead: true },
  margin: { label: 'Left before the coils touch (±)', quantity: 'length', unit: 'mm', digits: 0, lead: true },
  solid: { label: 'Length with all coils touching', quantity: 'length', unit: 'mm', digits: 1 },
  wireShare: { label: 'Rate from the wire’s ± alone', quantity: 'share', unit: '%', digits: 1 },
  stress: { label: 'Shear stress when squeezed most', quantity: 'stress', unit: 'MPa', digits: 0 },
  force: { label: 'Force when squeezed most', quantity: 'force', unit: 'N', digits: 0 },
  activeCoils: { label: 'Coils that work', quantity: 'coils', unit: 'coils', digits: 2, more: true },
  index: { label: 'Spring index, mean coil over wire', quantity: 'ratio', unit: '', digits: 1, more: true },
  outerShare: { label: 'Rate from the outside diameter’s ± alone', quantity: 'share', unit: '%', digits: 1, more: true },
  coilsShare: { label: 'Rate from the count’s ± alone', quantity: 'share', unit: '%', digits: 1, more: true },
} as const

export type CoilInputs = typeof inputs
export type CoilOutputs = typeof outputs

interface Coil {
  wireDiameter: number
  outerDiameter: number
  totalCoils: number
  deadCoils: number
}

function refuseImpossible({ wireDiameter, outerDiameter, totalCoils, deadCoils }: Coil): void {
  if (outerDiameter <= 2 * wireDiameter)
    throw new InputRefusal('outerDiameter', 'Outside diameter of the coils must be more than twice the wire diameter, or the coil has no hole')
  if (totalCoils <= deadCoils) throw new InputRefusal('totalCoils', 'Coils in all must be more than the coils that do not work')
}

/** How far one input's ± alone moves the rate, as a share of it; to first order, as `propagate` does. */
function shareOf(measure: (values: number[]) => number, value: number, limit: number): number {
  const { uncertainty, value: rate } = propagate(measure, [value], [limit])
  return uncertainty / rate
}

export default defineCalculator({
  id: 'coil-rate',
  version: 1,
  title: 'Rate from the coil',
  question: 'Which spring?',
  answers: 'How stiff a coil spring is by its wire, diameter and count, and how far it can be squeezed.',
  assumes: [
    'Round wire, one pitch, one diameter. A spring with close and open coils has two rates: use the progressive-spring calculator.',
    'The shear modulus is that of EN 13906-1 for the wire chosen, from memory: the paid text was not read.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
    'Stress with the Bergsträsser factor for the curve of the wire (EN 13906-1).',
  ],
  leavesOut: [
    'The end coils roll onto their neighbours as the spring is squeezed, so the rate rises by a few per cent near coil bind.',
    'Rubbing of a bowed spring on its tube.',
    'Strength: what a wire bears depends on its grade and treatment, which a calliper cannot read. This checks a spring that a maker made; it does not design one.',
  ],
  inputs,
  outputs,
  compute(input) {
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
  },
  remarks: remarksOf,
})
