import type { JSX } from 'preact'
import type { ChartTableData } from './chart-types.ts'

/** The chart's numbers as a table, folded on screen and open in print. */
export function ChartTable({ caption, columns, rows }: ChartTableData): JSX.Element {
  return (
    <details class="fig-table">
      <summary>{caption}</summary>
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
    </details>
  )
}
