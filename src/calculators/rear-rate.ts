import { defineCalculator, InputRefusal } from './define.ts'
import type { InputValues, Interval } from './define.ts'
import { measured } from './measured.ts'
import { rearRateChecks } from './rear-rate.checks.ts'
import { rearRateRemarks } from './rear-rate.remarks.ts'
import { DomainError, rearLimit, rearTravel, rearWheelForce, rearWheelRate, STANDARD_GRAVITY, turnsToTravel } from '../core/index.ts'
import type { MotionRatio, Rear } from '../core/index.ts'

const SHEET = 'Shock stroke ÷ wheel travel. The trade often states the inverse, leverage: choose it under “More”.'

const inputs = {
  springRate: { kind: 'quantity', label: 'Spring rate, one shock', procedure: 'test-a-spring', quantity: 'rate', unit: 'N/mm', range: [5, 300], step: 1, default: 90 },
  motionRatio: { kind: 'quantity', label: 'Motion ratio at full extension', hint: SHEET, procedure: 'measure-motion-ratio', when: { ratioAs: 'motion', linkage: ['constant', 'line'] }, quantity: 'ratio', unit: '', range: [0.25, 1.2], step: 0.005, default: 0.435, typical: [0.4, 0.5], typicalFrom: 'common for one shock, no published source; two shocks at the axle have 0.8 to 1' },
  leverage: { kind: 'quantity', label: 'Leverage at full extension', hint: 'Wheel travel ÷ shock stroke.', procedure: 'measure-motion-ratio', when: { ratioAs: 'leverage', linkage: ['constant', 'line'] }, quantity: 'ratio', unit: '', range: [0.8, 4], step: 0.05, default: 2.3, typical: [2, 2.5], typicalFrom: 'common for one shock, no published source' },
  preload: { kind: 'quantity', label: 'Preload of the spring', hint: 'Free length less length fitted, wheel hanging.', procedure: 'set-rear-preload', quantity: 'length', unit: 'mm', range: [0, 60], step: 0.5, default: 11 },
  turns: { kind: 'quantity', label: 'Collar turned in by', hint: 'Below 0 for turned out.', procedure: 'set-rear-preload', quantity: 'turns', unit: 'turns', range: [-20, 20], step: 0.25, default: 1 },
  pitch: { kind: 'quantity', label: 'Collar travel per turn', hint: 'Ten turns, measured, divided by ten.', more: true, quantity: 'length', unit: 'mm', range: [0.5, 4], step: 0.05, default: 1.5, typical: [1, 2], typicalFrom: 'common practice, no published source' },
  staticLoad: { kind: 'quantity', label: 'Rear scale, bike alone', procedure: 'weigh-the-bike', more: true, quantity: 'load', unit: 'kg load', range: [40, 300], step: 0.5, default: 100 },
  riderLoad: { kind: 'quantity', label: 'Rear scale, with the rider', procedure: 'weigh-the-bike', more: true, quantity: 'load', unit: 'kg load', range: [40, 450], step: 0.5, default: 143 },
  unsprungMass: { kind: 'quantity', label: 'Mass that moves with the wheel', more: true, quantity: 'mass', unit: 'kg', range: [5, 60], step: 1, default: 24, typical: [18, 32], typicalFrom: 'common practice for road bikes, no published source' },
  travel: { kind: 'quantity', label: 'Full wheel travel', more: true, quantity: 'length', unit: 'mm', range: [50, 350], step: 1, default: 130 },
  shocks: { kind: 'choice', label: 'Shocks', more: true, options: { one: 'one', two: 'two' }, default: 'one' },
  gasForce: { kind: 'quantity', label: 'Gas force of one shock', hint: '1.2 MPa on a 14 mm rod is 185 N. Never open a gas-charged damper to find out.', more: true, quantity: 'force', unit: 'N', range: [0, 600], step: 5, default: 185, typical: [80, 250], typicalFrom: 'gas at 0.8 to 1.6 MPa on rods of 12 to 14 mm' },
  ratioAs: { kind: 'choice', label: 'The ratio is given as', more: true, options: { motion: 'motion ratio: stroke ÷ travel', leverage: 'leverage: travel ÷ stroke' }, default: 'motion' },
  linkage: { kind: 'choice', label: 'Linkage', more: true, options: { constant: 'the same ratio all the way', line: 'changes evenly', table: 'a table' }, default: 'constant' },
  endRatio: { kind: 'quantity', label: 'Motion ratio at full travel', more: true, when: { linkage: 'line', ratioAs: 'motion' }, quantity: 'ratio', unit: '', range: [0.25, 1.2], step: 0.005, default: 0.48 },
  endLeverage: { kind: 'quantity', label: 'Leverage at full travel', more: true, when: { linkage: 'line', ratioAs: 'leverage' }, quantity: 'ratio', unit: '', range: [0.8, 4], step: 0.05, default: 2.1 },
  ratios: { kind: 'table', label: 'Ratio along the travel', hint: 'From 0 to the full travel, as given above.', more: true, when: { linkage: 'table' }, columns: [{ id: 'travel', label: 'Wheel travel', quantity: 'length', unit: 'mm', range: [0, 350] }, { id: 'ratio', label: 'Ratio', quantity: 'ratio', unit: '', range: [0.25, 4] }], rows: [2, 15], default: [[0, 0.41], [65, 0.44], [130, 0.49]] },
  ratePlusMinus: { kind: 'quantity', label: 'Spring rate is within', more: true, quantity: 'share', unit: '%', range: [0, 15], step: 0.5, default: 3 },
  ratioPlusMinus: { kind: 'quantity', label: 'Ratio is within', more: true, quantity: 'share', unit: '%', range: [0, 15], step: 0.5, default: 2 },
  readingPlusMinus: { kind: 'quantity', label: 'Preload is within', more: true, quantity: 'length', unit: 'mm', range: [0, 5], step: 0.5, default: 0.5 },
  loadPlusMinus: { kind: 'quantity', label: 'Each scale reading is within', more: true, quantity: 'load', unit: 'kg load', range: [0, 5], step: 0.1, default: 0.5 },
} as const

