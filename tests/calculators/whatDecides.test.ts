import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { calculatorOf } from '../../src/machine/calculator.ts'
import type { Calculator, WholeCalculator } from '../../src/machine/calculator.ts'
import { defaultsOf, evaluate, isAsked } from '../../src/machine/evaluate.ts'
import type { Given } from '../../src/machine/given.ts'
import { defineStatement } from '../../src/machine/statement.ts'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { whatDecides } from '../../src/machine/whatDecides.ts'
import { defineWork, InputRefusal } from '../../src/machine/work.ts'
import { ends } from '../../src/units/interval.ts'
import { near } from '../core/near.ts'
import { bikes } from './bikes.ts'
import { between } from '../core/draws.ts'

const context = { bikes }

/** A calculator of lengths [mm] by id with their ranges, and one result [m] of a function of them in millimetres. */
function inventedOf(
  ranges: Readonly<Record<string, readonly [number, number]>>,
  f: (values: Readonly<Record<string, number>>) => number | string | null,
): Calculator {
  const inputs = Object.entries(ranges).map(([id, typical]): [string, QuantityInput] => [
    id,
    {
      kind: 'quantity',
      label: id,
      quantity: 'length',
      unit: 'mm',
      range: [-1000, 1000],
      step: 0.001,
      default: 1,
      typical,
      typicalFrom: 'invented',
    },
  ])
  return {
    id: 'invented',
    version: 1,
    title: 'Invented',
    inputs: Object.fromEntries(inputs),
    outputs: { result: { label: 'Result', quantity: 'length', unit: 'mm', digits: 3, lead: true } },
    solve: (input: Record<string, number>) => {
      const mm = Object.fromEntries(Object.entries(input).map(([id, si]) => [id, si * 1e3]))
      const result = f(mm)
      return {
        outputs: { result: typeof result === 'number' ? result / 1e3 : result },
        picture: () => undefined,
      }
    },
  } as unknown as Calculator
}

const unknown = (...ids: string[]): Given => Object.fromEntries(ids.map((id) => [id, 'unknown']))

describe('whatDecides', () => {
  test('whatDecides(…) of a sum is the widest range, and leaves the rest: worked by hand', () => {
    // 10 a + b + c over a 2…4, b 0…6, c 1…2: 21 to 48 in all; a alone moves 20 of 27
    const sum = inventedOf({ a: [2, 4], b: [0, 6], c: [1, 2] }, ({ a, b, c }) => 10 * a! + b! + c!)
    const { input, low, high, leaves } = whatDecides(
      sum,
      unknown('a', 'b', 'c'),
      context,
      'result',
    )!
    expect(input).toBe('a')
    near(low * 1e3, 24.5, 1e-9) // b and c in the middle: 20 + 3 + 1.5
    near(high * 1e3, 44.5, 1e-9)
    near(leaves.low * 1e3, 31, 1e-9) // a at 3: 30 + 0 + 1
    near(leaves.high * 1e3, 38, 1e-9)
  })

  test('whatDecides(…) of a quotient weighs each range by what it does, not by its own size: worked by hand', () => {
    // a/b with a 90…110 (20 wide) and b 1…2 (1 wide): b moves it from 50 to 100, a by 13
    const quotient = inventedOf({ a: [90, 110], b: [1, 2] }, ({ a, b }) => a! / b!)
    const { input, leaves } = whatDecides(quotient, unknown('a', 'b'), context, 'result')!
    expect(input).toBe('b')
    near(leaves.low * 1e3, 60, 1e-9)
    near(leaves.high * 1e3, 110 / 1.5, 1e-9)
  })

  test('whatDecides(…) sees an extreme in the middle of a range', () => {
    // a parabola: its ends are alike, its middle is not
    const bent = inventedOf({ a: [-4, 4], b: [0, 1] }, ({ a, b }) => a! * a! + b!)
    const { input, low, high } = whatDecides(bent, unknown('a', 'b'), context, 'result')!
    expect(input).toBe('a')
    near(low * 1e3, 0.5, 1e-9)
    near(high * 1e3, 16.5, 1e-9)
  })

  test('whatDecides(…) of one unknown leaves a point', () => {
    const one = inventedOf({ a: [1, 3] }, ({ a }) => 2 * a!)
    const { leaves } = whatDecides(one, unknown('a'), context, 'result')!
    expect([leaves.low, leaves.high].map((si) => si * 1e3)).toEqual([4, 4])
  })

  test('whatDecides(…) is null with nothing unknown, with a text for a result, with none, and with a state that is refused', () => {
    const of = (f: Parameters<typeof inventedOf>[1]) => inventedOf({ a: [1, 3] }, f)
    const plain = of(({ a }) => a!)
    expect(whatDecides(plain, { a: 2 }, context, 'result')).toBeNull()
    expect(
      whatDecides(
        of(() => 'a text'),
        unknown('a'),
        context,
        'result',
      ),
    ).toBeNull()
    expect(
      whatDecides(
        of(() => null),
        unknown('a'),
        context,
        'result',
      ),
    ).toBeNull()
    expect(whatDecides(plain, unknown('a'), context, 'none')).toBeNull()
    const refused = of(({ a }) => {
      if (a! > 2) throw new InputRefusal('a', 'Too long')
      return a!
    })
    expect(whatDecides(refused, unknown('a'), context, 'result')).toBeNull()
    expect(whatDecides(plain, { a: 'nonsense' }, context, 'result')).toBeNull()
  })

  test('whatDecides(…) lets a fault of a calculator through', () => {
    const faulty = inventedOf({ a: [1, 3] }, () => {
      throw new TypeError('a fault')
    })
    expect(() => whatDecides(faulty, unknown('a'), context, 'result')).toThrow(TypeError)
  })

  test('whatDecides(…) never names an input that changes nothing, among up to twelve unknowns', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            weight: fc.oneof(fc.constant(0), fc.double({ min: -5, max: 5, noNaN: true })),
            power: fc.constantFrom(1, 2),
            low: fc.double({ min: -50, max: 50, noNaN: true }),
            width: between(0, 20),
          }),
          { minLength: 1, maxLength: 12 },
        ),
        (terms) => {
          const ranges = Object.fromEntries(
            terms.map(({ low, width }, place) => [`x${place}`, [low, low + width] as const]),
          )
          const sum = inventedOf(ranges, (values) =>
            terms.reduce(
              (total, { weight, power }, place) => total + weight * values[`x${place}`]! ** power,
              0,
            ),
          )
          const decided = whatDecides(sum, unknown(...Object.keys(ranges)), context, 'result')
          const moves = ({ weight, width }: (typeof terms)[number]): boolean =>
            weight !== 0 && width > 0
          if (decided === null) return
          expect(moves(terms[Number(decided.input.slice(1))]!)).toBe(true)
          const whole = ends(
            evaluate(sum, unknown(...Object.keys(ranges)), context).now!.output['result'],
          )!
          expect(decided.leaves.high - decided.leaves.low).toBeLessThan(whole[1] - whole[0])
        },
      ),
      { numRuns: 60 },
    )
  })
})

