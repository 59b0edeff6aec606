import { bikeOf, forkOf, payloadOf } from './bikes.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import type { Cell, InputValues, Interval } from './define.ts'
import { oilHeightRemarks } from './oil-height.remarks.ts'
import { ATMOSPHERE, forkForce, forkLimit, gasForce, gasVolume, levelChange, solveStance, standardPressure } from '../core/index.ts'
import type { Fork, Gas, GasState } from '../core/index.ts'

/** Workshop temperature at which the caps went on [K]. */
const CLOSED_AT = 293.15
/** Slow, middle and fast: measured forks lie between 1.0 and 1.4 (air that keeps its temperature, air that keeps its heat). */
const EXPONENTS = [1, 1.2, 1.4] as const
/** Shares of the travel at which the table reads. */
const STATIONS = [0, 0.25, 0.5, 0.75, 0.9, 1]

const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  airHeight: {
    kind: 'quantity',
    label: 'Oil height, top of tube down to the oil',
    hint: 'Leg collapsed, spring out.',
    procedure: 'set-oil-height',
    quantity: 'length',
    unit: 'mm',
    range: [40, 300],
    step: 1,
    default: 120,
  },
  oilAdded: {
    kind: 'quantity',
    label: 'Oil added to each leg after that',
    hint: 'Below 0 for oil drawn off. Old oil left in a leg counts as added.',
    quantity: 'volume',
    unit: 'cm³',
    range: [-60, 60],
    step: 1,
    default: 0,
  },
  temperature: {
    kind: 'quantity',
    label: 'Temperature of the fork',
    hint: 'The caps went on at 20 °C.',
    quantity: 'temperature',
    unit: '°C',
    range: [-20, 90],
    step: 1,
    default: 20,
  },
  altitude: {
    kind: 'quantity',
    label: 'Height above the workshop',
    hint: 'The workshop stands at sea level.',
    more: true,
    quantity: 'distance',
    unit: 'm',
    range: [0, 4000],
    step: 50,
    default: 0,
  },
  gaugePressure: {
    kind: 'quantity',
    label: 'Pressure pumped in, leg extended',
    hint: 'Only in forks made for it.',
    more: true,
    quantity: 'pressure',
    unit: 'bar',
    range: [0, 3],
    step: 0.05,
    default: 0,
  },
  oilVolume: {
    kind: 'quantity',
    label: 'Oil in each leg, for its growth with heat',
    hint: 'The maker’s manual gives the quantity to fill; this is no such figure.',
    more: true,
    quantity: 'volume',
    unit: 'cm³',
    range: [100, 1200],
    step: 10,
    default: 500,
    typical: [350, 700],
    typicalFrom: 'common practice for road bikes, no published source',
  },
} as const

const outputs = {
  gasAtFull: { label: 'Gas force at full travel, both legs, slow to fast', quantity: 'force', unit: 'N', digits: 0, lead: true },
  forceAtFull: { label: 'Whole fork at full travel, between slow and fast', quantity: 'force', unit: 'N', digits: 0 },
  gasSettled: { label: 'Gas force where the bike sits with its rider', quantity: 'force', unit: 'N', digits: 0, lead: true },
  settled: { label: 'Travel used with the rider', quantity: 'length', unit: 'mm', digits: 1 },
  lockMargin: { label: 'Travel to spare before the oil locks', quantity: 'length', unit: 'mm', digits: 0 },
  effective: { label: 'Oil height with the oil added', quantity: 'length', unit: 'mm', digits: 1, more: true },
  airExtended: { label: 'Air in each leg, extended', quantity: 'volume', unit: 'cm³', digits: 0, more: true },
  airFull: { label: 'Air in each leg, full travel', quantity: 'volume', unit: 'cm³', digits: 0, more: true },
  stations: {
    kind: 'table',
    label: 'Along the travel: gas, and the whole fork, both legs',
    columns: [
      { id: 'travel', label: 'Travel used', quantity: 'length', unit: 'mm', digits: 0 },
      { id: 'gas', label: 'Gas, slow to fast', quantity: 'force', unit: 'N', digits: 0 },
      { id: 'fork', label: 'Spring and gas', quantity: 'force', unit: 'N', digits: 0 },
    ],
  },
} as const

type Values = InputValues<typeof inputs>

