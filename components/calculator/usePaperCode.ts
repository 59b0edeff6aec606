import type { RefObject } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import type * as Codes from './codes.ts'
import type { CalculatorState } from './useCalculator.ts'

/** How codes are drawn, for all cards of a page. */
export const loadCodes = (): Promise<typeof Codes> => import('./codes.ts')

/** Once the page has loaded: what only paper needs must not compete with what is on the screen. */
const pageLoaded = (): Promise<unknown> =>
  document.readyState === 'complete'
    ? Promise.resolve()
    : new Promise((done) => addEventListener('load', done, { once: true }))

/** Keeps a code of the values in sight for paper, whoever prints. Gives where it is drawn, and a promise that a print can carry it; on a page that embeds the card there is none. */
export function usePaperCode(
  state: CalculatorState,
  embed: boolean,
): [place: RefObject<HTMLDivElement>, ready: () => Promise<void>] {
  const latest = useRef(state)
  latest.current = state
  const place = useRef<HTMLDivElement>(null)
  const drawing = useRef<Promise<void> | null>(null)
  const ready = (): Promise<void> => {
    drawing.current ??= loadCodes().then(({ codeOnPaper }) => {
      codeOnPaper(place.current!, () => latest.current)
    })
    // without the drawing of codes a print has none; the next wish for one tries again
    return drawing.current.catch(() => {
      drawing.current = null
    })
  }
  useEffect(() => {
    if (!embed) void pageLoaded().then(ready)
  }, [])
  return [place, ready]
}
