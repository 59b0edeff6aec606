import { describe, expect, test } from 'vitest'
import { calculatorIds } from '../../src/calculators/index.ts'
import { loadTopics } from '../../src/calculators/exercises.ts'
import type { Topic } from '../../src/calculators/exercises.ts'
import type { Calculator } from '../../src/machine/calculator.ts'
import { isNumber } from '../../src/machine/statement.ts'
import { inputOf } from '../../src/machine/state.ts'
import { defaultsOf } from '../../src/machine/evaluate.ts'
import { displayDigits, displayUnit } from '../../src/units/choice.ts'
import { middle } from '../../src/units/interval.ts'
import { fromSI, units } from '../../src/units/units.ts'
import { isRight } from '../../src/worksheet/pose.ts'
import type { Posed } from '../../src/worksheet/pose.ts'
import { commaText } from '../../src/worksheet/decimalMark.ts'
import { DEFAULTS, UNIT_SETS, queryOf, readSettings } from '../../src/worksheet/settings.ts'
import type { Settings } from '../../src/worksheet/settings.ts'
import { makeSheet } from '../../src/worksheet/sheet.ts'
import { bikes } from '../calculators/bikes.ts'

/** A calculator whose work is done once for each state: draws repeat themselves, and a search for a change takes long. */
function remembering({ calculator, ...topic }: Topic): Topic {
  const known = new Map<string, ReturnType<Calculator['solve']>>()
  const solve: Calculator['solve'] = (input) => {
    const key = JSON.stringify(input)
    const solved = known.get(key) ?? calculator.solve(input)
    known.set(key, solved)
    return solved
  }
  return { ...topic, calculator: { ...calculator, solve } }
}

const topics = (await loadTopics(calculatorIds)).map(remembering)
const byId = new Map(topics.map((topic) => [topic.id, topic]))
const sheetOf = (settings: Partial<Settings>) =>
  makeSheet(topics, { ...DEFAULTS, topics: [], ...settings }, bikes)

/** What stands before the unit, read with a point or a comma. */
const numberIn = (text: string): number =>
  Number(/^[+−]?[\d.,]+/.exec(text)?.[0].replace('−', '-').replace(',', '.') ?? Number.NaN)

/** The result by the calculator's work alone, without the machine that the sheet goes through. */
function solvedApart({ topic, exercise: id, given }: Posed, set: Settings['units']) {
  const { calculator, exercises } = byId.get(topic)!
  const { asks } = exercises.find((each) => each.id === id)!
  const context = { bikes, choice: UNIT_SETS[set] }
  const { outputs } = calculator.solve(
    inputOf(calculator, { ...defaultsOf(calculator), ...given }, context),
  )
  const output = calculator.outputs[asks]!
  if (!isNumber(output)) throw new Error(asks)
  const shown = displayUnit(output.unit, UNIT_SETS[set])
  const si = middle(outputs[asks])!
  return {
    value: output.difference || output.signed ? si / units[shown].factor : fromSI(si, shown),
    place: 10 ** -displayDigits(output.digits, output.unit, shown),
    symbol: units[shown].symbol,
  }
}

function check(posed: Posed, { units: set }: Settings): void {
  const about = `${posed.topic}/${posed.exercise} ${JSON.stringify(posed.given)}`
  const texts = posed.options.map(({ text }) => text)
  const { value, place, symbol } = solvedApart(posed, set)
  expect(new Set(texts).size, about).toBe(texts.length)
  expect(texts.length, about).toBeGreaterThanOrEqual(3)
  expect(
    texts.every((text) => text.endsWith(symbol)),
    `${about}: ${texts.join(' | ')}`,
  ).toBe(true)
  expect(posed.options.filter(isRight).length, about).toBe(1)
  // half a unit of the last place shown, and the last bit of a binary sum
  const within = (text: string) => Math.abs(numberIn(text) - value) <= place / 2 + 1e-9
  expect(
    posed.options.filter(({ text }) => within(text)),
    about,
  ).toEqual(posed.options.filter(isRight))
  expect(posed.text, about).not.toMatch(/undefined|NaN|null|Infinity|\d\.\d{5}/)
}

