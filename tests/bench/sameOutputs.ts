/**
 * Compares every output of every calculator with another checkout's, at random states on the sliders' stops: `npm run same -- <folder> [states] [calculator …]`.
 * The folder has its packages installed, as by `npm ci`. Inputs that it does not have stand at what its links meant by leaving them out.
 */
import path from 'node:path'
import { compareOutputs, isRounding, verdictsMoved } from './same/compare.ts'
import type { Row } from './same/compare.ts'
import { compute, describe } from './same/outputs.ts'
import type { Described, Told } from './same/outputs.ts'
import { sharedInputs, statesOf } from './same/states.ts'
import type { Pair, Shared } from './same/states.ts'

const SEED = 9946
const [folder = '', count = '500', ...only] = process.argv.slice(2)
if (folder === '') throw new Error('say which checkout to compare with: npm run same -- <folder>')
const other = path.resolve(folder)
const wanted = Number(count)

/** A state as both compute it. */
interface Compared {
  pair: Pair
  is: Told
  was: Told
}

const digits = (value: number): string => String(Number(value.toPrecision(4)))
const state = ({ then }: Pair): string => JSON.stringify(then)

function tellMoved({ moved, unit }: Row): string[] {
  const [rounding, real] = [moved.filter(isRounding), moved.filter((one) => !isRounding(one))]
  const lines = rounding.length > 0 ? [`${rounding.length} numbers differ by rounding`] : []
  if (real.length === 0) return lines
  const by = ({ was, is }: (typeof real)[number]): number => Math.abs(is - was)
  real.sort((a, b) => by(b) - by(a))
  const [most] = real
  return [
    ...lines,
    `${real.length} numbers differ, by ${digits(by(real[real.length >> 1]!))} ${unit} in the middle and ${digits(by(most!))} ${unit} at most: ${digits(most!.was)} → ${digits(most!.is)} at ${state(most!.at)}`,
  ]
}

const tellStates = (what: string, states: readonly Pair[]): string[] =>
  states.length === 0 ? [] : [`${states.length} ${what}, as at ${state(states[0]!)}`]

const usualCode = (codes: ReadonlyMap<string, { times: number }>): string =>
  [...codes].sort(([, one], [, other]) => other.times - one.times)[0]![0]

function tellWords(row: Row): string[] {
  const usual = [...row.words].map(([was, codes]) => [was, usualCode(codes)] as const)
  return [
    ...usual
      .filter(([was, is]) => was !== is)
      .map(([was, is]) => `“${was}” is now ${is || 'none'}`),
    ...verdictsMoved(row).map(
      ({ was, is, times, at }) => `${times} × “${was}” became ${is || 'none'}, as at ${state(at)}`,
    ),
  ]
}

function tellRow(row: Row, count: number): void {
  const lines = [
    ...tellMoved(row),
    ...tellStates('came', row.came),
    ...tellStates('went', row.went),
    ...tellStates('tables of another length', row.resized),
    ...tellStates('have a ± now', row.widened),
    ...tellStates('have no ± now', row.narrowed),
    ...tellWords(row),
  ]
  console.log(`  ${row.name}: ${row.equal} of ${count} equal`)
  for (const line of lines) console.log(`      ${line}`)
}

function tellRefused(all: readonly Compared[]): void {
  const differ = all.filter(({ is, was }) => (is.output === null) !== (was.output === null))
  const refused = all.filter(({ is, was }) => is.output === null && was.output === null).length
  if (refused > 0) console.log(`  ${refused} states besides refused by both`)
  const groups = new Map<string, { times: number; at: Pair }>()
  for (const { pair, is, was } of differ) {
    const words = is.output === null ? `refused now: ${is.refused}` : `refused then: ${was.refused}`
    const key = words.replaceAll(/\d+(?:\.\d+)?/g, '#')
    groups.set(key, { times: (groups.get(key)?.times ?? 0) + 1, at: groups.get(key)?.at ?? pair })
  }
  for (const [words, { times, at }] of groups)
    console.log(`  ${times} states ${words} as at ${state(at)}`)
}

/** A reading that goes with the others is rare among random ones: so many rounds are drawn at the most. */
const ROUNDS = 60

/** Random states until as many as asked for are computed by both. */
function* computedStates(now: Described, then: Described, shared: Shared): Generator<Compared> {
  let left = wanted
  for (let round = 0; round < ROUNDS && left > 0; round++) {
    const pairs = [...statesOf(now, then, shared, 4 * wanted, SEED + round)]
    const is = compute(
      '.',
      pairs.map((pair) => ({ id: now.id, given: pair.now })),
    )
    const was = compute(
      other,
      pairs.map((pair) => ({ id: now.id, given: pair.then })),
    )
    for (const [place, pair] of pairs.entries()) {
      const one = { pair, is: is[place]!, was: was[place]! }
      if (one.is.output !== null && one.was.output !== null) left--
      yield one
      if (left === 0) return
    }
  }
}

function compareCalculator(now: Described, then: Described): void {
  const shared = sharedInputs(now, then)
  const all = [...computedStates(now, then, shared)]
  const rows = compareOutputs(now, then, all)
  const count = all.filter(({ is, was }) => is.output !== null && was.output !== null).length
  console.log(`\n${now.id}: ${count} states computed by both`)
  if (shared.added.length > 0) console.log(`  new inputs: ${shared.added.join(', ')}`)
  if (shared.dropped.length > 0) console.log(`  inputs no more: ${shared.dropped.join(', ')}`)
  const only = (one: object, two: object): string =>
    Object.keys(one)
      .filter((id) => !(id in two))
      .join(', ')
  if (only(now.outputs, then.outputs))
    console.log(`  new outputs: ${only(now.outputs, then.outputs)}`)
  if (only(then.outputs, now.outputs))
    console.log(`  outputs no more: ${only(then.outputs, now.outputs)}`)
  tellRefused(all)
  for (const row of rows) tellRow(row, count)
}

const ours = describe('.')
const theirs = describe(other)
for (const now of ours) {
  if (only.length > 0 && !only.includes(now.id)) continue
  const then = theirs.find(({ id }) => id === now.id)
  if (then === undefined) console.log(`\n${now.id}: not in the other checkout`)
  else compareCalculator(now, then)
}
