import { readFileSync } from 'node:fs'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import { isOneOf } from '../../src/machine/cells.ts'
import type { Cell, OutputValue } from '../../src/machine/cells.ts'
import type { Given } from '../../src/machine/given.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import { isInterval } from '../../src/units/interval.ts'
import { bikes } from './bikes.ts'
import { randomStates } from './stops.ts'

/* A record of results as they are, so that a change of any of them is seen. Whether they are right is for the laws and the checks against the world outside. */

/** A number [SI], the ends of a range with its estimate, codes, or nothing. */
export type KeptCell = number | string | null | readonly (number | null)[]
export type KeptValue = KeptCell | { rows: readonly (readonly KeptCell[])[] }

/** A state, in the definition's units, and what it came to. */
export interface KeptState {
  given: Given
  outputs: Readonly<Record<string, KeptValue>>
}

/** By calculator. */
export type Kept = Readonly<Record<string, readonly KeptState[]>>

export const KEPT = 'tests/calculators/data/outputs.json'

/** States of each calculator. */
const STATES = 8
const SEED = 31

export const readKept = (): Kept => JSON.parse(readFileSync(KEPT, 'utf8')) as Kept

/** Eight digits: twice what a reader is shown. */
const short = (value: number): number => Number(value.toPrecision(8))

function keptCell(cell: Cell): KeptCell {
  if (typeof cell === 'number') return short(cell)
  if (isInterval(cell))
    return [short(cell.low), short(cell.high), cell.value === undefined ? null : short(cell.value)]
  return isOneOf(cell) ? cell.oneOf.join(' or ') : cell
}

const isRows = (value: OutputValue): value is readonly (readonly Cell[])[] => Array.isArray(value)

/** The results of a state as the record writes them; null where there are none. */
export function outputsAt(definition: WholeCalculator, given: Given): KeptState['outputs'] | null {
  const { now } = evaluate(definition, given, { bikes })
  if (now === null) return null
  return Object.fromEntries(
    Object.entries(now.output).map(([id, value]) => [
      id,
      isRows(value) ? { rows: value.map((row) => row.map(keptCell)) } : keptCell(value),
    ]),
  )
}

/** States of a calculator that give results: as it opens, and random ones. */
export function drawStates(definition: WholeCalculator): Given[] {
  const states: Given[] = [{}]
  for (const given of randomStates(definition, 100 * STATES * STATES, SEED)) {
    if (states.length === STATES) break
    if (outputsAt(definition, given) !== null) states.push(given)
  }
  return states
}

/** One result that is not as the record has it. */
export interface Difference {
  output: string
  given: Given
  was: KeptValue | undefined
  is: KeptValue | undefined
}

/** Rounding to eight digits, of either number. */
const NEAR = 1e-7

function alike(was: unknown, is: unknown): boolean {
  if (typeof was === 'number' && typeof is === 'number')
    // what is 0 but for rounding, as a sum of newtons that cancel, has no digits to compare
    return Math.abs(was - is) <= Math.max(NEAR * Math.max(Math.abs(was), Math.abs(is)), 1e-9)
  if (typeof was !== 'object' || typeof is !== 'object' || was === null || is === null)
    return was === is
  const [before, now] = [Object.entries(was), Object.entries(is)]
  return (
    before.length === now.length &&
    before.every(([key, value]) => alike(value, (is as Record<string, unknown>)[key]))
  )
}

/** How a calculator's results differ from the record; none where every one is as it was. */
export function differences(definition: WholeCalculator, kept: readonly KeptState[]): Difference[] {
  return kept.flatMap(({ given, outputs }) => {
    const now = outputsAt(definition, given) ?? {}
    const names = [...new Set([...Object.keys(outputs), ...Object.keys(now)])]
    return names
      .filter((output) => !alike(outputs[output], now[output]))
      .map((output) => ({ output, given, was: outputs[output], is: now[output] }))
  })
}

/** A difference in a line. */
export const tell = ({ output, given, was, is }: Difference): string =>
  `${output}: ${JSON.stringify(was)} → ${JSON.stringify(is)} at ${JSON.stringify(given)}`
