import { codesOf } from '../../src/machine/cells.ts'
import type { LooseInput } from '../../src/machine/work.ts'
import { describe, expect, test } from 'vitest'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import type { Cell, OutputValue } from '../../src/machine/cells.ts'
import type { Given } from '../../src/machine/given.ts'
import type { Interval } from '../../src/units/interval.ts'
import { defaultsOf, evaluate, isAsked } from '../../src/machine/evaluate.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { ends } from '../../src/units/interval.ts'
import { possibleStates, unknownOf } from '../../src/machine/possible.ts'
import { stream } from '../core/bikes.ts'
import { bikes } from './bikes.ts'
import { randomStates } from './stops.ts'

const definitions = calculatorIds.map(loadCalculator)
const unknowable = ({ inputs }: WholeCalculator, given: Given): string[] =>
  Object.entries(inputs).flatMap(([id, input]) =>
    input.kind === 'quantity' && input.typical && isAsked(input, given) ? [id] : [],
  )

/** Every cell of all results, named. */
function cellsOf(output: Readonly<Record<string, OutputValue>>): [string, Cell][] {
  return Object.entries(output).flatMap(([id, value]): [string, Cell][] => {
    if (!Array.isArray(value)) return [[id, value as Cell]]
    return (value as readonly (readonly Cell[])[]).flatMap((row, r) =>
      row.map((cell, c): [string, Cell] => [`${id}.${r}.${c}`, cell]),
    )
  })
}

/** Rounding where two ways of reckoning one state meet, as a share of the value. */
const ROUNDING = 1e-9

/**
 * Up to four unknowns nothing is lost at all. Past that only ends are combined, and an extreme between them is missed: where a spring or a stop bends a curve, by
 * as much of the width as this (19 % was the most in 43,000 results of random states, most of them bikes that nobody builds).
 */
const PAST_FOUR = 0.2

/** A force over a load that may vanish has no bounds that corners could find. */
const UNBOUNDED = /Grip$/

/** Where a wider state holds less than a narrower one, past a share of its width; null where it holds all of it. */
function lost(narrow: Cell, wide: Cell | undefined, share = 0): string | null {
  const codes = codesOf(narrow)
  if (codes.length > 0) {
    const held = codesOf(wide)
    return codes.every((code) => held.includes(code))
      ? null
      : `“${codes.join(', ')}” against “${held.join(', ')}”`
  }
  const [inner, outer] = [ends(narrow), ends(wide)]
  if (inner === null) return null
  if (outer === null) return 'nothing'
  const slack =
    ROUNDING * Math.max(1e-3, ...inner.map(Math.abs), ...outer.map(Math.abs)) +
    share * (inner[1] - inner[0])
  return outer[0] <= inner[0] + slack && outer[1] >= inner[1] - slack
    ? null
    : `${inner.join(' to ')} against ${outer.join(' to ')}`
}

/** So many states a calculator; a ride is integrated for each state of damping, and its two unknowns make nine of them. A choice among rates searches twice in each. */
const STATES: Readonly<Record<string, number>> = { damping: 3, stance: 12, 'choose-rate': 8 }

describe.each(
  definitions
    .filter(({ inputs }) => Object.values(inputs).some((input) => 'typical' in input))
    .map((each) => [each.id, each] as const),
)('%s with inputs that are not known', (id, definition) => {
  const states = [{}, ...randomStates(definition, STATES[id] ?? 25, 11)] as Given[]

  test('never gets surer by one unknown more: not by a number, not by a verdict', () => {
    const next = stream(5)
    let compared = 0
    for (const state of states) {
      const given: Given = { ...defaultsOf(definition), ...state }
      const order = unknowable(definition, given).sort(() => next() - 0.5)
      // what is not asked "don't know" yet stands at the middle of its range, which is one of the values that it may have
      const known = Object.fromEntries(
        order.map((input) => [input, unknownOf(input, definition.inputs[input] as never).middle]),
      )
      const runs = order.map((_, count) =>
        evaluate(
          definition,
          {
            ...given,
            ...known,
            ...Object.fromEntries(order.slice(0, count + 1).map((input) => [input, 'unknown'])),
          },
          { bikes },
        ),
      )
      for (const [count, wider] of runs.entries()) {
        const narrower = runs[count - 1]
        if (!narrower?.now || !wider.now) continue
        const outer = new Map(cellsOf(wider.now.output))
        for (const [name, cell] of cellsOf(narrower.now.output)) {
          // a verdict on how wide a result is may change with its width; all others only gain
          if ((definition.judge && codesOf(cell).length > 0) || UNBOUNDED.test(name)) continue
          expect(
            lost(cell, outer.get(name), count < 4 ? 0 : PAST_FOUR),
            `${name} of ${JSON.stringify(given)}, ${order.slice(0, count + 1).join(', ')} not known`,
          ).toBeNull()
          compared++
        }
      }
    }
    expect(
      compared + (unknowable(definition, defaultsOf(definition)).length < 2 ? 1 : 0),
    ).toBeGreaterThan(0)
  })

  test('says nothing that hangs on the middle of what is not known', () => {
    for (const state of states) {
      const given: Given = { ...defaultsOf(definition), ...state }
      const unknown = unknowable(definition, given)
      const hidden = { ...given, ...Object.fromEntries(unknown.map((input) => [input, 'unknown'])) }
      const told = evaluate(definition, hidden, { bikes }).now
      if (told === null) continue
      expect(
        evaluate(shifted(definition, unknown), hidden, { bikes }).now?.remarks.map(
          ({ text }) => text,
        ),
      ).toEqual(told.remarks.map(({ text }) => text))
      // and results carry no estimate: only a measured one has that
      for (const [name, cell] of cellsOf(told.output)) {
        const one = evaluate(
          definition,
          {
            ...hidden,
            ...Object.fromEntries(
              unknown.map((input) => [
                input,
                unknownOf(input, definition.inputs[input] as never).low,
              ]),
            ),
          },
          { bikes },
        )
        const isOpen =
          lost(
            new Map(cellsOf(told.output)).get(name) ?? null,
            new Map(cellsOf(one.now?.output ?? {})).get(name),
          ) !== null
        if (isOpen && typeof cell === 'object' && cell !== null)
          expect((cell as Interval).value, name).toBeUndefined()
      }
    }
  })
})

