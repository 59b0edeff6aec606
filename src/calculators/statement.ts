import type { Calculator, Input, Statement, Work } from './define.ts'

/** The part of a definition that a page carries to the browser: plain data, no function, nothing undefined. */
export function statementOf({ id, version, title, notice, inputs, outputs }: Statement): Statement {
  return JSON.parse(JSON.stringify({ id, version, title, notice, inputs, outputs })) as Statement
}

const withCheck = (input: Input, check: ((text: string) => string | undefined) | undefined): Input =>
  input.kind === 'text' && check !== undefined ? { ...input, check } : input

/** Statement and work put together again, without remarks. */
export function calculatorOf(statement: Statement, { compute, baseline, picture, checks }: Work): Calculator {
  const inputs = Object.fromEntries(Object.entries(statement.inputs).map(([id, input]) => [id, withCheck(input, checks?.[id])]))
  return { ...statement, inputs, compute, ...(baseline && { baseline }), ...(picture && { picture }) }
}
