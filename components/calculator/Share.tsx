import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import { encodeLink } from '../../src/calculators/link.ts'
import type { CalculatorState } from './useCalculator.ts'

/** The address of this state, or why there is none. */
export function linkOf(state: CalculatorState): { href: string } | { problem: string } {
  try {
    const query = encodeLink(state.definition, state.given, state.held)
    return { href: new URL(`${state.base}calculators/${state.definition.id}/?${query}`, location.href).href }
  } catch (error) {
    return { problem: error instanceof Error ? error.message : String(error) }
  }
}

/** Copies text; false where the browser refuses, so that the text can be shown to copy by hand. */
async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text)
    return true
  } catch {
    return false
  }
}

interface ShareProps {
  /** the card's state, read when a button is pressed, so that these buttons need not be drawn anew with every move of a slider */
  latest: { readonly current: CalculatorState }
  held: boolean
  embed: boolean
}

/** What one can do with the numbers: hold them as "before", start again, send them, print them. */
export function Share({ latest, held, embed }: ShareProps): JSX.Element {
  const [note, setNote] = useState('')
  const [shown, setShown] = useState('')
  const [code, setCode] = useState('')
  const withLink = async (use: (href: string) => Promise<void> | void): Promise<void> => {
    const link = linkOf(latest.current)
    setNote('')
    if ('problem' in link) setNote(link.problem)
    else await use(link.href)
  }
  const copyLink = (): Promise<void> =>
    withLink(async (href) => {
      setShown(href)
      setNote((await copy(href)) ? 'Link copied. It opens these values.' : 'This browser does not allow copying. Select the link and copy it.')
    })
  const drawCode = (): Promise<void> =>
    withLink(async (href) => {
      const { renderSVG } = await import('uqr')
      setCode(renderSVG(href, { ecc: 'L', border: 2, blackColor: '#000', whiteColor: '#fff' }))
      setShown(href)
    })
  return (
    <div class="share needs-script">
      <div class="act">
        <button type="button" onClick={() => latest.current.hold()}>
          Hold as “before”
        </button>
        {held && (
          <button type="button" onClick={() => latest.current.release()}>
            Forget “before”
          </button>
        )}
        <button type="button" onClick={() => latest.current.reset()}>
          Reset
        </button>
      </div>
      <div class="act">
        <button type="button" onClick={() => void copyLink()}>
          Copy link
        </button>
        <button type="button" onClick={() => void drawCode()}>
          QR code
        </button>
        {!embed && (
          <button type="button" onClick={() => void drawCode().then(() => setTimeout(print, 100))}>
            Print
          </button>
        )}
      </div>
      <p class="note" role="status">
        {note}
      </p>
      {shown && <input class="link" type="text" readOnly aria-label="Link to these values" value={shown} onFocus={(event) => event.currentTarget.select()} />}
      {code && <div class="qr" role="img" aria-label="QR code of the link" dangerouslySetInnerHTML={{ __html: code }} />}
    </div>
  )
}
