import type { JSX } from 'preact'
import { useMemo, useRef } from 'preact/hooks'
import { Folded } from '../../src/drawing/Folded.tsx'
import { useFollowed } from '../../src/drawing/useFollowed.ts'
import { isOneOf } from '../../src/machine/cells.ts'
import type { Cell } from '../../src/machine/cells.ts'
import type { Evaluation } from '../../src/machine/evaluate.ts'
import type { TableOutput } from '../../src/machine/statement.ts'
import { isInterval } from '../../src/units/interval.ts'
import type { Say } from '../../src/units/say.ts'
import { cellText, isTable, isWords } from './resultText.ts'
import { siAttributes } from './siAttributes.ts'
import type { CalculatorState } from './useCalculator.ts'

function TableResult({
  id,
  output,
  rows,
  say,
}: {
  id: string
  output: TableOutput
  rows: readonly (readonly Cell[])[]
  say: Say
}): JSX.Element {
  return (
    <div
      class="scroll result-table"
      tabIndex={0}
      role="group"
      aria-label={output.label}
      data-output={id}
    >
      <table>
        <caption>{output.label}</caption>
        <thead>
          <tr>
            {output.columns.map((column) => (
              <th key={column.id} scope="col">
                {isWords(column)
                  ? column.label
                  : `${column.label}${say.symbol(column.unit) === '' ? '' : ` (${say.symbol(column.unit)})`}`}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, r) => (
            <tr key={r}>
              {row.map((cell, c) => {
                const column = output.columns[c]!
                return (
                  <td key={c} class={isWords(column) ? 'text' : undefined}>
                    <output
                      name={`${id}.${r}.${column.id}`}
                      aria-live="off"
                      {...siAttributes(cell)}
                    >
                      {bare(say, column, cell)}
                    </output>
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

/** A cell without its unit, which the column's head carries. */
function bare(say: Say, column: TableOutput['columns'][number], cell: Cell): string {
  if (isWords(column) || cell === null || typeof cell === 'string' || isOneOf(cell))
    return cellText(say, column, cell)
  if (!isInterval(cell)) return say.number(cell, column.unit, column.digits)
  // a dash after a minus reads as another minus
  const between = cell.low < 0 ? ' to ' : '–'
  return `${say.number(cell.low, column.unit, column.digits)}${between}${say.number(cell.high, column.unit, column.digits)}`
}

/** The outputs that are tables: those in sight, or the further ones. */
const tablesOf = (
  { outputs }: CalculatorState['definition'],
  more: boolean,
): [string, TableOutput][] =>
  Object.entries(outputs).filter(
    (entry): entry is [string, TableOutput] =>
      isTable(entry[1]) && (entry[1].more === true) === more,
  )

const tables = (
  all: readonly [string, TableOutput][],
  { now }: Evaluation,
  say: Say,
): JSX.Element[] =>
  all.map(([id, output]) => (
    <TableResult
      key={id}
      id={id}
      output={output}
      rows={(now?.output[id] ?? []) as readonly (readonly Cell[])[]}
      say={say}
    />
  ))

/** Results that are tables, across the whole card; further ones fold away. */
export function ResultTables({ state }: { state: CalculatorState }): JSX.Element | null {
  const place = useRef<HTMLDivElement>(null)
  const evaluation = useFollowed(state.evaluation, place)
  const { definition, say } = state
  const first = useMemo(
    () => tables(tablesOf(definition, false), evaluation, say),
    [definition, evaluation, say],
  )
  const further = tablesOf(definition, true)
  if (first.length + further.length === 0) return null
  return (
    <div class="tables" ref={place} hidden={state.evaluation.now === null}>
      {first}
      {further.length > 0 && (
        <Folded
          summary={further.map(([, output]) => output.label).join(', ')}
          value={state.evaluation}
          draw={(shown) => tables(further, shown, say)}
        />
      )}
    </div>
  )
}
