/* Which chapters a reader has to be asked about again: the chapter of each question that was answered wrong, with how often it
   was asked again and answered right since. Kept on this device alone. */

const KEY = 'witness-mark.again'

export type Missed = Record<string, number>

export function readMissed(): Missed {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}')
    return typeof stored === 'object' && stored !== null ? (stored as Missed) : {}
  } catch {
    return {}
  }
}

export function keepMissed(missed: Missed): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(missed))
  } catch {
    // not kept; the page works on
  }
}

/** The chapter of an address, if it is one's. */
export const chapterOf = (address: string): string | null =>
  /\/chapters\/([\w-]+)\/(?:#|$)/.exec(address)?.[1] ?? null

/** Told by a question when the reader has answered it: whether the answer was right. */
export const tellAnswered = (question: HTMLElement, right: boolean): void => {
  question.dispatchEvent(new CustomEvent('answered', { bubbles: true, detail: right }))
}

const here = chapterOf(location.pathname)
if (here !== null)
  document.addEventListener('answered', (event) => {
    if (event instanceof CustomEvent && event.detail === false)
      keepMissed({ ...readMissed(), [here]: 0 })
  })
