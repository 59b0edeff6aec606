import type { JSX } from 'preact'
import { removeBad } from '../../src/record/store/bookStore.ts'
import type { BadRecord } from '../../src/record/store/bookStore.ts'
import type { PartProps } from './props.ts'
import { saveText } from './saveText.ts'

const asText = ({ value }: BadRecord): string => {
  try {
    // what JSON has no way to write is written as text
    const written = (_: string, each: unknown): unknown =>
      typeof each === 'bigint' ? String(each) : each
    return JSON.stringify(value, written, 1) ?? 'undefined'
  } catch {
    return String(value)
  }
}

/** Records that can't be read: said plainly, offered as a file, taken out on request. The others are not touched by them. */
export function BadRecords({
  state,
  whole,
}: Pick<PartProps, 'state' | 'whole'>): JSX.Element | null {
  if (whole.bad.length === 0) return null
  return (
    <section class="card bad-records" aria-labelledby="bad-records">
      <h2 id="bad-records">Records that can’t be read</h2>
      <p>
        Everything else in your book is as it was. Save such a record as a file before you take it
        out: somebody may be able to read it.
      </p>
      <ul role="list">
        {whole.bad.map((bad) => (
          <li key={`${bad.store} ${bad.key}`} data-bad-record={bad.key}>
            {bad.store === 'bikes' ? 'A bike' : 'A job'}, called {bad.key}
            <span class="act">
              <button
                type="button"
                onClick={() => saveText(`record-${bad.key}.json`, asText(bad), 'application/json')}
              >
                Save it as a file
              </button>
              <button type="button" onClick={() => void removeBad(bad).then(state.read)}>
                Take it out of the book
              </button>
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}