describe('makeSheet', () => {
  test('gives 10,000 questions with one right answer each, none equal, all possible, with units', () => {
    let asked = 0
    for (let seed = 1; asked < 10_000; seed++) {
      const set = (['metric', 'imperial', 'kgf'] as const)[seed % 3]!
      const settings = { ...DEFAULTS, topics: [], seed, n: 40, units: set }
      const { questions, short } = makeSheet(topics, settings, bikes)
      expect(short).toBeNull()
      expect(new Set(questions.map(({ text }) => text)).size).toBe(40)
      for (const posed of questions) check(posed, settings)
      asked += questions.length
    }
  })

  const written = (settings: Partial<Settings>): string[] =>
    sheetOf(settings).questions.map(({ text, options }) =>
      `${text} ${options.map((option) => option.text).join(' | ')}`.replaceAll('\u00a0', ' '),
    )

  test('gives the same sheet for the same number, here as on every machine and in every build', () => {
    expect(written({ seed: 7, topics: ['sag', 'rear-rate'], n: 2 })).toEqual([
      'The exposed tube reads 150 mm hanging, 110 mm after pushing down and 115 mm after lifting. What is the sag? 112.5 mm | 35.0 mm | 40.0 mm | 37.5 mm',
      'A rear spring of 100 N/mm works at a leverage of 2.4 : 1, the same all the way. What is the rate at the wheel? 7.2 N/mm | 17.4 N/mm | 41.7 N/mm | 100.0 N/mm',
    ])
    expect(written({ seed: 8, topics: ['sag', 'rear-rate'], n: 6 })).not.toEqual(
      written({ seed: 7, topics: ['sag', 'rear-rate'], n: 6 }),
    )
  })

  test('does not change a sheet with the order in which topics are named', () => {
    expect(written({ topics: ['rear-rate', 'sag'] })).toEqual(
      written({ topics: ['sag', 'rear-rate'] }),
    )
  })

  test('asks each exercise once before any comes again', () => {
    const asked = sheetOf({ topics: ['sag', 'rear-rate'], n: 6 }).questions.map(
      ({ exercise }) => exercise,
    )
    expect(new Set(asked).size).toBe(6)
  })

  test('keeps to the level and the topics', () => {
    const { questions } = sheetOf({ level: 1, n: 20 })
    for (const { topic, exercise } of questions)
      expect(byId.get(topic)!.exercises.find(({ id }) => id === exercise)!.level).toBe(1)
    expect(
      sheetOf({ topics: ['trail'], n: 5 }).questions.every(({ topic }) => topic === 'trail'),
    ).toBe(true)
  })

  test('says so where there are no more questions, and gives those that there are', () => {
    const { questions, short } = sheetOf({ topics: ['sag'], level: 3, n: 5 })
    expect(questions).toEqual([])
    expect(short).toContain('choose another level')
    expect(sheetOf({ topics: ['damping'], units: 'imperial', n: 5 }).short).toContain('metric')
    const few = sheetOf({ topics: ['tyre-radius'], level: 1, n: 40 })
    expect(few.questions.length).toBeGreaterThan(3)
    expect(few.short).toContain(`${few.questions.length} different questions`)
  })

  test('writes a decimal comma throughout, and leaves markings and thousands readable', () => {
    const texts = written({ topics: ['rear-rate', 'fork-stack'], n: 30, comma: true })
    expect(texts.join(' ')).toMatch(/\d,\d/)
    expect(texts.join(' ').replaceAll(/M\d+ × \d\.\d+/g, '')).not.toMatch(/\d\.\d/)
    expect(commaText('about 3,139 N·s/m at 0.5')).toBe('about 3\u202f139 N·s/m at 0,5')
  })

  test('gives numbers to the step of what they are read with', () => {
    const { questions } = sheetOf({ topics: ['sag', 'marks'], units: 'imperial', n: 20 })
    // a rule in hundredths of an inch
    for (const { text } of questions)
      for (const [, inches] of text.matchAll(/([\d.]+)\sin/g)) expect(inches).toMatch(/^\d\.\d\d$/)
  })
})

describe('readSettings', () => {
  const read = (query: string) => readSettings(new URLSearchParams(query), calculatorIds)

  test('reads what queryOf writes', () => {
    const settings: Settings = {
      seed: 42,
      topics: ['sag', 'trail'],
      level: 2,
      n: 5,
      units: 'kgf',
      comma: true,
    }
    expect(read(queryOf(settings))).toEqual({ settings, problems: [] })
  })

  test.each([
    ['seed=-3', '“-3” can’t be used for the seed'],
    ['n=400', 'whole number from 1 to 40'],
    ['n=two', '“two” can’t be used for the number of questions'],
    ['topics=sag,sagg', 'There is no topic “sagg”'],
    ['level=9', '“9” is no level of a sheet: use all, 1, 2, 3'],
    ['units=cubits', 'use metric, kgf, imperial'],
  ])('tells what is wrong with %s', (query, told) => {
    expect(read(query).problems.join(' ')).toContain(told)
  })
})
