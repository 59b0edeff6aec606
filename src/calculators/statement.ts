import type { Calculator, Input, Statement, Work } from './define.ts'

/** The part of a definition that a page carries to the browser: plain data, no function, nothing undefined. */
export function statementOf({ id, version, title, notice, inputs, outputs }: Statement): Statement {
  return JSON.parse(JSON.stringify({ id, version, title, notice, inputs, outputs })) as Statement
}

/** Inputs with the checks of their texts, which fields, being plain data, cannot hold. */
export function withChecks<I extends Record<string, Input>>(inputs: I, checks: Work['checks'] = {}): I {
  const checked = Object.entries(inputs).map(([id, input]) => [id, input.kind === 'text' && checks[id] ? { ...input, check: checks[id] } : input])
  return Object.fromEntries(checked) as I
}

/** Statement and work put together again, without remarks. */
export function calculatorOf(statement: Statement, { compute, baseline, picture, checks }: Work): Calculator {
  return { ...statement, inputs: withChecks(statement.inputs, checks), compute, ...(baseline && { baseline }), ...(picture && { picture }) }
}
