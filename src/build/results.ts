import { getCollection } from 'astro:content'
import { isCalculatorId, loadCalculator } from '../calculators/index.ts'
import type { CardStatement } from '../machine/statement.ts'
import { cardStatementOf } from '../machine/statement.ts'
import type { Compared, Handed } from '../record/resultSchema.ts'
import { readingsOf } from '../record/worked.ts'
import type { ResultSpec } from '../record/worked.ts'

/** A result as a step shows it. */
export interface Result {
  spec: ResultSpec
  /** "procedure/step" of every step that shows it */
  at: readonly string[]
  title: string
  outputs: readonly { id: string; label: string }[]
  statement: CardStatement
}

/** Every result that steps show. */
export async function loadResults(): Promise<Result[]> {
  return (await getCollection('results')).map(({ data: { at, ...spec } }) => {
    if (!isCalculatorId(spec.calculator))
      throw new Error(`content/results.yaml: there is no calculator “${spec.calculator}”`)
    const statement = cardStatementOf(loadCalculator(spec.calculator))
    const outputs = spec.shows.map(({ output }) => ({
      id: output,
      label: (statement.outputs[output] ?? statement.inputs[output])?.label ?? output,
    }))
    return { spec, at, title: statement.title, outputs, statement }
  })
}

/** What a page's script needs of the results that its steps show. */
export const workDataOf = (
  results: readonly Result[],
): { specs: ResultSpec[]; statements: Record<string, CardStatement> } => ({
  specs: results.map(({ spec }) => spec),
  statements: Object.fromEntries(results.map(({ statement }) => [statement.id, statement])),
})

/** What a gate sets side by side: the rows for which this page takes the readings after the work. */
export async function comparedFor(
  readings: ReadonlySet<string>,
  results: readonly Result[],
): Promise<Compared[]> {
  const takes = (id: string): boolean => {
    const spec = results.find((result) => result.spec.id === id)?.spec
    return (
      spec !== undefined &&
      Object.values(spec.inputs)
        .flatMap(readingsOf)
        .every((reading) => readings.has(reading))
    )
  }
  return (await getCollection('compared'))
    .map(({ data }) => data)
    .sort((a, b) => a.order - b.order)
    .filter(({ after }) => takes(after))
}

/** The rows of a hand-over sheet whose readings after the work this page takes. */
export const handedFor = async (readings: ReadonlySet<string>): Promise<Handed[]> =>
  (await getCollection('handed'))
    .map(({ data }) => data)
    .sort((a, b) => a.order - b.order)
    .filter(({ before, after }) => readings.has(before) && readings.has(after))
