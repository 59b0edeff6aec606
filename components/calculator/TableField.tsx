import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import type { TableColumn, TableInput } from '../../src/machine/statement.ts'
import { tidy } from '../../src/machine/fields.ts'
import { readNumber } from '../../src/units/number.ts'
import { displayUnit } from '../../src/units/choice.ts'
import { convert } from '../../src/units/units.ts'
import type { FieldProps } from './fieldProps.ts'
import { NOT_LOADED } from './notLoaded.ts'
import { describedBy, FieldNotes, OriginMark } from './FieldNotes.tsx'

type Rows = readonly (readonly number[])[]

/** Rows of readings: typed cell by cell, pasted, or loaded from a file. */
export function TableField({ id, input, state, prefix }: FieldProps<TableInput>): JSX.Element {
  const rows = typeof state.given[id] === 'object' ? state.given[id] : []
  const [drafts, setDrafts] = useState<Record<string, string>>({})
  const field = `${prefix}-${id}`
  const setRows = (next: Rows): void => {
    setDrafts({})
    state.set(id, next)
  }
  const setCell = (r: number, c: number, text: string): void => {
    setDrafts((now) => ({ ...now, [`${r}.${c}`]: text }))
    const reading = readNumber(text)
    if ('problem' in reading) return
    const column = input.columns[c]!
    const value = tidy(convert(reading.value, displayUnit(column.unit, state.choice), column.unit))
    state.set(
      id,
      rows.map((row, index) =>
        index === r ? row.map((cell, place) => (place === c ? value : cell)) : row,
      ),
    )
  }
  const problem = draftProblem(input, drafts) ?? state.evaluation.problems[id]
  const notes = { field, hint: input.hint, error: problem, origin: state.origins[id] }
  return (
    <fieldset
      class={input.columns.length === 1 ? 'field table-field single' : 'field table-field'}
      data-field={id}
      aria-describedby={describedBy(notes)}
    >
      <legend>
        {input.label}
        <OriginMark {...notes} />
      </legend>
      <input type="hidden" name={id} value={rows.map((row) => row.join(':')).join(';')} />
      <Grid
        field={field}
        input={input}
        rows={rows}
        drafts={drafts}
        state={state}
        onCell={setCell}
        onRows={setRows}
      />
      <FieldNotes {...notes} />
      <button
        type="button"
        class="plain needs-script"
        disabled={rows.length >= input.rows[1]}
        onClick={() => {
          setRows([...rows, rows.at(-1) ?? input.columns.map((column) => column.range[0])])
          state.focus(`${field}-${rows.length}-0`)
        }}
      >
        Add a row<span class="hidden"> to {input.label}</span>
      </button>
      <Paste field={field} input={input} state={state} onRows={setRows} />
    </fieldset>
  )
}

interface GridProps {
  field: string
  input: TableInput
  rows: Rows
  drafts: Record<string, string>
  state: FieldProps<TableInput>['state']
  onCell(row: number, column: number, text: string): void
  onRows(rows: Rows): void
}

function Grid({ field, input, rows, drafts, state, onCell, onRows }: GridProps): JSX.Element {
  const remove = (gone: number): void => {
    onRows(rows.filter((_, index) => index !== gone))
    const next = Math.min(gone, rows.length - 2)
    // with no more rows to spare the buttons are off, and the row's first cell takes the focus
    state.focus(rows.length - 1 > input.rows[0] ? `${field}-remove-${next}` : `${field}-${next}-0`)
  }
  return (
    <div class="scroll" tabIndex={0} role="group" aria-label={input.label}>
      <table>
        <thead>
          <tr>
            {input.columns.map((column) => (
              <th key={column.id} scope="col">
                {heading(column, state.say.symbol(column.unit))}
              </th>
            ))}
            <th class="needs-script">
              <span class="hidden">Remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, r) => (
            <tr key={r}>
              {row.map((cell, c) => (
                <td key={c}>
                  <input
                    id={`${field}-${r}-${c}`}
                    type="text"
                    inputMode="decimal"
                    autocomplete="off"
                    aria-label={`${input.columns[c]?.label ?? ''}, row ${r + 1}`}
                    value={drafts[`${r}.${c}`] ?? cellText(input.columns[c]!, cell, state)}
                    onInput={(event) => onCell(r, c, event.currentTarget.value)}
                  />
                </td>
              ))}
              <td class="needs-script">
                <button
                  type="button"
                  id={`${field}-remove-${r}`}
                  class="step"
                  aria-label={`Remove row ${r + 1} of ${input.label}`}
                  disabled={rows.length <= input.rows[0]}
                  onClick={() => remove(r)}
                >
                  ×
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

const heading = (column: TableColumn, symbol: string): string =>
  symbol === '' ? column.label : `${column.label} (${symbol})`

function cellText(
  column: TableColumn,
  cell: number,
  state: FieldProps<TableInput>['state'],
): string {
  const unit = displayUnit(column.unit, state.choice)
  return String(Number(convert(cell, column.unit, unit).toFixed(unit === column.unit ? 6 : 3)))
}

function draftProblem(input: TableInput, drafts: Record<string, string>): string | undefined {
  for (const [place, text] of Object.entries(drafts)) {
    if (!('problem' in readNumber(text))) continue
    const [r, c] = place.split('.').map(Number)
    return `${input.label}, row ${r! + 1}: “${text}” is not a number. ${input.columns[c!]?.label ?? ''} keeps its last value`
  }
  return undefined
}

interface PasteProps {
  field: string
  input: TableInput
  state: FieldProps<TableInput>['state']
  onRows(rows: Rows): void
}

function Paste({ field, input, state, onRows }: PasteProps): JSX.Element {
  const [problems, setProblems] = useState<string[]>([])
  const [text, setText] = useState('')
  const take = async (source: string): Promise<void> => {
    setText(source)
    try {
      // few readers paste, so that the reading of pasted text comes when it is asked for
      const { readRows } = await import('../../src/machine/paste.ts')
      const reading = readRows(input, source, state.choice)
      setProblems(reading.problems)
      if (reading.rows.length > 0) onRows(reading.rows)
    } catch {
      setProblems([NOT_LOADED])
    }
  }
  return (
    <details class="paste needs-script">
      <summary>
        Paste rows or load a file<span class="hidden"> for {input.label}</span>
      </summary>
      <label for={`${field}-paste`}>
        One row a line, values separated by a tab, semicolon or comma
      </label>
      <textarea
        id={`${field}-paste`}
        rows={5}
        value={text}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <button type="button" onClick={() => void take(text)}>
        Use these rows<span class="hidden"> for {input.label}</span>
      </button>
      <label for={`${field}-file`}>Or a CSV file</label>
      <input
        id={`${field}-file`}
        type="file"
        accept=".csv,.txt,.tsv,text/csv,text/plain"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0]
          if (file) void file.text().then(take)
        }}
      />
      {problems.length > 0 && (
        <ul class="error" role="alert">
          {problems.slice(0, 12).map((problem) => (
            <li key={problem}>{problem}</li>
          ))}
          {problems.length > 12 && <li>and {problems.length - 12} more lines</li>}
        </ul>
      )}
    </details>
  )
}
