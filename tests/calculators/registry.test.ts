import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { loadFigure } from '../../src/calculators/browser.ts'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import type { Cell, OutputValue } from '../../src/machine/cells.ts'
import type { Given, GivenValue } from '../../src/machine/given.ts'
import type { CardStatement, Input } from '../../src/machine/statement.ts'
import type { Work } from '../../src/machine/work.ts'
import { defaultsOf, evaluate, isAsked } from '../../src/machine/evaluate.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { calculatorOf } from '../../src/machine/calculator.ts'
import { cardStatementOf } from '../../src/machine/statement.ts'
import { bikes } from './bikes.ts'

const definitions = calculatorIds.map(loadCalculator)

function extremes(input: Input): GivenValue[] {
  if (input.kind === 'quantity') return [...input.range, ...(input.typical ? ['unknown'] : [])]
  if (input.kind === 'choice') return Object.keys(input.options)
  if (input.kind === 'bike') return Object.keys(bikes)
  if (input.kind === 'table') {
    const rows = (count: number, end: 0 | 1): number[][] =>
      Array.from({ length: count }, () => input.columns.map((column) => column.range[end]))
    return [
      rows(Math.max(1, input.rows[0]), 0),
      rows(Math.max(1, input.rows[0]), 1),
      rows(input.rows[1], 1),
    ]
  }
  return [input.default, '']
}

/** Where a state takes milliseconds, every fifth pair is tried here: tests/calculators/stops.test.ts tries the rest at random. */
const SLOW = new Set(['choose-rate'])

/** Every corner of two inputs at a time, with the others at their defaults, and all inputs low and all high. */
function corners(definition: WholeCalculator): Given[] {
  const sides = Object.entries(definition.inputs).map(([id, input]) => ({
    id,
    values: extremes(input),
  }))
  const pairs = sides.flatMap((one, index) =>
    sides
      .slice(index + 1)
      .flatMap((two) =>
        one.values.flatMap((a) => two.values.map((b) => ({ [one.id]: a, [two.id]: b }))),
      ),
  )
  const all = (place: number): Given =>
    Object.fromEntries(
      sides.map(({ id, values }) => [id, values[Math.min(place, values.length - 1)]!]),
    )
  return [
    all(0),
    all(1),
    ...pairs.filter((_, place) => !SLOW.has(definition.id) || place % 5 === 0),
  ]
}

function numbersIn(value: OutputValue): number[] {
  if (Array.isArray(value)) return (value as readonly (readonly Cell[])[]).flat().flatMap(numbersIn)
  if (typeof value === 'number') return [value]
  if (typeof value === 'object' && value !== null && 'low' in value)
    return [value.low, value.high, ...(value.value === undefined ? [] : [value.value])]
  return []
}

