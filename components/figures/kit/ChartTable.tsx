import type { JSX } from 'preact'
import { useEffect, useRef, useState } from 'preact/hooks'
import type { ChartTableData } from './chart-types.ts'

function Rows({ columns, rows }: Pick<ChartTableData, 'columns' | 'rows'>): JSX.Element {
  return (
    <div class="fig-table-scroll">
      <table>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([head, ...cells], row) => (
            <tr key={row}>
              <th scope="row">{head}</th>
              {cells.map((cell, place) => (
                <td key={place}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

/**
 * The chart's numbers as a table, folded on screen and open in print. While it is folded its rows stay as they were last drawn, since dozens of cells that
 * nobody sees would cost as much as the chart at every move of a slider; opening it, or printing, draws them anew.
 */
export function ChartTable({ caption, columns, rows }: ChartTableData): JSX.Element {
  const [wanted, setWanted] = useState(false)
  const drawn = useRef<JSX.Element | null>(null)
  useEffect(() => {
    const forPrint = (): void => setWanted(true)
    addEventListener('beforeprint', forPrint)
    return () => removeEventListener('beforeprint', forPrint)
  }, [])
  if (wanted || drawn.current === null) drawn.current = <Rows columns={columns} rows={rows} />
  return (
    <details class="fig-table" onToggle={(event) => setWanted(event.currentTarget.open)}>
      <summary>{caption}</summary>
      {drawn.current}
    </details>
  )
}
