import type { Definition, Input, Statement, Work } from './define.ts'

/** The plain data of a definition, as it can be written into a page: no function, nothing undefined. */
export function statementOf({ id, version, title, question, answers, assumes, leavesOut, notice, inputs, outputs }: Definition): Statement {
  return JSON.parse(JSON.stringify({ id, version, title, question, answers, assumes, leavesOut, notice, inputs, outputs })) as Statement
}

const withCheck = (input: Input, check: ((text: string) => string | undefined) | undefined): Input =>
  input.kind === 'text' && check !== undefined ? { ...input, check } : input

/** Statement and work put together again. `remarks` are left out: the machine asks for them when a number changes. */
export function definitionOf(statement: Statement, work: Work): Definition {
  const inputs = Object.fromEntries(Object.entries(statement.inputs).map(([id, input]) => [id, withCheck(input, work.checks?.[id])]))
  return { ...statement, ...work, inputs, remarks: () => [] }
}
