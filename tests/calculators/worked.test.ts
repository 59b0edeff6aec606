import { expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { loadWorkedChecks, runWorked } from '../../src/checks/worked.ts'
import { bikes } from './bikes.ts'

test.each(calculatorIds)('%s answers its hand-worked cases', async (id) => {
  const checks = await loadWorkedChecks(id)
  expect(checks.length).toBeGreaterThanOrEqual(2)
  for (const { check, values, problem } of runWorked(loadCalculator(id), checks, bikes)) {
    expect(problem, check.title).toBeUndefined()
    expect(check.working.length, check.title).toBeGreaterThan(20)
    expect(
      values.filter(({ passes }) => !passes),
      check.title,
    ).toEqual([])
  }
})
