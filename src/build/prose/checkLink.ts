import type { Check } from '../../checks/schema.ts'
import type { BikeSheets } from '../../bikes/sheet.ts'
import { defaultsOf } from '../../machine/evaluate.ts'
import { isCalculatorId, loadCalculator } from '../../calculators/index.ts'
import { encodeLink } from '../../machine/writeLink.ts'
import { givenProblems } from './given.ts'

/** A calculator beside a check: with the published inputs where its fields can hold them, else as it stands. */
export interface CheckLink {
  title: string
  /** address below the site's base */
  to: string
  loaded: boolean
}

/** The link of a check to its calculator, or null. Values that the calculator would refuse stop the build. */
export async function linkOf(check: Check, bikes: BikeSheets): Promise<CheckLink | null> {
  const { calculator, given } = check
  if (calculator === undefined || !isCalculatorId(calculator)) return null
  const definition = loadCalculator(calculator)
  const to = `calculators/${calculator}/`
  if (given === undefined) return { title: definition.title, to, loaded: false }
  const problems = givenProblems(definition, given, bikes)
  if (problems.length > 0) throw new Error(`content/checks, ${check.id}: ${problems.join('; ')}`)
  return {
    title: definition.title,
    to: `${to}?${encodeLink(definition, { ...defaultsOf(definition), ...given })}`,
    loaded: true,
  }
}
