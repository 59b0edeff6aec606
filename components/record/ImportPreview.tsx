import type { JSX } from 'preact'
import { countStanding, writesOf } from '../../src/record/importPlan.ts'
import type { Choice, ImportPlan } from '../../src/record/importPlan.ts'
import { newId } from '../../src/record/store/bookStore.ts'
import { dayText } from './data.ts'
import type { BookState } from './useBook.ts'

interface Props {
  plan: ImportPlan
  name: string
  state: BookState
  done(): void
}

const SHOWN = 12

/** Names of what is new or in conflict: the first few. */
function Names({
  plan,
  standing,
}: {
  plan: ImportPlan
  standing: 'new' | 'conflict'
}): JSX.Element {
  const names = [
    ...plan.bikes.filter((item) => item.standing === standing).map(({ theirs }) => theirs.name),
    ...plan.jobs
      .filter((item) => item.standing === standing)
      .map(({ theirs }) => `job of ${dayText(theirs.opened)}`),
  ]
  const more = names.length - SHOWN
  return (
    <>
      {names.slice(0, SHOWN).join(', ')}
      {more > 0 && ` and ${more} more`}
    </>
  )
}

/** What a file would bring, before anything is changed. */
export function ImportPreview({ plan, name, state, done }: Props): JSX.Element {
  const [fresh, same, conflicts] = (['new', 'same', 'conflict'] as const).map((standing) =>
    countStanding(plan, standing),
  ) as [number, number, number]
  const take = async (choice: Choice): Promise<void> => {
    const writes = writesOf(plan, choice, newId)
    await state.change(
      `file read back: ${name}`,
      () => Promise.resolve(writes),
      `Read back: ${writes.length} ${writes.length === 1 ? 'record' : 'records'}.`,
    )
    done()
  }
  return (
    <div
      class="ask import"
      role="group"
      aria-label={`What ${name} would bring`}
      data-import-preview
    >
      <p>
        <b>{name}</b>
      </p>
      <ul>
        <li data-import-new={fresh}>
          {fresh} new{fresh > 0 && ': '}
          {fresh > 0 && <Names plan={plan} standing="new" />}
        </li>
        <li data-import-same={same}>{same} the same as here</li>
        <li data-import-conflict={conflicts}>
          {conflicts} here and in the file, but not the same{conflicts > 0 && ': '}
          {conflicts > 0 && <Names plan={plan} standing="conflict" />}
        </li>
      </ul>
      {fresh + conflicts === 0 ? (
        <p>There is nothing in it that your book has not.</p>
      ) : conflicts === 0 ? (
        <button type="button" data-import-take="mine" onClick={() => void take('mine')}>
          Add what is new
        </button>
      ) : (
        <>
          <button type="button" data-import-take="mine" onClick={() => void take('mine')}>
            Add what is new, keep mine where they differ
          </button>
          <button type="button" data-import-take="theirs" onClick={() => void take('theirs')}>
            Take the file’s where they differ
          </button>
          <button type="button" data-import-take="both" onClick={() => void take('both')}>
            Keep both
          </button>
        </>
      )}
      <button type="button" onClick={done}>
        Leave the book as it is
      </button>
    </div>
  )
}
