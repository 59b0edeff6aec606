import type { SheetChange } from '../jobSheets.ts'

/* What was typed and is not kept yet. It is written down at once, where the browser waits for it, so that a page which goes in that moment loses nothing: the next one takes it over. */

const PREFIX = 'witness-mark.pending.'

/** A change on its way into the book. */
export interface Pending {
  change: SheetChange
  /** in words, for the list of changes */
  what: string
  /** which kind of page made it */
  kind: string
  edition: string
}

const tab = `${PREFIX}${Math.random().toString(36).slice(2, 10)}`

/** Only what sets a value can be done twice without harm. */
const repeatable = ({ change }: Pending): boolean =>
  ['write', 'tick', 'untick', 'answer'].includes(change.do)

/** Writes down what this page has not kept yet. */
export function note(pending: readonly Pending[]): void {
  const list = pending.filter(repeatable)
  try {
    if (list.length === 0) localStorage.removeItem(tab)
    else localStorage.setItem(tab, JSON.stringify(list))
  } catch {
    // without it the change is kept a moment later, or the page says that it is not
  }
}

function readList(text: string | null): Pending[] {
  try {
    const list: unknown = JSON.parse(text ?? '[]')
    return Array.isArray(list) ? (list as Pending[]) : []
  } catch {
    return []
  }
}

/** What pages that went have left behind, and its removal once it is kept. */
export function leftBehind(): { pending: Pending[]; forget(): void } {
  try {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith(PREFIX) && key !== tab)
    return {
      pending: keys.flatMap((key) => readList(localStorage.getItem(key))),
      forget: () => keys.forEach((key) => localStorage.removeItem(key)),
    }
  } catch {
    return { pending: [], forget: () => undefined }
  }
}