export default defineCalculator({
  id: 'oil-height',
  version: 1,
  title: 'Oil height and the air above it',
  question: 'Is the oil right?',
  answers: 'How much the trapped air pushes, where in the travel, and where the oil would lock.',
  assumes: [
    'Both legs hold the same oil at the same height.',
    'Height is read with the leg collapsed and the spring out.',
    'The caps went on with the legs fully extended, at 20 °C and sea level.',
  ],
  leavesOut: [
    'Air that dissolves in the oil or is whipped into it: the level falls by some millimetres over a ride.',
    'Seals that let air in or out: a fork that has been warm and cold many times can hold pressure.',
    'Weather: it moves the outside pressure by about 3 %.',
  ],
  inputs,
  outputs,
  compute(input) {
    const set = setUp(input)
    const { fork, gas, state, settled } = set
    const { travel } = fork
    return {
      gasAtFull: fan(set, travel, gasOnly(gas)),
      forceAtFull: fan(set, travel, whole)?.value ?? null,
      gasSettled: settled < lockOf(set) ? 2 * gasForce(gas, travel, settled, state) : null,
      settled,
      lockMargin: lockOf(set) - travel,
      effective: gas.airHeight,
      airExtended: gasVolume(gas, travel, 0, state),
      airFull: Math.max(0, gasVolume(gas, travel, travel, state)),
      stations: STATIONS.map((share): Cell[] => [share * travel, fan(set, share * travel, gasOnly(gas)), fan(set, share * travel, whole)]),
    }
  },
  baseline: () => ({ airHeight: 130, oilAdded: 0, temperature: 20, altitude: 0, gaugePressure: 0 }),
  picture(input) {
    const set = setUp(input)
    const { fork, gas, state, settled } = set
    const end = Math.min(fork.travel, lockOf(set) - 1e-3)
    const along = Array.from({ length: 49 }, (_, place) => (place / 48) * end)
    const curve = (force: Force, exponent: number): [number, number][] =>
      along.map((x) => [x, force(fork, x, { ...state, exponent, from: Math.min(settled, end) })])
    const columnAt = (x: number): number => Math.max(0, lockOf(set) - x)
    return {
      gas: { slow: curve(gasOnly(gas), 1), fast: curve(gasOnly(gas), 1.4) },
      whole: { slow: curve(whole, 1), fast: curve(whole, 1.4) },
      settled,
      travel: fork.travel,
      lock: lockOf(set),
      /** height of the air as a column of the tube's area [m] */
      columns: { extended: columnAt(0), settled: columnAt(settled), full: columnAt(fork.travel) },
    }
  },
  remarks: oilHeightRemarks,
})

interface SetUp {
  fork: Fork
  gas: Gas
  state: GasState
  settled: number
}

function setUp(input: Values): SetUp {
  const { bike } = input
  const airHeight = input.airHeight - levelChange({ volume: input.oilAdded, boreDiameter: bike.fork.boreDiameter * 1e-3 })
  if (airHeight < 0)
    throw new InputRefusal('oilAdded', 'Oil added to each leg would overflow the collapsed tube at this oil height. Enter less oil or a lower level')
  const plain = forkOf(bike, { airHeight })
  const gas = {
    ...plain.legs[0]!.gas!,
    gaugePressure: input.gaugePressure,
    oilVolume: input.oilVolume,
    closed: { temperature: CLOSED_AT, pressure: ATMOSPHERE },
  }
  const fork = { ...plain, legs: plain.legs.map((leg) => ({ ...leg, gas })) }
  const state = { temperature: input.temperature, ambientPressure: standardPressure(input.altitude) }
  const { frontTravel } = solveStance({ ...bikeOf(bike), fork }, { payload: [payloadOf(bike.rider)], gasState: state })
  return { fork, gas, state, settled: frontTravel }
}

type Force = (fork: Fork, x: number, state: GasState) => number
const whole: Force = forkForce
const gasOnly =
  (gas: Gas): Force =>
  (fork, x, state) =>
    2 * gasForce(gas, fork.travel, x, state)

/** Travel at which no air is left [m], which may lie beyond the stop: the air of the extended leg as a column of the tube's area. */
function lockOf({ fork, gas, state }: SetUp): number {
  const limit = forkLimit(fork, state)
  if (limit.cause === 'locked') return limit.travel
  const [extended, full] = [gasVolume(gas, fork.travel, 0, state), gasVolume(gas, fork.travel, fork.travel, state)]
  return (fork.travel * extended) / (extended - full)
}

/** A force at a travel [m] from slow to fast, the bike having settled there slowly; null at and past the lock. */
function fan(set: SetUp, x: number, force: Force): Interval | null {
  if (x >= lockOf(set)) return null
  const [slow, middle, fast] = EXPONENTS.map((exponent) => force(set.fork, x, { ...set.state, exponent, from: set.settled })) as [number, number, number]
  return { low: Math.min(slow, fast), high: Math.max(slow, fast), value: middle }
}