/** The same calculator whose remarks are handed another middle for what is not known. */
function shifted(definition: WholeCalculator, unknown: readonly string[]): WholeCalculator {
  return {
    ...definition,
    remarks(context) {
      const move = (input: unknown): object => ({
        ...(input as object),
        ...Object.fromEntries(
          unknown.map((id) => [id, Number(Reflect.get(input as object, id)) * 1.01]),
        ),
      })
      const before = context.before && { ...context.before, input: move(context.before.input) }
      return definition.remarks({
        ...context,
        input: move(context.input),
        ...(before ? { before } : {}),
      })
    },
  }
}

/** A calculator that adds up so many unknowns, each from 0 to 1 and worth its weight. */
const sum = (weights: readonly number[]) =>
  ({
    id: 'sum',
    order: 10,
    version: 1,
    title: 'Sum',
    question: 'Which spring?' as const,
    answers: 'A sum.',
    assumes: [],
    leavesOut: [],
    inputs: Object.fromEntries(
      weights.map((_, place) => [
        `w${place}`,
        {
          kind: 'quantity',
          label: 'One',
          quantity: 'ratio',
          unit: '',
          range: [0, 1],
          step: 0.1,
          default: 0.5,
          typical: [0, 1],
          typicalFrom: 'a test',
        } as const,
      ]),
    ),
    outputs: { total: { label: 'Total', quantity: 'ratio', unit: '', digits: 1, lead: true } },
    solve: (input: LooseInput) => ({
      outputs: {
        total: weights.reduce(
          (total, weight, place) => total + weight * Number(input[`w${place}`]),
          0,
        ),
      },
      picture: () => undefined,
    }),
    remarks: () => [],
  }) satisfies WholeCalculator

const totalOf = (weights: readonly number[]): readonly [number, number] => {
  const given = Object.fromEntries(weights.map((_, place) => [`w${place}`, 'unknown']))
  return ends(evaluate(sum(weights), given, { bikes: {} }).now!.output.total)!
}

describe('possibleStates', () => {
  const unknowns = (count: number) =>
    Array.from({ length: count }, (_, place) => ({ id: `u${place}`, low: 0, middle: 1, high: 2 }))

  test('possibleStates tries ends and middles of up to four together, and every corner of up to eight', () => {
    expect([0, 1, 2, 4].map((count) => possibleStates(unknowns(count), () => 0).length)).toEqual([
      1, 3, 9, 81,
    ])
    for (const count of [5, 8]) {
      const states = possibleStates(unknowns(count), () => 0)
      const corners = new Set(
        states
          .filter((state) => Object.values(state).every((value) => value !== 1))
          .map((state) => Object.values(state).join()),
      )
      expect(corners.size).toBe(2 ** count)
      expect(states[0]).toEqual(Object.fromEntries(unknowns(count).map(({ id }) => [id, 1])))
    }
  })

  test('possibleStates is the same every time, and of bounded length', () => {
    const weight = (given: Given): number => Number(given['u11']) * 5 + Number(given['u3'])
    const [once, twice] = [
      possibleStates(unknowns(14), weight),
      possibleStates(unknowns(14), weight),
    ]
    expect(once).toEqual(twice)
    expect(once.length).toBeLessThan(1000)
    // the strongest are tried at both ends in every combination of the eight
    expect(
      once.filter((state) => state['u11'] === 2 && state['u3'] === 0).length,
    ).toBeGreaterThanOrEqual(64)
  })

  test('evaluate spans all of a sum of eight unknowns, and nearly all of one of twelve', () => {
    expect(totalOf([1, 2, 3, 4, 5, 6, 7, 8])).toEqual([0, 36])
    const [low, high] = totalOf([10, 1, 9, 1, 8, 1, 7, 1, 6, 5, 4, 3])
    // the eight strongest are worth 52 of 56; of the other four the middle, 2, is always added
    expect(low).toBeLessThanOrEqual(2)
    expect(high).toBeGreaterThanOrEqual(54)
  })
})
