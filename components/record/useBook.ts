import { useCallback, useEffect, useState } from 'preact/hooks'
import type { Write } from '../../src/record/changes.ts'
import { changeRecords, loadWhole, undoLast } from '../../src/record/store/bookStore.ts'
import type { Whole } from '../../src/record/store/bookStore.ts'
import type { Shelf } from '../../src/record/store/database.ts'
import { keepingNow, KEEPING_TEXT, onBookChange } from '../../src/record/store/keeper.ts'
import { keepLeftBehind } from '../../src/record/store/sheetStore.ts'

/** The book in sight, and what can be done with it. */
export interface BookState {
  /** null until it was read */
  whole: Whole | null
  /** why it is not kept, in words */
  problem: string | null
  /** what was done last, in words */
  note: string
  tell(note: string): void
  /** changes the book; `make` says what is to be written */
  change(
    what: string,
    make: (shelf: Shelf) => Promise<readonly Write[]>,
    told?: string,
  ): Promise<void>
  undo(): Promise<void>
  read(): Promise<void>
}

/** Reads the book, and again whenever it changes here or in another tab. */
export function useBook(): BookState {
  const [whole, setWhole] = useState<Whole | null>(null)
  const [problem, setProblem] = useState<string | null>(null)
  const [note, tell] = useState('')
  const read = useCallback(async () => {
    try {
      setWhole(await loadWhole())
      const why = keepingNow()
      setProblem(why && KEEPING_TEXT[why])
    } catch (error) {
      setProblem(`The bench book could not be read: ${String(error)}. Load this page again.`)
    }
  }, [])
  useEffect(() => {
    void keepLeftBehind().then(read, read)
    onBookChange(() => void read())
  }, [read])
  return {
    whole,
    problem,
    note,
    tell,
    read,
    async change(what, make, told = '') {
      const kept = await changeRecords({ what }, make)
      tell(kept ? told : '')
      await read()
    },
    async undo() {
      const what = await undoLast()
      tell(what === null ? 'There is nothing to take back.' : `Taken back: ${what}`)
      await read()
    },
  }
}