const outputs = {
  wheelRate: { label: 'Wheel rate where the rider sits (± about 95 %)', quantity: 'rate', unit: 'N/mm', digits: 1, lead: true },
  riderSag: { label: 'Sag with the rider (± about 95 %)', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  staticSag: { label: 'Static sag (± about 95 %)', quantity: 'length', unit: 'mm', digits: 1 },
  heightPerTurn: { label: 'Height of the axle for one turn of the collar', quantity: 'length', unit: 'mm', digits: 1 },
  preloadNow: { label: 'Preload with the collar there', quantity: 'length', unit: 'mm', digits: 1 },
  share: { label: 'Sag with the rider, share of travel', quantity: 'share', unit: '%', digits: 0, more: true },
  rateExtended: { label: 'Wheel rate at full extension', quantity: 'rate', unit: 'N/mm', digits: 1, more: true },
  rateFull: { label: 'Wheel rate at full travel', quantity: 'rate', unit: 'N/mm', digits: 1, more: true },
  fullForce: { label: 'Force at the wheel, full travel', quantity: 'force', unit: 'N', digits: 0, more: true },
} as const

type Values = InputValues<typeof inputs>

export default defineCalculator({
  id: 'rear-rate',
  version: 1,
  title: 'Rear spring, leverage and sag',
  question: 'Where does it sit?',
  answers: 'What a rear spring amounts to at the wheel, where the bike sits on it, and what a turn of the collar does.',
  assumes: ['Motion ratio is shock stroke per unit of wheel travel; leverage is its inverse.', 'Scale readings with the bike upright and level.', 'Preload is the spring’s compression with the wheel hanging, before the collar is turned.'],
  leavesOut: ['Chain pull, which lifts or squats the back under power.', 'Friction of shock, linkage and swing arm: often 5 to 10 mm of sag at the wheel.', 'A rubber bump stop, which takes over in the last third of many shocks.', 'Tyre squash: none of it is sag.'],
  inputs,
  outputs,
  compute: (input) => settling(input, () => resultsOf(input)),
  baseline: () => ({ turns: 0 }),
  picture(input) {
    const base = partsOf(input)
    const rear = rearOf(base)
    const { travel } = rearLimit(rear)
    const along = Array.from({ length: 53 }, (_, place) => (place / 52) * travel)
    return {
      ratio: along.map((x): [number, number] => [x, ratioAt(base.ratio, x)]),
      force: along.map((x): [number, number] => [x, rearWheelForce(rear, x)]),
      rate: along.map((x): [number, number] => [x, rearWheelRate(rear, x)]),
      staticForce: base.staticForce,
      riderForce: base.riderForce,
    }
  },
  remarks: rearRateRemarks,
  checks: rearRateChecks,
})

function resultsOf(input: Values) {
  const base = partsOf(input)
  const at = (move: (parts: Parts) => number): Interval & { value: number } => measured((values) => move(moved(base, values)), [0, 0, 0, 0, 0], limitsOf(input))
  const rear = rearOf(base)
  const limit = rearLimit(rear).travel
  const riderSag = at((parts) => rearTravel(rearOf(parts), parts.riderForce))
  return {
    wheelRate: at((parts) => rearWheelRate(rearOf(parts), rearTravel(rearOf(parts), parts.riderForce))),
    riderSag: clipped(riderSag, limit),
    staticSag: clipped(
      at((parts) => rearTravel(rearOf(parts), parts.staticForce)),
      limit,
    ),
    heightPerTurn: heightPerTurn(input, base),
    preloadNow: base.preload,
    share: riderSag.value / input.travel,
    rateExtended: rearWheelRate(rear, 0),
    rateFull: rearWheelRate(rear, limit),
    fullForce: rearWheelForce(rear, limit),
  }
}

/** A linkage whose wheel force falls with travel has no one place to settle: refused at the field where it was given. */
function settling<Result>(input: Values, work: () => Result): Result {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof DomainError) || error.parameter !== 'motionRatio') throw error
    const field = input.linkage === 'table' ? 'ratios' : input.ratioAs === 'leverage' ? 'endLeverage' : 'endRatio'
    throw new InputRefusal(field, 'With this ratio the force at the wheel would fall as it moves up: the bike could not settle. Enter a ratio that changes less')
  }
}

