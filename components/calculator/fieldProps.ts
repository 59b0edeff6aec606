import type { Input } from '../../src/machine/statement.ts'
import type { CalculatorState } from './useCalculator.ts'

/** What every kind of field receives. */
export interface FieldProps<T extends Input> {
  id: string
  input: T
  state: CalculatorState
  /** prefix of element ids, so that two cards on a page do not share one */
  prefix: string
}
