import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import type * as Codes from './codes.ts'
import type { CardLink } from './link.ts'
import { NOT_LOADED } from './notLoaded.ts'
import type { CalculatorState } from './useCalculator.ts'
import { loadCodes, usePaperCode } from './usePaperCode.ts'

/** Copies text; false where the browser refuses, so that the text can be shown to copy by hand. */
async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text)
    return true
  } catch {
    return false
  }
}

/** What was last copied, and what was said of it. */
interface Copied {
  href: string
  note: string
}

async function copied(href: string): Promise<Copied> {
  const note = (await copy(href))
    ? 'Link copied. It opens these values.'
    : 'This browser does not allow copying. Select the link and copy it.'
  return { href, note }
}

/** What there is to say of the link in sight: what was copied is not what the box shows once a value has changed. */
function noteOn(link: CardLink, { href, note }: Copied): string {
  if ('problem' in link) return link.problem
  if (href === '' || href === link.href) return note
  return 'The values have changed since you copied the link.'
}

interface ShareProps {
  state: CalculatorState
  embed: boolean
}

/** What one can do with the numbers: send them, print them. Link and code are those of the values in sight. */
export function Share({ state, embed }: ShareProps): JSX.Element {
  const [last, setLast] = useState<Copied>({ href: '', note: '' })
  const [codes, setCodes] = useState<typeof Codes | null>(null)
  const [coded, setCoded] = useState(false)
  const [paper, readyForPaper] = usePaperCode(state, embed)
  const link = codes && codes.links.linkOf(state, location.href)
  /** What sends comes after the page; without a connection it may not. */
  const load = async (): Promise<typeof Codes | null> => {
    const loaded = await loadCodes().catch(() => null)
    if (loaded) setCodes(loaded)
    else setLast({ href: '', note: NOT_LOADED })
    return loaded
  }
  const copyLink = async (): Promise<void> => {
    const loaded = await load()
    if (loaded === null) return
    const now = loaded.links.linkOf(state, location.href)
    if ('href' in now) setLast(await copied(now.href))
  }
  const showCode = async (): Promise<void> => {
    setCoded((await load()) !== null)
  }
  return (
    <div class="share needs-script">
      <Send
        copyLink={copyLink}
        showCode={showCode}
        printNow={embed ? null : () => readyForPaper().then(print)}
      />
      <p class="note" role="status">
        {link ? noteOn(link, last) : last.note}
      </p>
      {link && 'href' in link && <LinkBox href={link.href} />}
      {codes && coded && link && 'href' in link && (
        <Code link={codes.links.sentLink(state)} codeOf={codes.codeOf} />
      )}
      <div class="paper-code" ref={paper} />
    </div>
  )
}

function LinkBox({ href }: { href: string }): JSX.Element {
  return (
    <input
      class="link"
      type="text"
      readOnly
      aria-label="Link to these values"
      value={href}
      onFocus={(event) => event.currentTarget.select()}
    />
  )
}

function Code({ link, codeOf }: { link: CardLink; codeOf(href: string): string }): JSX.Element {
  if ('problem' in link)
    return (
      <p class="note" role="status">
        {link.problem}
      </p>
    )
  return (
    <div
      class="qr"
      role="img"
      aria-label="QR code of the link"
      dangerouslySetInnerHTML={{ __html: codeOf(link.href) }}
    />
  )
}

interface SendProps {
  copyLink(): Promise<void>
  showCode(): Promise<void>
  /** absent on a card that another page embeds */
  printNow: (() => Promise<void>) | null
}

function Send({ copyLink, showCode, printNow }: SendProps): JSX.Element {
  return (
    <div class="act">
      <button type="button" onClick={() => void copyLink()}>
        Copy link
      </button>
      <button type="button" onClick={() => void showCode()}>
        QR code
      </button>
      {printNow && (
        <button type="button" onClick={() => void printNow()}>
          Print
        </button>
      )}
    </div>
  )
}