interface Parts {
  travel: number
  shocks: number
  springRate: number
  preload: number
  gasForce: number
  ratio: MotionRatio
  staticForce: number
  riderForce: number
}

const rearOf = ({ travel, shocks, springRate, preload, gasForce, ratio }: Parts): Rear => ({ travel, shocks, spring: [{ rate: springRate }], preload, gasForce, motionRatio: ratio })

/** Readings moved by an error each: spring rate and ratio as shares, preload, static and rider load. */
function moved(parts: Parts, [rate = 0, ratio = 0, preload = 0, standing = 0, rider = 0]: readonly number[]): Parts {
  return {
    ...parts,
    springRate: parts.springRate * (1 + rate),
    ratio: scaled(parts.ratio, 1 + ratio),
    preload: parts.preload + preload,
    staticForce: parts.staticForce + standing,
    riderForce: parts.riderForce + rider,
  }
}

function limitsOf({ ratePlusMinus, ratioPlusMinus, readingPlusMinus, loadPlusMinus }: Values): number[] {
  return [ratePlusMinus, ratioPlusMinus, readingPlusMinus, loadPlusMinus, loadPlusMinus]
}

const scaled = (ratio: MotionRatio, by: number): MotionRatio =>
  'table' in ratio ? { table: ratio.table.map(([x, m]) => [x, m * by] as const) } : { initial: ratio.initial * by, slope: (ratio.slope ?? 0) * by }

/** No reading is below full extension or past the stop. */
const clipped = ({ value, low, high }: Interval & { value: number }, limit: number): Interval => ({ value, low: Math.max(0, low), high: Math.min(limit, high) })

function partsOf(input: Values): Parts {
  if (input.riderLoad < input.staticLoad) throw new InputRefusal('riderLoad', 'Rear scale, with the rider must not be below the reading for the bike alone')
  const weight = input.unsprungMass * STANDARD_GRAVITY
  if (weight >= input.staticLoad) throw new InputRefusal('unsprungMass', 'Mass that moves with the wheel must be below what the rear scale reads for the bike alone')
  const preload = input.preload + turnsToTravel({ turns: input.turns, pitch: input.pitch })
  return {
    travel: input.travel,
    shocks: input.shocks === 'two' ? 2 : 1,
    springRate: input.springRate,
    preload,
    gasForce: input.gasForce,
    ratio: ratioOf(input),
    staticForce: input.staticLoad - weight,
    riderForce: input.riderLoad - weight,
  }
}

/** The motion ratio, whichever way round it was given. */
function ratioOf(input: Values): MotionRatio {
  const asMotion = (ratio: number): number => (input.ratioAs === 'leverage' ? 1 / ratio : ratio)
  if (input.linkage === 'table') {
    const table = input.ratios.map(([x = 0, ratio = 1]): [number, number] => [x, asMotion(ratio)]).sort((a, b) => a[0] - b[0])
    if (table[0]![0] > 0 || table.at(-1)![0] < input.travel - 1e-9) throw new InputRefusal('ratios', 'Ratio along the travel must reach from 0 to the full wheel travel. Add the missing row')
    if (table.some(([x], row) => row > 0 && x <= table[row - 1]![0])) throw new InputRefusal('ratios', 'Ratio along the travel has two rows for one wheel travel. Take one out')
    return { table }
  }
  const initial = input.ratioAs === 'leverage' ? 1 / input.leverage : input.motionRatio
  if (input.linkage === 'constant') return { initial }
  const end = input.ratioAs === 'leverage' ? 1 / input.endLeverage : input.endRatio
  return { initial, slope: (end - initial) / input.travel }
}

function ratioAt(ratio: MotionRatio, x: number): number {
  if (!('table' in ratio)) return ratio.initial + (ratio.slope ?? 0) * x
  const next = Math.max(1, ratio.table.findIndex(([at]) => at >= x))
  const [from, to] = [ratio.table[next - 1]!, ratio.table[next]!]
  return from[1] + ((to[1] - from[1]) * (x - from[0])) / (to[0] - from[0])
}

/** Rise of the axle's end of the bike for one turn in from here, under the rider [m]. */
function heightPerTurn(input: Values, parts: Parts): number {
  const turned = { ...parts, preload: parts.preload + input.pitch }
  return rearTravel(rearOf(parts), parts.riderForce) - rearTravel(rearOf(turned), parts.riderForce)
}
