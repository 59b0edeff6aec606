import { getCollection } from 'astro:content'
import type { CollectionEntry } from 'astro:content'
import type { CardStatement } from '../machine/statement.ts'
import { isCalculatorId, loadCalculator } from '../calculators/index.ts'
import { cardStatementOf } from '../machine/statement.ts'
import type { Taken } from '../record/carry.ts'
import { readingsOf } from '../record/worked.ts'
import type { Result } from './results.ts'
import type { ReadingSpec } from '../record/reading.ts'

export type Procedure = CollectionEntry<'procedures'>
export type Step = Procedure['data']['steps'][number]

/** All procedures in the order of the job. */
export async function loadProcedures(): Promise<Procedure[]> {
  return (await getCollection('procedures')).sort((a, b) => a.data.order - b.data.order)
}

/** Ids of procedures and the titles that stand for them in running text. */
export const titlesById = async (): Promise<ReadonlyMap<string, string>> =>
  new Map((await loadProcedures()).map(({ id, data }) => [id, data.title]))

/** A reading as the browser needs it: without what only the page shows. */
export function specOf({
  id,
  label,
  quantity,
  unit,
  range,
  repeat,
  to,
}: Procedure['data']['readings'][number]): ReadingSpec {
  return {
    id,
    label,
    quantity,
    unit,
    ...(range && { range }),
    ...(repeat && { repeat }),
    ...(to && { to }),
  }
}

/** Every reading of every procedure, in the order of the job and of the steps. */
export function takenIn(procedures: readonly Procedure[]): Taken[] {
  return procedures.flatMap(({ id, data }) => {
    const order = data.steps.flatMap((step) => step.readings)
    const specs = [...data.readings].sort((a, b) => order.indexOf(a.id) - order.indexOf(b.id))
    return [
      ...specs.map((spec) => ({ procedure: id, spec: specOf(spec) })),
      ...settingsIn(id, data.readings),
    ]
  })
}

/** Values that a reader sets rather than reads, beside the calculator that a procedure feeds. */
const SETTINGS: Readonly<Record<string, readonly ReadingSpec[]>> = {
  sag: [
    {
      id: 'sag.windowLow',
      label: 'Window you work to, from',
      quantity: 'share',
      unit: '%',
      range: [0, 60],
      to: { calculator: 'sag', input: 'windowLow' },
    },
    {
      id: 'sag.windowHigh',
      label: 'Window you work to, up to',
      quantity: 'share',
      unit: '%',
      range: [0, 60],
      to: { calculator: 'sag', input: 'windowHigh' },
    },
  ],
}

type Declared = Procedure['data']['readings']
const feeds = (readings: Declared, calculator: string): boolean =>
  readings.filter(({ to }) => to?.calculator === calculator).length > 2

/** The settings of the calculators that these readings fill. */
export function settingsFor(readings: Declared, calculator: string): readonly ReadingSpec[] {
  return feeds(readings, calculator) ? (SETTINGS[calculator] ?? []) : []
}

const settingsIn = (procedure: string, readings: Declared): Taken[] =>
  Object.keys(SETTINGS).flatMap((calculator) =>
    settingsFor(readings, calculator).map((spec) => ({ procedure, spec })),
  )

/** A calculator that a step opens. */
export interface Opened {
  statement: CardStatement
  /** whether readings of this procedure go to it */
  fed: boolean
}

const spoken = (id: string): string => `${id.replaceAll('-', ' ')} calculator`

/** The calculators that belong under a step: those that it names, and those whose last reading it takes. */
export async function calculatorsAt(procedure: Procedure, step: Step): Promise<Opened[]> {
  const { readings, steps, related } = procedure.data
  const text = `${step.do} ${step.detail ?? ''}`.toLowerCase()
  const fed = [...new Set(readings.flatMap(({ to }) => (to ? [to.calculator] : [])))]
  const lastStepOf = (calculator: string): string | undefined =>
    steps.findLast(({ readings: taken }) =>
      taken.some((id) =>
        readings.some((spec) => spec.id === id && spec.to?.calculator === calculator),
      ),
    )?.id
  const here = [...new Set([...fed, ...related.calculators])].filter(
    (id) => text.includes(spoken(id)) || (fed.includes(id) && lastStepOf(id) === step.id),
  )
  const known = here.filter((id) => isCalculatorId(id))
  return Promise.all(
    known.map(async (id) => ({
      statement: cardStatementOf(loadCalculator(id)),
      fed: fed.includes(id),
    })),
  )
}

/** The readings that one procedure's page works with: its own, the same ones taken elsewhere, and those that feed the same calculators. */
export function takenFor(
  procedure: Procedure,
  all: readonly Taken[],
  results: readonly Result[],
): Taken[] {
  const fed = new Set(procedure.data.readings.flatMap(({ to }) => (to ? [to.calculator] : [])))
  const names = new Set(procedure.data.readings.flatMap(({ id }) => [id, id.replace(/After$/, '')]))
  const worked = new Set(
    results
      .filter(({ at }) => at.some((step) => step.startsWith(`${procedure.id}/`)))
      .flatMap(({ spec: { inputs, maybe } }) =>
        [...Object.values(inputs), ...Object.values(maybe)].flatMap(readingsOf),
      ),
  )
  const bands = fed.has('marks')
    ? ['staticSettledUp', 'staticSettledUpAfter', 'markLeft', 'markLeftAfter', 'frontTravel']
    : []
  return all.filter(
    ({ procedure: id, spec }) =>
      id === procedure.id ||
      names.has(spec.id) ||
      bands.includes(spec.id) ||
      worked.has(spec.id) ||
      (spec.to !== undefined && fed.has(spec.to.calculator)),
  )
}