const sentence = /^[A-Z0-9“‘(].*[.?:]$/su

test('the registry has the twenty-four calculators, in the order of the overview', () => {
  expect(calculatorIds).toEqual([
    'marks',
    'coil-rate',
    'spring-test',
    'preload-versus-rate',
    'sag',
    'rate-from-sag',
    'choose-rate',
    'fork-stack',
    'progressive-spring',
    'ride-height',
    'trail',
    'tyre-radius',
    'wheel-loads',
    'cg-height',
    'braking-dive',
    'oil-height',
    'oil-viscosity',
    'damping',
    'rear-rate',
    'chain-slack',
    'lean-clearance',
    'stance',
    'find-change',
    'steering-modes',
  ])
})

test('every calculator has a page and questions of its own', () => {
  const pages = readdirSync('content/calculators')
    .map((file) => file.replace(/\.mdx$/, ''))
    .sort()
  expect(pages).toEqual([...calculatorIds].sort())
  const questions = calculatorIds
    .filter((id) => readdirSync(`src/calculators/${id}`).includes('questions.ts'))
    .sort()
  expect(questions).toEqual([...calculatorIds].sort())
})

test('loadCalculator of an unknown id names those that are known', () => {
  expect(() => loadCalculator('none')).toThrow(/there is no calculator “none”; known are .*sag/)
})

describe.each(definitions.map((definition) => [definition.id, definition] as const))(
  '%s',
  (id, definition) => {
    test('has the id of its file and a figure', async () => {
      expect(calculatorIds).toContain(definition.id)
      expect((await import(`../../src/calculators/${id}/statement.ts`)).default.id).toBe(id)
      expect(await loadFigure(id)).not.toBeNull()
    })

    test('is put together again from the statement in a page and the work, and computes the same', async () => {
      const { remarks } = definition
      const { default: work } = (await import(`../../src/calculators/${id}/solve.ts`)) as {
        default: Work
      }
      const statement = JSON.parse(JSON.stringify(cardStatementOf(definition))) as CardStatement
      const calculator = calculatorOf(statement, work)
      expect(calculator.inputs).toEqual(definition.inputs)
      expect(calculator.outputs).toEqual(definition.outputs)
      const [whole, parts] = [definition, { ...calculator, remarks }].map((each) =>
        evaluate(each, {}, { bikes }),
      )
      // functions among what is drawn (a pose's change of frame) are made anew each time
      expect(JSON.stringify(parts)).toBe(JSON.stringify(whole))
    })

    test('has a work and remarks that load without its words', () => {
      for (const part of ['solve', 'remarks']) {
        const source = readFileSync(path.resolve(`src/calculators/${id}/${part}.ts`), 'utf8')
        const values = [
          ...source.matchAll(/^import (?!type\b)(?:\{[^}]*\}|\* as \w+|\w+) from '(\.\/[^']+)'/gm),
        ].map((match) => match[1]!)
        expect(
          values.filter((file) => /\/(statement|fields|inputs)\.ts$/.test(file)),
          part,
        ).toEqual([])
      }
    })

    test('shows at most four controls at first', () => {
      const given = defaultsOf(definition)
      expect(
        Object.values(definition.inputs).filter((input) => !input.more && isAsked(input, given))
          .length,
      ).toBeLessThanOrEqual(4)
    })

    test('has defaults in range and on a step, and typical ranges within the range', () => {
      for (const [name, input] of Object.entries(definition.inputs)) {
        if (input.kind !== 'quantity') continue
        const [low, high] = input.range
        expect(low, name).toBeLessThan(high)
        for (const edge of input.typical ?? [])
          expect(edge >= low && edge <= high, `${name}: typical`).toBe(true)
        if (input.typical)
          expect(input.typicalFrom, `${name}: where its typical range comes from`).toBeTruthy()
        if (input.default === undefined) {
          expect(input.optional, name).toBe(true)
          continue
        }
        expect(input.default >= low && input.default <= high, `${name}: default in range`).toBe(
          true,
        )
        const steps = (input.default - low) / input.step
        // a ten-thousandth of a step covers the rounding of decimals such as 0.1
        expect(Math.abs(steps - Math.round(steps)), `${name}: default on a step`).toBeLessThan(1e-4)
      }
    })

    test('computes its defaults, with a reading', () => {
      const { now, problems, refusal } = evaluate(definition, {}, { bikes })
      expect({ problems, refusal }).toEqual({ problems: {}, refusal: null })
      expect(now!.remarks[0]?.kind).toBe('reading')
      for (const remark of now!.remarks) expect(remark.text).toMatch(sentence)
      expect(Object.keys(now!.output).sort()).toEqual(Object.keys(definition.outputs).sort())
    })

    test('gives finite numbers or a named refusal at every corner of its ranges', () => {
      for (const corner of corners(definition)) {
        const { now, problems, refusal } = evaluate(definition, corner, { bikes })
        if (now === null) {
          expect(refusal ?? Object.values(problems).join(), JSON.stringify(corner)).toMatch(
            /\w{3,}/,
          )
          continue
        }
        for (const [name, value] of Object.entries(now.output)) {
          for (const number of numbersIn(value))
            expect(Number.isFinite(number), `${name} at ${JSON.stringify(corner)}`).toBe(true)
        }
        for (const remark of now.remarks)
          expect(remark.text, JSON.stringify(corner)).not.toMatch(/NaN|undefined|Infinity|null/)
      }
    })

    test('says what it assumes and what it leaves out', () => {
      expect(definition.assumes.length).toBeGreaterThan(0)
      expect(definition.leavesOut.length).toBeGreaterThan(0)
      for (const text of [definition.answers, ...definition.assumes, ...definition.leavesOut])
        expect(text).toMatch(sentence)
    })
  },
)
