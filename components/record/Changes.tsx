import type { JSX } from 'preact'
import type { PartProps } from './props.ts'

/** Takes the last change back, and lists the last twenty. */
export function Changes({ state, whole }: Pick<PartProps, 'state' | 'whole'>): JSX.Element {
  const changes = [...whole.changes].reverse()
  const [last] = changes
  return (
    <section class="changes needs-script" aria-labelledby="last-changes">
      <h2 id="last-changes">Last changes</h2>
      <p>
        <button
          type="button"
          data-do="undo"
          aria-disabled={last === undefined}
          onClick={() => void state.undo()}
        >
          Take back{last ? `: ${last.what}` : ''}
        </button>
      </p>
      {changes.length > 0 && (
        <details>
          <summary>The last {changes.length}, the latest first</summary>
          <ol>
            {changes.map(({ at, what }) => (
              <li key={at}>
                {what} <small>{at.slice(0, 16).replace('T', ' ')} UTC</small>
              </li>
            ))}
          </ol>
        </details>
      )}
    </section>
  )
}
