import type { Observation } from '../../src/core/index.ts'

/* What goes wrong at the bench: each spoils a set of readings in place and says which it spoilt, or null where the slip would hardly change anything. */

type Blunder = (readings: Observation[], pick: (count: number) => number) => string[] | null

const named = (readings: Observation[], name: string): Observation =>
  readings.find((one) => one.name === name)!
const END = ['front', 'rear'] as const
const WAY = ['down', 'up'] as const
const GRAVITY = 9.80665

// A slip of less than this many times the usual ± is not to be told from noise.
const PLAIN = 7

function exchanged(one: Observation, other: Observation): string[] | null {
  if (
    !('standard' in one.plusMinus) ||
    Math.abs(one.value - other.value) < PLAIN * one.plusMinus.standard
  )
    return null
  ;[one.value, other.value] = [other.value, one.value]
  return [one.name, other.name]
}

function rewritten(one: Observation, value: number): string[] | null {
  if (
    !('standard' in one.plusMinus) ||
    Math.abs(one.value - value) < PLAIN * one.plusMinus.standard
  )
    return null
  one.value = value
  return [one.name]
}

const scales = (readings: Observation[]): Observation[] =>
  readings.filter(({ kind }) => kind === 'load')

export const BLUNDERS: Record<string, Blunder> = {
  'the lengths with and without the rider swapped': (readings, pick) => {
    const [at, way] = [END[pick(2)]!, WAY[pick(2)]!]
    return exchanged(named(readings, `${at} alone ${way}`), named(readings, `${at} rider ${way}`))
  },
  'the lengths of both ways swapped': (readings, pick) => {
    const [at, who] = [END[pick(2)]!, ['alone', 'rider'][pick(2)]!]
    return exchanged(named(readings, `${at} ${who} down`), named(readings, `${at} ${who} up`))
  },
  'the rider not yet on for a length': (readings, pick) => {
    const [at, way] = [END[pick(2)]!, WAY[pick(2)]!]
    return rewritten(
      named(readings, `${at} rider ${way}`),
      named(readings, `${at} alone ${way}`).value + 0.0003,
    )
  },
  'the rider not yet on for a scale': (readings, pick) => {
    const at = END[pick(2)]!
    return rewritten(
      named(readings, `${at} scale rider`),
      named(readings, `${at} scale alone`).value + 3,
    )
  },
  'kilograms written for newtons': (readings, pick) => {
    const forces = readings.filter(({ kind }) => kind === 'load' || kind === 'springForce')
    const one = forces[pick(forces.length)]!
    return rewritten(one, one.value / GRAVITY)
  },
  'a scale in pounds read as kilograms': (readings, pick) => {
    const one = scales(readings)[pick(scales(readings).length)]!
    return rewritten(one, one.value * 2.2046226)
  },
  'a rule read wrong by a centimetre': (readings, pick) => {
    const lengths = readings.filter(({ name }) => / (down|up)$/.test(name))
    const one = lengths[pick(lengths.length)]!
    return rewritten(one, one.value + (pick(2) - 0.5) * 0.02)
  },
}
