import type { JSX } from 'preact'
import { useMemo, useRef } from 'preact/hooks'
import { isInterval } from '../../src/calculators/interval.ts'
import type { Cell, Output, OutputValue, QuantityOutput, TableOutput } from '../../src/calculators/define.ts'
import type { Evaluation } from '../../src/calculators/evaluate.ts'
import { withSymbol } from '../../src/calculators/say.ts'
import type { Say } from '../../src/calculators/say.ts'
import { Folded } from '../figures/kit/Folded.tsx'
import { useFollowed } from '../figures/kit/useFollowed.ts'
import type { CalculatorState } from './useCalculator.ts'

/** A difference of temperatures converts without its offset. */
const text = (say: Say, output: QuantityOutput, si: number): string =>
  output.signed || output.difference
    ? say.change(si, output.unit, output.digits).replace(output.signed ? '' : /^\+/, '')
    : say.quantity(si, output.unit, output.digits)

/** A change without its unit. */
const bareChange = (say: Say, output: QuantityOutput, si: number): string => say.change(si, output.unit, output.digits).replace(/[\s°].*$/, '')

/** A cell as the reader sees it: a value, a value ± its half width, a range, or a dash where it does not exist. */
export function cellText(say: Say, output: QuantityOutput | { kind: 'text' }, value: Cell): string {
  if (value === null) return '—'
  if (typeof value === 'string') return value
  if ('kind' in output) return String(value)
  if (!isInterval(value)) return text(say, output, value)
  const half = (value.high - value.low) / 2
  const symmetric = value.value !== undefined && Math.abs((value.low + value.high) / 2 - value.value) <= Math.max(1e-9 * Math.abs(value.value), half * 1e-6)
  if (symmetric) {
    const middle = output.signed ? bareChange(say, output, value.value!) : say.number(value.value!, output.unit, output.digits)
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

/** The SI value for programs: `data-si`, and for an interval its ends. */
function siAttributes(value: Cell): Record<string, string> {
  if (typeof value === 'number') return { 'data-si': String(value) }
  if (!isInterval(value)) return {}
  return { 'data-si-low': String(value.low), 'data-si-high': String(value.high), ...(value.value === undefined ? {} : { 'data-si': String(value.value) }) }
}

const middle = (value: OutputValue | undefined): number | null => (typeof value === 'number' ? value : isInterval(value) ? (value.value ?? null) : null)

interface RowProps {
  id: string
  output: Exclude<Output, TableOutput>
  now: Cell
  before: Cell | undefined
  say: Say
}

function Row({ id, output, now, before, say }: RowProps): JSX.Element {
  const change = !('kind' in output) && middle(now) !== null && before !== undefined && middle(before) !== null ? middle(now)! - middle(before)! : null
  return (
    <tr role="row" class={output.lead ? 'lead' : undefined} data-row={id}>
      <th role="rowheader" scope="row">
        {output.label}
      </th>
      {before !== undefined && (
        <td role="cell" class="was" data-before={id}>
          {cellText(say, output, before)}
        </td>
      )}
      <td role="cell" class={'kind' in output ? 'is text' : 'is'} {...('kind' in output && before !== undefined ? { colSpan: 2 } : {})}>
        <output name={id} aria-live="off" {...siAttributes(now)}>
          {cellText(say, output, now)}
        </output>
      </td>
      {before !== undefined && !('kind' in output) && (
        <td role="cell" data-change={id}>
          {change === null ? '—' : say.change(change, output.unit, output.digits)}
        </td>
      )}
    </tr>
  )
}

function TableResult({ id, output, rows, say }: { id: string; output: TableOutput; rows: readonly (readonly Cell[])[]; say: Say }): JSX.Element {
  return (
    <div class="scroll result-table" tabIndex={0} role="group" aria-label={output.label} data-output={id}>
      <table>
        <caption>{output.label}</caption>
        <thead>
          <tr>
            {output.columns.map((column) => (
              <th key={column.id} scope="col">
                {'kind' in column ? column.label : `${column.label}${say.symbol(column.unit) === '' ? '' : ` (${say.symbol(column.unit)})`}`}
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
                  <td key={c} class={'kind' in column ? 'text' : undefined}>
                    <output name={`${id}.${r}.${column.id}`} aria-live="off" {...siAttributes(cell)}>
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
  if ('kind' in column || cell === null || typeof cell === 'string') return cellText(say, 'kind' in column ? column : column, cell)
  if (!isInterval(cell)) return say.number(cell, column.unit, column.digits)
  return `${say.number(cell.low, column.unit, column.digits)}–${say.number(cell.high, column.unit, column.digits)}`
}

const isTable = (output: Output): output is TableOutput => 'kind' in output && output.kind === 'table'

/** One change sheet: before, now and change where a before is held, else the results alone. */
function sheet({ definition, say }: CalculatorState, { now, before }: Evaluation, more: boolean): JSX.Element | null {
  const rows = Object.entries(definition.outputs).flatMap(([id, output]) =>
    isTable(output) || (output.more === true) !== more || now === null
      ? []
      : [<Row key={id} id={id} output={output} now={now.output[id] as Cell} before={before ? (before.output[id] as Cell) : undefined} say={say} />],
  )
  const head = (
    <thead role="rowgroup">
      <tr role="row">
        <td role="cell" />
        {before && (
          <th role="columnheader" scope="col" class="was">
            before
          </th>
        )}
        <th role="columnheader" scope="col">
          {before ? 'now' : 'result'}
        </th>
        {before && (
          <th role="columnheader" scope="col">
            change
          </th>
        )}
      </tr>
    </thead>
  )
  // roles are spelled out, since a narrow panel lays rows out as grids and browsers then drop the table's own
  return (
    <table role="table" class={before ? 'sheet-table compared' : 'sheet-table'}>
      {head}
      <tbody role="rowgroup">{rows}</tbody>
    </table>
  )
}

/** The results: those asked for first in sight, further ones folded. */
export function Results({ state }: { state: CalculatorState }): JSX.Element {
  const place = useRef<HTMLDivElement>(null)
  const evaluation = useFollowed(state.evaluation, place)
  const first = useMemo(() => sheet(state, evaluation, false), [evaluation])
  const further = Object.values(state.definition.outputs).some((output) => !isTable(output) && output.more)
  return (
    <div class="results" ref={place} hidden={state.evaluation.now === null}>
      {first}
      {further && <Folded class="more-results" summary="More results" value={state.evaluation} draw={(shown) => sheet(state, shown, true)} />}
    </div>
  )
}

/** Results that are tables, across the whole card; further ones fold away. */
export function ResultTables({ state }: { state: CalculatorState }): JSX.Element | null {
  const place = useRef<HTMLDivElement>(null)
  const evaluation = useFollowed(state.evaluation, place)
  const outputs = Object.entries(state.definition.outputs).filter((entry): entry is [string, TableOutput] => isTable(entry[1]))
  const tables = (all: typeof outputs, { now }: Evaluation): JSX.Element[] =>
    all.map(([id, output]) => <TableResult key={id} id={id} output={output} rows={(now?.output[id] ?? []) as readonly (readonly Cell[])[]} say={state.say} />)
  const first = useMemo(
    () =>
      tables(
        outputs.filter(([, output]) => !output.more),
        evaluation,
      ),
    [evaluation],
  )
  const further = outputs.filter(([, output]) => output.more)
  if (outputs.length === 0) return null
  return (
    <div class="tables" ref={place} hidden={state.evaluation.now === null}>
      {first}
      {further.length > 0 && (
        <Folded summary={further.map(([, output]) => output.label).join(', ')} value={state.evaluation} draw={(shown) => tables(further, shown)} />
      )}
    </div>
  )
}

/** The lead results, one text each: the first is kept in sight on a phone, all are read out once the values stand still. */
export function leadTexts(state: CalculatorState): string[] {
  const { now, before } = state.evaluation
  if (now === null) return []
  return Object.entries(state.definition.outputs).flatMap(([id, output]) => {
    if (isTable(output) || output.lead !== true) return []
    const value = now.output[id] as Cell
    const was = before ? middle(before.output[id]) : null
    const is = middle(value)
    const change = 'kind' in output || was === null || is === null ? '' : ` (${state.say.change(is - was, output.unit, output.digits)})`
    return [`${output.label} ${cellText(state.say, output, value)}${change}`]
  })
}