const definitions = calculatorIds
  .map(loadCalculator)
  .filter(({ inputs }) => Object.values(inputs).some((input) => 'typical' in input))

/** A ride is integrated for every state of damping: it is left to the calculators that answer at once. */
const SLOW = ['damping', 'stance']

describe.each(
  definitions.filter(({ id }) => !SLOW.includes(id)).map((each) => [each.id, each] as const),
)('whatDecides for %s', (_id, definition: WholeCalculator) => {
  test('names an unknown input of its own whose measuring narrows the result, for every lead', () => {
    const given = defaultsOf(definition)
    const ids = Object.entries(definition.inputs).flatMap(([id, input]) =>
      input.kind === 'quantity' && input.typical && isAsked(input, given) ? [id] : [],
    )
    const state = { ...given, ...unknown(...ids) }
    const { now } = evaluate(definition, state, context)
    for (const [id, output] of Object.entries(definition.outputs)) {
      if (!('lead' in output && output.lead)) continue
      const decided = whatDecides(definition, state, context, id)
      const whole = ends(now?.output[id])
      if (decided === null) continue
      expect(ids).toContain(decided.input)
      const { low, high } = decided.leaves
      expect(high - low).toBeLessThan(whole![1] - whole![0])
      expect(low).toBeGreaterThanOrEqual(whole![0] - 1e-12)
      expect(high).toBeLessThanOrEqual(whole![1] + 1e-12)
    }
  })
})

test('whatDecides(…) is what a statement and its work can be asked', () => {
  const statement = defineStatement({
    id: 'halves',
    order: 1,
    version: 1,
    title: 'Halves',
    question: 'Where does it sit?',
    answers: 'Half a length.',
    assumes: [],
    leavesOut: [],
    inputs: {
      whole: {
        kind: 'quantity',
        label: 'Whole',
        quantity: 'length',
        unit: 'mm',
        range: [0, 10],
        step: 1,
        default: 4,
        typical: [2, 6],
      },
    },
    outputs: { half: { label: 'Half', quantity: 'length', unit: 'mm', digits: 1, lead: true } },
  })
  const work = defineWork<typeof statement>({
    solve: ({ whole }) => ({ outputs: { half: whole / 2 }, picture: () => null }),
  })
  expect(whatDecides(calculatorOf(statement, work), { whole: 'unknown' }, context, 'half')).toEqual(
    {
      input: 'whole',
      low: 0.001,
      high: 0.003,
      leaves: { low: 0.002, high: 0.002 },
    },
  )
})
