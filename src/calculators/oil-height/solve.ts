import {
  ATMOSPHERE,
  forkForce,
  forkLimit,
  gasForce,
  gasVolume,
  levelChange,
  sample,
  solveStance,
  standardPressure,
  WARM_OIL,
} from '../../core/index.ts'
import type { Fork, Gas, GasState } from '../../core/index.ts'
import { bikeOf, forkOf } from '../../bikes/bikes.ts'
import type { Cell } from '../../machine/cells.ts'
import type { Given } from '../../machine/given.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import type statement from './statement.ts'

/** Workshop temperature at which the caps went on [K]. */
const CLOSED_AT = 293.15
/** Slow, middle and fast: between air that keeps its temperature (1) and air that keeps its heat (1.4). */
const EXPONENTS = [1, 1.2, 1.4] as const
/** Past this the air is no spring any more but a lock [N]: ten times what a front wheel carries on the brakes. Seals give way before (no source). */
const LOCKED = 20e3
/** Shares of the travel at which the table reads. */
const STATIONS = [0, 0.25, 0.5, 0.75, 0.9, 1]

type Values = InputOf<typeof statement>

interface SetUp {
  fork: Fork
  gas: Gas
  state: GasState
  settled: number
}

function setUp(input: Values): SetUp {
  const { bike } = input
  const airHeight =
    input.airHeight - levelChange({ volume: input.oilAdded, boreDiameter: bike.fork.boreDiameter })
  if (airHeight < 0)
    throw new InputRefusal(
      'oilAdded',
      'So much added oil would overflow the collapsed tube at this oil height. Enter less oil, or a lower level',
    )
  const plain = forkOf(bike, { airHeight })
  const gas = {
    ...plain.legs[0]!.gas!,
    gaugePressure: input.gaugePressure,
    oilVolume: input.oilVolume,
    closed: { temperature: CLOSED_AT, pressure: ATMOSPHERE },
  }
  const fork = { ...plain, legs: plain.legs.map((leg) => ({ ...leg, gas })) }
  const state = {
    temperature: input.temperature,
    ambientPressure: standardPressure(input.altitude),
  }
  const { frontTravel } = solveStance(
    { ...bikeOf(bike), fork },
    { payload: [bike.rider], gasState: state },
  )
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
  const [extended, full] = [
    gasVolume(gas, fork.travel, 0, state),
    gasVolume(gas, fork.travel, fork.travel, state),
  ]
  return (fork.travel * extended) / (extended - full)
}

/** A force at a travel [m] from slow to fast, the bike having settled there slowly; null at and past the lock, and so near it that the figure means nothing. */
function fan(set: SetUp, x: number, force: Force): Interval | null {
  if (x >= lockOf(set)) return null
  const [slow, middle, fast] = EXPONENTS.map((exponent) =>
    force(set.fork, x, { ...set.state, exponent, from: set.settled }),
  ) as [number, number, number]
  const high = Math.max(slow, fast)
  return high > LOCKED ? null : { low: Math.min(slow, fast), high, value: middle }
}

/** Travel between the stop and a lock [m] once the oil is warm; what is warmer already stays so. */
function warmMargin({ fork, gas, state, settled }: SetUp): number {
  const warm = { ...state, temperature: Math.max(WARM_OIL, state.temperature ?? WARM_OIL) }
  return lockOf({ fork, gas, state: warm, settled }) - fork.travel
}

/** SI in, SI out. */
function compute(set: ReturnType<typeof setUp>): OutputOf<typeof statement> {
  const { fork, gas, state, settled } = set
  const { travel } = fork
  return {
    gasAtFull: fan(set, travel, gasOnly(gas)),
    forceAtFull: fan(set, travel, whole)?.value ?? null,
    gasSettled: settled < lockOf(set) ? 2 * gasForce(gas, travel, settled, state) : null,
    settled,
    lockMargin: lockOf(set) - travel,
    lockMarginWarm: warmMargin(set),
    effective: gas.airHeight,
    airExtended: gasVolume(gas, travel, 0, state),
    airFull: Math.max(0, gasVolume(gas, travel, travel, state)),
    stations: STATIONS.map((share): Cell[] => [
      share * travel,
      fan(set, share * travel, gasOnly(gas)),
      fan(set, share * travel, whole),
    ]),
  }
}

/** Before: 130 mm of oil height and nothing added, as the caps went on: 20 °C, sea level, nothing pumped in. */
const baseline = (): Given => ({
  airHeight: 130,
  oilAdded: 0,
  temperature: 20,
  altitude: 0,
  gaugePressure: 0,
})
const exampleBaseline = true

/** What the fork draws along its travel: forces, slow and fast, and the air that is left [SI]. */
function picture(set: ReturnType<typeof setUp>) {
  const { fork, gas, state, settled } = set
  const end = Math.min(fork.travel, lockOf(set) - 1e-3)
  const along = sample(0, end, 48)
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
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const set = setUp(input)
    return { outputs: compute(set), picture: () => picture(set) }
  },
  baseline,
  exampleBaseline,
})
