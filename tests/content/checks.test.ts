import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { givenProblems } from '../../src/build/prose/given.ts'
import { calls } from '../../src/checks/calls.ts'
import { inputToSI, readPrinted } from '../../src/checks/quantity.ts'
import { runChecks } from '../../src/checks/published.ts'
import type { Check, CheckTopic } from '../../src/checks/schema.ts'
import { isCalculatorId, loadCalculator } from '../../src/calculators/index.ts'

const root = new URL('../../content/', import.meta.url)
const yaml = (path: string): unknown => parse(readFileSync(new URL(path, root), 'utf8'))

const topics = readdirSync(new URL('checks/', root)).map((name) => yaml(`checks/${name}`) as CheckTopic)
const sources = new Set((yaml('sources.yaml') as { id: string }[]).map(({ id }) => id))
const bikes = Object.fromEntries(readdirSync(new URL('bikes/', root)).map((name) => [name.replace(/\.yaml$/, ''), {}]))
const checks = topics.flatMap((topic) => topic.checks)
const values = checks.flatMap((check) => check.expect.map((value) => ({ check, value })))
const run = runChecks(topics)

/** A small set of one check, to see the runner refuse. */
const only = (check: Partial<Check>): CheckTopic[] => [
  { topic: 'One', order: 1, about: '', checks: [{ id: 'one', title: 'One', call: 'unit', expect: [], source: 'gnu-units', provenance: 'memory', ...check }] },
]

describe('content/checks', () => {
  test('runChecks(topics) reproduces every published value within its tolerance', () => {
    expect(run.failures).toEqual([])
    expect(run.values).toBe(values.length)
  })

  test('runChecks(topics) counts at least 250 distinct outside values, and fewer than are shown', () => {
    expect(run.distinct).toBeGreaterThanOrEqual(250)
    expect(run.distinct).toBeLessThan(run.values)
  })

  test('content/checks has unique ids, and names only sources, calls and calculators that exist', () => {
    const ids = checks.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(checks.filter(({ source }) => !sources.has(source)).map(({ id, source }) => `${id}: ${source}`)).toEqual([])
    expect(checks.filter(({ call }) => calls[call] === undefined).map(({ id, call }) => `${id}: ${call}`)).toEqual([])
    expect(checks.filter(({ calculator }) => calculator !== undefined && !isCalculatorId(calculator)).map(({ id, calculator }) => `${id}: ${calculator}`)).toEqual([])
  })

  test('content/checks gives a reason for every tolerance', () => {
    expect(values.filter(({ check, value }) => (value.because ?? check.because ?? '').length < 8).map(({ check, value }) => `${check.id}: ${value.what}`)).toEqual([])
  })

  test('content/checks allows no tolerance that would let a wrong answer pass: a hundredth of the value, or half a unit of its last digit', () => {
    const wide = values.filter(({ value }) => {
      const printed = readPrinted(value.is)!
      const [, places = ''] = /\.(\d+)/.exec(String(value.is)) ?? []
      const power = Number(/e([+-]?\d+)/i.exec(String(value.is))?.[1] ?? 0)
      return value.tolerance > Math.max(0.01 * Math.abs(printed.value), 0.5000001 * 10 ** (power - places.length))
    })
    expect(wide.map(({ check, value }) => `${check.id}: ${value.what}`)).toEqual([])
  })

  test('content/checks points with sameAs at a value that exists and is counted itself', () => {
    const known = new Map(values.map(({ check, value }) => [`${check.id}/${value.what}`, value]))
    const astray = values.filter(({ value }) => value.sameAs !== undefined && (!known.has(value.sameAs) || known.get(value.sameAs)?.sameAs !== undefined))
    expect(astray.map(({ check, value }) => `${check.id}: ${value.sameAs}`)).toEqual([])
  })

  test('givenProblems(…) finds nothing wrong with the inputs that a check loads into its calculator', async () => {
    const loaded = checks.filter(({ calculator, given }) => given !== undefined && calculator !== undefined && isCalculatorId(calculator))
    expect(loaded.length).toBeGreaterThan(0)
    for (const { id, calculator, given } of loaded) expect(givenProblems(loadCalculator(calculator!), given!, bikes), id).toEqual([])
  })
})

describe('runChecks', () => {
  test('runChecks(…) fails a value that lies outside its tolerance, and says by how much', () => {
    const { failures } = runChecks(only({ with: { of: '1 in' }, expect: [{ what: 'an inch', is: '25.5 mm', tolerance: 0.05, because: 'half a digit' }] }))
    expect(failures).toHaveLength(1)
    expect(failures[0]).toMatch(/^one: an inch is published as 25\.5 mm, ours is 25\.4, off by -0\.1/)
  })

  test('runChecks(…) fails what the core refuses, a call that is not there, and a path that leads to no number', () => {
    const value = [{ what: 'rate', is: '1 N/m', tolerance: 1, because: 'any' }]
    expect(runChecks(only({ call: 'coilRate', with: {}, expect: value })).failures[0]).toMatch(/^one: rate: .*Diameter/)
    expect(runChecks(only({ call: 'nothing', expect: value })).failures[0]).toContain('no call “nothing”')
    expect(runChecks(only({ with: { of: 1 }, expect: [{ ...value[0]!, of: 'rate' }] })).failures[0]).toContain('no number at “rate”')
  })

  test('runChecks(…) counts a unit and its inverse once, and a value with sameAs not at all', () => {
    const [topic] = only({ with: { of: '1 lbf' }, expect: [{ what: 'force', is: '4.4482 N', tolerance: 1e-4, because: 'rounding' }] })
    const inverse = { ...topic!.checks[0]!, id: 'two', with: { of: '1 N' }, expect: [{ what: 'force', is: '0.22481 lbf', tolerance: 1e-5, because: 'rounding' }] }
    const again = { ...topic!.checks[0]!, id: 'three', with: { of: '1 ft' }, expect: [{ what: 'foot', is: '0.3048 m', tolerance: 1e-9, because: 'exact', sameAs: 'one/force' }] }
    expect(runChecks([{ ...topic!, checks: [topic!.checks[0]!, inverse, again] }])).toMatchObject({ distinct: 1, values: 3, failures: [] })
  })
})

describe('inputToSI', () => {
  test('inputToSI(…) reads units, products and quotients, and leaves texts alone', () => {
    expect(inputToSI({ d: '0.5 in', list: ['2 × 35 mm', '10 lbf / 20 in/s²'], marking: '120/70-17', count: 3 })).toEqual({
      d: 0.0127,
      list: [0.07, (10 * 4.4482216152605) / (20 * 0.0254)],
      marking: '120/70-17',
      count: 3,
    })
  })

  test('inputToSI(…) refuses a unit that no table holds', () => {
    expect(() => inputToSI('5 furlongs')).toThrow('there is no unit “furlongs”')
  })
})
