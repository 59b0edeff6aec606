import type { WholeCalculator } from '../../src/machine/calculator.ts'
import type { Cell, OutputValue } from '../../src/machine/cells.ts'
import type { Given, GivenValue } from '../../src/machine/given.ts'
import type { Input, QuantityInput } from '../../src/machine/statement.ts'
import { evaluate, isAsked } from '../../src/machine/evaluate.ts'
import { stream } from '../core/bikes.ts'
import { bikes } from './bikes.ts'

/** Calculators whose choices are tried one at a time and not in every combination, of which there are dozens, or whose states take milliseconds each. */
const ONE_CHOICE_AT_A_TIME = new Set(['stance', 'fork-stack', 'find-change', 'choose-rate'])

/**
 * Under the usual choices every stop is tried. Under the others every seventh, and every twenty-third of the calculators above: all of them would take minutes. A ride is
 * integrated for each state of damping, and a choice among rates searches, which take milliseconds, so that there it is every fourth from the start. Both ends are always tried.
 */
function strideOf({ id }: WholeCalculator, usual: boolean): number {
  if (usual) return id === 'damping' || id === 'choose-rate' ? 4 : 1
  return ONE_CHOICE_AT_A_TIME.has(id) ? 23 : 7
}

/** The options of an input, the usual one first. */
function optionsOf(input: Input): string[] {
  if (input.kind !== 'choice' && input.kind !== 'bike') return []
  const all = input.kind === 'choice' ? Object.keys(input.options) : Object.keys(bikes)
  return [input.default, ...all.filter((option) => option !== input.default)]
}

/** The choices under which the sliders are moved, the usual ones first: every combination, or each option alone. */
export function choicesOf({ id, inputs }: WholeCalculator): Given[] {
  const choices = Object.entries(inputs).flatMap(([name, input]) =>
    optionsOf(input).length > 0 ? [[name, optionsOf(input)] as const] : [],
  )
  if (ONE_CHOICE_AT_A_TIME.has(id))
    return [
      {},
      ...choices.flatMap(([name, options]) => options.map((option): Given => ({ [name]: option }))),
    ]
  return choices.reduce<Given[]>(
    (all, [name, options]) =>
      all.flatMap((given) => options.map((option) => ({ ...given, [name]: option }))),
    [{}],
  )
}

/** The choices that an input needs in order to be asked for. */
const neededFor = ({ when }: Input): Given =>
  Object.fromEntries(
    Object.entries(when ?? {}).map(([name, wanted]) => [
      name,
      typeof wanted === 'string' ? wanted : wanted[0]!,
    ]),
  )

/** Every value at which a slider can stop, in the definition's unit, both ends included; and "I don't know" where that may be said. */
export function stopsOf(
  { range: [low, high], step, typical }: QuantityInput,
  every = 1,
): GivenValue[] {
  const count = Math.floor((high - low) / step + 1e-6)
  const stops: GivenValue[] = []
  for (let at = 0; at < count; at += every) stops.push(Number((low + at * step).toPrecision(12)))
  return [...stops, high, ...(typical ? ['unknown'] : [])]
}

/** Each stop of each slider under each of the choices, the other values as they are usually. */
export function* everyStop(definition: WholeCalculator): Generator<Given> {
  for (const [place, choices] of choicesOf(definition).entries()) {
    const every = strideOf(definition, place === 0)
    for (const [name, input] of Object.entries(definition.inputs)) {
      if (input.kind !== 'quantity') continue
      const given = isAsked(input, { ...defaults(definition), ...choices })
        ? choices
        : { ...choices, ...neededFor(input) }
      for (const stop of stopsOf(input, every)) yield { ...given, [name]: stop }
    }
  }
}

const defaults = ({ inputs }: WholeCalculator): Given =>
  Object.fromEntries(
    Object.entries(inputs).flatMap(([name, input]) =>
      input.default === undefined ? [] : [[name, input.default]],
    ),
  )

/** Random states on the sliders' stops: every value drawn anew, one in five at an end, now and then not known or left empty, and tables of random length. */
export function* randomStates(
  { inputs }: Pick<WholeCalculator, 'inputs'>,
  count: number,
  seed: number,
): Generator<Given> {
  const next = stream(seed)
  const pick = <T>(from: readonly T[]): T => from[Math.floor(next() * from.length)]!
  const draw = (input: Input): GivenValue | undefined => {
    if (input.kind === 'quantity') {
      if (input.optional && next() < 0.4) return undefined
      if (input.typical && next() < 0.05) return 'unknown'
      if (next() < 0.2) return pick(input.range)
      const [low, high] = input.range
      return Number(
        (low + Math.floor((next() * (high - low)) / input.step + 1e-6) * input.step).toPrecision(
          12,
        ),
      )
    }
    if (input.kind === 'table') {
      const length =
        input.rows[0] + Math.floor(next() * (Math.min(6, input.rows[1]) - input.rows[0] + 1))
      return Array.from({ length }, () =>
        input.columns.map(({ range: [low, high] }) =>
          Number((low + (high - low) * next()).toPrecision(3)),
        ),
      )
    }
    return input.kind === 'text' ? input.default : pick(optionsOf(input))
  }
  for (let state = 0; state < count; state++) {
    const given = Object.entries(inputs).map(([name, input]) => [name, draw(input)] as const)
    yield Object.fromEntries(given.filter(([, value]) => value !== undefined)) as Given
  }
}

function numbersIn(value: OutputValue): number[] {
  if (Array.isArray(value)) return (value as readonly (readonly Cell[])[]).flat().flatMap(numbersIn)
  if (typeof value === 'number') return [value]
  if (typeof value === 'object' && value !== null && 'low' in value)
    return [value.low, value.high, ...(value.value === undefined ? [] : [value.value])]
  return []
}

/** Whether every number in it is finite. */
function isSound(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value)
  if (typeof value !== 'object' || value === null) return true
  for (const key in value) if (!isSound((value as Record<string, unknown>)[key])) return false
  return true
}

/** A refusal that a reader can act on: no name out of the code, no number to sixteen digits, no unit of the core. */
const READABLE = /^(?!.*(?:[a-z][A-Z]|\bgot\b|NaN|Infinity|undefined|\d\.\d{7}))[A-Z].{20,}$/su

/** What is wrong with what a reader sees of a state; null where nothing is. */
export function faultOf(definition: WholeCalculator, given: Given): string | null {
  const { now, problems, refusal } = evaluate(definition, given, { bikes })
  const named = Object.entries(problems)
  if (refusal !== null) return `refused, but at no field: ${refusal}`
  if (now === null && named.length === 0) return 'no result, and no reason'
  for (const [name, text] of named) {
    if (!(name in definition.inputs)) return `refused at “${name}”, which is no field`
    if (!READABLE.test(text)) return `refused in words that help nobody: ${text}`
  }
  if (now === null) return null
  for (const [name, value] of Object.entries(now.output))
    if (!numbersIn(value).every(Number.isFinite)) return `${name} is no finite number`
  if (!isSound(now.picture)) return 'the picture holds a number that is not finite'
  const odd = now.remarks.find(({ text }) => /NaN|undefined|Infinity|null|object/.test(text))
  return odd === undefined ? null : `a remark is broken: ${odd.text}`
}
