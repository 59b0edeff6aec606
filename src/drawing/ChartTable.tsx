import type { JSX } from 'preact'
import type { ChartTableData } from './chartTypes.ts'
import { Folded } from './Folded.tsx'

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

/** The chart's numbers as a table, folded on screen and open in print. */
export function ChartTable({ table }: { table: ChartTableData }): JSX.Element {
  return <Folded class="fig-table" summary={table.caption} value={table} draw={Rows} />
}
