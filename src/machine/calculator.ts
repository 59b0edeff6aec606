import type { Remarks } from './remark.ts'
import type { CardStatement, Input, Inputs, Statement } from './statement.ts'
import type { Work } from './work.ts'

/** A calculator that can be run. The browser loads `remarks` after the rest. */
export interface Calculator extends CardStatement, Work {
  remarks?: Remarks
}

/** A whole calculator, with what stands around its card. */
export interface WholeCalculator extends Statement, Work {
  remarks: Remarks
}

const checkedText = (
  input: Input,
  check: ((text: string) => string | undefined) | undefined,
): Input => (input.kind === 'text' && check ? { ...input, check } : input)

/** Inputs with what can be wrong with their texts, which a statement, being plain data, cannot hold. */
const withTextProblems = (inputs: Inputs, problems: Work['textProblems'] = {}): Inputs =>
  Object.fromEntries(
    Object.entries(inputs).map(([id, input]) => [id, checkedText(input, problems[id])]),
  )

/** Statement and work put together. */
export const calculatorOf = <S extends CardStatement>(statement: S, work: Work): S & Work => ({
  ...statement,
  ...work,
  inputs: withTextProblems(statement.inputs, work.textProblems),
})
