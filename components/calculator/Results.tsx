import type { JSX } from 'preact'
import { useMemo, useRef } from 'preact/hooks'
import type { Cell } from '../../src/machine/cells.ts'
import type { Output, TableOutput } from '../../src/machine/statement.ts'
import type { Interval } from '../../src/units/interval.ts'
import type { Evaluation } from '../../src/machine/evaluate.ts'
import type { Say } from '../../src/units/say.ts'
import { Folded } from '../../src/drawing/Folded.tsx'
import { useFollowed } from '../../src/drawing/useFollowed.ts'
import { cellText, changeText, isTable, isWords } from './resultText.ts'
import { siAttributes } from './siAttributes.ts'
import type { CalculatorState } from './useCalculator.ts'

interface RowProps {
  id: string
  output: Exclude<Output, TableOutput>
  now: Cell
  before: Cell | undefined
  /** from before to now, over all that is not known */
  change: number | Interval | undefined
  say: Say
}

function Row({ id, output, now, before, change, say }: RowProps): JSX.Element {
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
      <td
        role="cell"
        class={isWords(output) ? 'is text' : 'is'}
        {...(isWords(output) && before !== undefined ? { colSpan: 2 } : {})}
      >
        <output name={id} aria-live="off" {...siAttributes(now)}>
          {cellText(say, output, now)}
        </output>
      </td>
      {before !== undefined && !isWords(output) && (
        <td role="cell" data-change={id}>
          {change === undefined ? '—' : changeText(say, output, change)}
        </td>
      )}
    </tr>
  )
}

/** One change sheet: before, now and change where a before is held, else the results alone. */
function sheet(
  { definition, say, exampleBefore }: Pick<CalculatorState, 'definition' | 'say' | 'exampleBefore'>,
  { now, before, change }: Evaluation,
  more: boolean,
): JSX.Element | null {
  const rows = Object.entries(definition.outputs).flatMap(([id, output]) =>
    isTable(output) || (output.more === true) !== more || now === null
      ? []
      : [
          <Row
            key={id}
            id={id}
            output={output}
            now={now.output[id] as Cell}
            before={before ? (before.output[id] as Cell) : undefined}
            change={change[id]}
            say={say}
          />,
        ],
  )
  const head = (
    <thead role="rowgroup">
      <tr role="row">
        <td role="cell" />
        {before && (
          <th role="columnheader" scope="col" class="was">
            before {exampleBefore && <span class="origin">example</span>}
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
  const { definition, say, exampleBefore } = state
  const first = useMemo(
    () => sheet({ definition, say, exampleBefore }, evaluation, false),
    [definition, say, exampleBefore, evaluation],
  )
  const further = Object.values(definition.outputs).some(
    (output) => !isTable(output) && output.more,
  )
  return (
    <div class="results" ref={place} hidden={state.evaluation.now === null}>
      {first}
      {further && (
        <Folded
          class="more-results"
          summary="More results"
          value={state.evaluation}
          draw={(shown) => sheet(state, shown, true)}
        />
      )}
    </div>
  )
}
