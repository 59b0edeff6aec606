import type { Calculator } from '../../src/machine/calculator.ts'
import type { Computed } from '../../src/machine/evaluate.ts'
import { labelOf } from '../../src/machine/labels.ts'
import { isNumber } from '../../src/machine/statement.ts'
import { isInterval } from '../../src/units/interval.ts'
import type { Say } from '../../src/units/say.ts'

interface State {
  asks?: string | undefined
  now: Computed
  before: Computed | null
  say: Say
}

/** The first result in words: what it is, what it was, what it is now. */
export function leadOfRoom({ outputs }: Calculator, { now, before, say, asks }: State): string {
  const leads = Object.entries(outputs).filter(([, each]) => each.kind !== 'table' && each.lead)
  const id = asks ?? leads[0]?.[0] ?? Object.keys(outputs)[0]!
  const output = outputs[id]!
  const written = (of: Computed): string => {
    const value = of.output[id]
    if (output.kind === 'choice') return labelOf(output, of.verdicts[id]?.[0] ?? '')
    if (!isNumber(output) || (typeof value !== 'number' && !isInterval(value))) return ''
    return say.span(value, output.unit, output.digits)
  }
  const label = output.label.replace(/ \(.*\)$/, '')
  const was = before ? written(before) : ''
  return was === '' || was === written(now)
    ? `${label}: ${written(now)}`
    : `${label}: ${was} → ${written(now)}`
}
