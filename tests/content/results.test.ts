import { describe, expect, test } from 'vitest'
import { isCalculatorId, loadCalculator } from '../../src/calculators/index.ts'
import { readingsOf } from '../../src/record/worked.ts'
import { compared, result } from '../../src/record/resultSchema.ts'
import { listed, procedures } from './entries.ts'

/* What readings come to: data that name readings, steps, calculators and their inputs. */

const specs = listed('results.yaml').map((each) => result.parse(each))
const all = procedures()
const readings = new Set(all.flatMap(({ readings: own }) => own.map(({ id }) => id)))
const steps = new Set(all.flatMap(({ id, steps: own }) => own.map((step) => `${id}/${step.id}`)))

describe.each(specs)('$id', ({ calculator, at, inputs, maybe, shows }) => {
  test('names readings, steps, inputs and outputs that exist', () => {
    const named = [...Object.values(inputs), ...Object.values(maybe)].flatMap((source) => readingsOf(source))
    expect(named.filter((id) => !readings.has(id))).toEqual([])
    expect(at.filter((step) => !steps.has(step))).toEqual([])
    if (!isCalculatorId(calculator)) throw new Error(calculator)
    const { inputs: fields, outputs } = loadCalculator(calculator)
    expect(Object.keys({ ...inputs, ...maybe }).filter((id) => !(id in fields))).toEqual([])
    expect(shows.filter(({ output }) => !(output in outputs) && !(output in inputs))).toEqual([])
    expect(shows.filter((show) => show.with !== undefined && !(show.with in maybe))).toEqual([])
  })
})

test('results stand for every kind of reading that a calculator takes', () => {
  expect([...new Set(specs.map(({ calculator }) => calculator))].sort()).toEqual(['cg-height', 'coil-rate', 'rate-from-sag', 'rear-rate', 'sag', 'spring-test', 'trail'])
})

test('what is compared names results, and readings of what was worked out', () => {
  const rows = listed('compared.yaml').map((each) => compared.parse(each))
  const ids = new Set(specs.map(({ id }) => id))
  expect(rows.flatMap(({ before, after }) => [before, after]).filter((id) => !ids.has(id))).toEqual([])
  expect(rows.flatMap(({ forecast = 'sagForecast', within = 'sagForecastWithin' }) => [forecast, within]).filter((id) => !readings.has(id))).toEqual([])
})
