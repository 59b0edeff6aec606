import type { Evaluation } from '../../src/machine/evaluate.ts'
import type { CardStatement } from '../../src/machine/statement.ts'
import { isNumber } from '../../src/machine/statement.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { isInterval } from '../../src/units/interval.ts'
import { createSay } from '../../src/units/say.ts'

/** Writes the numbers that a calculator works out from the readings: for people in their units, for programs in SI. Without a result nothing is shown. */
export function showResults(
  list: HTMLElement | null,
  { id, outputs }: CardStatement,
  evaluation: Evaluation | null,
  choice: UnitChoice,
): void {
  if (!list) return
  const say = createSay(choice)
  const found = evaluation?.now?.output ?? {}
  let any = false
  for (const [name, output] of Object.entries(outputs)) {
    const cell = list.querySelector<HTMLElement>(`[data-result="${id}.${name}"]`)
    if (!cell || !isNumber(output)) continue
    const value = found[name]
    const known = typeof value === 'number' || isInterval(value)
    const middle = typeof value === 'number' ? value : isInterval(value) ? value.value : undefined
    cell.textContent = known ? say.span(value, output.unit, output.digits) : ''
    if (middle === undefined) delete cell.dataset['si']
    else cell.dataset['si'] = String(middle)
    cell.closest('div')?.toggleAttribute('hidden', !known)
    any ||= known
  }
  list.hidden = !any
}
