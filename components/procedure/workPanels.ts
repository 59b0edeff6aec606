import { loadWork } from '../../src/calculators/browser.ts'
import { calculatorOf } from '../../src/machine/calculator.ts'
import { defaultsOf, evaluate } from '../../src/machine/evaluate.ts'
import type { Evaluation } from '../../src/machine/evaluate.ts'
import type { Given } from '../../src/machine/given.ts'
import { encodeLink } from '../../src/machine/writeLink.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import { isNumber } from '../../src/machine/statement.ts'
import type { Book } from '../../src/record/book.ts'
import type { Taken } from '../../src/record/carry.ts'
import { readingsOf, workedGiven } from '../../src/record/worked.ts'
import type { ResultSpec } from '../../src/record/worked.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { isInterval } from '../../src/units/interval.ts'
import type { Interval } from '../../src/units/interval.ts'
import { createSay } from '../../src/units/say.ts'

/** What a page says of the results that its steps show. */
export interface WorkData {
  specs: readonly ResultSpec[]
  statements: Readonly<Record<string, CardStatement>>
}

/** A number that a result came to [SI], with the unit and digits in which it is written. */
export interface WorkedNumber {
  value: number | Interval
  unit: Parameters<ReturnType<typeof createSay>['span']>[1]
  digits: number
}

// results follow typing after a pause, as the panels beside them do
const PAUSE = 600

/** The numbers of a result, by output id; none while readings are missing. */
export async function workedNumbers(
  spec: ResultSpec,
  statement: CardStatement,
  given: Given,
  choice: UnitChoice,
): Promise<Record<string, WorkedNumber>> {
  const calculator = calculatorOf(statement, await loadWork(statement.id))
  const { now }: Evaluation = evaluate(
    calculator,
    { ...defaultsOf(calculator), ...given },
    { bikes: {}, choice },
  )
  const found: Record<string, WorkedNumber> = {}
  for (const { output, with: needs } of spec.shows) {
    if (needs !== undefined && !(needs in given)) continue
    const input = statement.inputs[output]
    const told = statement.outputs[output]
    const value = now?.output[output]
    // a ratio of readings is an input of its calculator, and shown as it is
    if (input?.kind === 'quantity' && typeof given[output] === 'number')
      found[output] = { value: given[output], unit: input.unit, digits: 3 }
    else if (told && isNumber(told) && (typeof value === 'number' || isInterval(value)))
      found[output] = { value, unit: told.unit, digits: told.digits }
  }
  return found
}

/** A number as it is written: with its ± where it has an estimate and an interval around it. */
export function withPlusMinus(
  say: ReturnType<typeof createSay>,
  { value, unit, digits }: WorkedNumber,
): string {
  if (!isInterval(value) || value.value === undefined || Array.isArray(value.value))
    return say.span(value, unit, digits)
  const half = (value.high - value.low) / 2
  const estimate = say.quantity(value.value, unit, digits)
  return half > 0 ? `${estimate} ± ${say.quantity(half, unit, digits)}` : estimate
}

function show(
  panel: HTMLElement,
  calculator: string,
  numbers: Record<string, WorkedNumber>,
  choice: UnitChoice,
): void {
  const say = createSay(choice)
  const list = panel.querySelector<HTMLElement>('[data-results]')
  for (const cell of panel.querySelectorAll<HTMLElement>('[data-output]')) {
    const number = numbers[(cell.dataset['output'] ?? '').slice(calculator.length + 1)]
    cell.closest('div')?.toggleAttribute('hidden', !number)
    cell.textContent = number ? withPlusMinus(say, number) : ''
    const middle = number && (isInterval(number.value) ? number.value.value : number.value)
    if (number) cell.dataset['result'] = cell.dataset['output']!
    else delete cell.dataset['result']
    if (middle === undefined) delete cell.dataset['si']
    else cell.dataset['si'] = String(middle)
  }
  if (list) list.hidden = Object.keys(numbers).length === 0
}

const linkOf = (statement: CardStatement, given: Given): string => {
  const named = Object.keys(given)
  if (named.length === 0) return ''
  return `?${encodeLink(statement, { ...defaultsOf(statement), ...given }, null, { named })}`
}

/** What the calculator calls a reading that no step here takes. */
function labelOf({ inputs }: ResultSpec, statement: CardStatement, reading: string): string {
  const input = Object.entries(inputs).find(([, source]) => readingsOf(source).includes(reading))
  return (input && statement.inputs[input[0]]?.label) ?? reading
}

/** The results of a stretch of steps: worked out from the readings by the calculators, and linked with the same numbers. */
export function workPanels(
  root: HTMLElement,
  procedure: string,
  all: readonly Taken[],
  { specs, statements }: WorkData,
  base: string,
  units: () => UnitChoice,
): (book: Book) => void {
  const labels = new Map(all.map(({ spec }) => [spec.id, spec.label]))
  const panels = [...root.querySelectorAll<HTMLElement>('[data-work]')].flatMap((element) => {
    const spec = specs.find(({ id }) => id === element.dataset['work'])
    const statement = spec && statements[spec.calculator]
    return spec && statement ? [{ element, spec, statement, timer: 0 }] : []
  })
  return (book) => {
    for (const panel of panels) {
      const { element, spec, statement } = panel
      const { given, missing, refused } = workedGiven(spec, statement, procedure, all, book)
      const link = element.querySelector<HTMLAnchorElement>('[data-work-link]')
      if (link) link.href = `${base}calculators/${spec.calculator}/${linkOf(statement, given)}`
      const says = element.querySelector('[data-work-missing]')
      const wanted = missing.map((id) => labels.get(id) ?? labelOf(spec, statement, id))
      if (says)
        says.textContent =
          refused.length > 0
            ? `: ${refused.join('; ')}`
            : wanted.length > 0
              ? `: still to read: ${wanted.join('; ')}`
              : ''
      clearTimeout(panel.timer)
      const timer = window.setTimeout(() => {
        const ready = wanted.length === 0 && refused.length === 0
        const numbers = ready ? workedNumbers(spec, statement, given, units()) : Promise.resolve({})
        void numbers.then((found) => {
          if (panel.timer === timer) show(element, spec.calculator, found, units())
        })
      }, PAUSE)
      panel.timer = timer
    }
  }
}
