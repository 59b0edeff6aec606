import { isOneOf } from '../../src/machine/cells.ts'
import type { Cell } from '../../src/machine/cells.ts'
import { wordsOf } from '../../src/machine/labels.ts'
import { isNumber } from '../../src/machine/statement.ts'
import type {
  Output,
  QuantityOutput,
  TableOutput,
  TableOutputColumn,
} from '../../src/machine/statement.ts'
import { isInterval } from '../../src/units/interval.ts'
import type { Interval } from '../../src/units/interval.ts'
import { withSymbol } from '../../src/units/say.ts'
import type { Say } from '../../src/units/say.ts'
import type { CalculatorState } from './useCalculator.ts'

export const isTable = (output: Output): output is TableOutput => output.kind === 'table'

/** A difference of temperatures converts without its offset. */
const text = (say: Say, output: QuantityOutput, si: number): string =>
  output.signed || output.difference
    ? say.change(si, output.unit, output.digits).replace(output.signed ? '' : /^\+/, '')
    : say.quantity(si, output.unit, output.digits)

/** A change without its unit. */
const bareChange = (say: Say, output: QuantityOutput, si: number): string =>
  say.change(si, output.unit, output.digits).replace(/[\s°].*$/, '')

type CellOutput = Exclude<Output, TableOutput> | TableOutputColumn

export const isWords = (output: CellOutput): output is Exclude<CellOutput, QuantityOutput> =>
  !isNumber(output)

/** A cell as the reader sees it: a value, a value ± its half width, a range, or a dash where it does not exist. */
export function cellText(say: Say, output: CellOutput, value: Cell): string {
  if (value === null) return '—'
  if (isWords(output)) return wordsOf(output, value)
  if (typeof value === 'string' || isOneOf(value)) return ''
  if (!isInterval(value)) return text(say, output, value)
  const half = (value.high - value.low) / 2
  const symmetric =
    value.value !== undefined &&
    Math.abs((value.low + value.high) / 2 - value.value) <=
      Math.max(1e-9 * Math.abs(value.value), half * 1e-6)
  if (symmetric) {
    const middle = output.signed
      ? bareChange(say, output, value.value!)
      : say.number(value.value!, output.unit, output.digits)
    const plus =
      output.unit === '°C'
        ? say
            .change(half, output.unit, output.digits)
            .replace(/^\+/, '')
            .replace(/[^\d.]+$/, '')
        : say.number(half, output.unit, output.digits)
    return withSymbol(`${middle} ± ${plus}`, say.symbol(output.unit))
  }
  return `${say.number(value.low, output.unit, output.digits)} to ${say.quantity(value.high, output.unit, output.digits)}`
}

/** A change with its sign, or the range of it where something is not known. */
export function changeText(say: Say, output: QuantityOutput, change: number | Interval): string {
  const write = (si: number): string =>
    say.change(si, output.unit, output.changeDigits ?? output.digits)
  if (typeof change === 'number') return write(change)
  const [low, high] = [write(change.low), write(change.high)]
  return low === high ? low : `${low.replace(/[\s°].*$/, '')} to ${high}`
}

/** The lead results, one text each: read out once the values stand still. */
export function leadTexts(state: CalculatorState): string[] {
  const { now, before, change } = state.evaluation
  if (now === null) return []
  return Object.entries(state.definition.outputs).flatMap(([id, output]) => {
    if (isTable(output) || output.lead !== true) return []
    const value = now.output[id] as Cell
    const moved = before ? change[id] : undefined
    const told =
      isWords(output) || moved === undefined ? '' : ` (${changeText(state.say, output, moved)})`
    return [`${output.label} ${cellText(state.say, output, value)}${told}`]
  })
}
