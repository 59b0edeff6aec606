import type { JSX } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { forgetKept, keepWhole, keptState } from '../../src/offline/askWorker.ts'
import type { KeepProblem } from '../../src/offline/askWorker.ts'
import type { KeptState } from '../../src/offline/messages.ts'

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`

const PROBLEM: Record<KeepProblem, string> = {
  full: 'There is no room left for it on this device. Free some room, then press the button again: what has come is still here.',
  network:
    'The connection broke off. What has come is still here: press the button again, and the rest follows.',
  edition:
    'A new edition of the site came out meanwhile. Load it first, then press the button again.',
  unsupported: 'This browser keeps no pages for this site.',
}

/** What is kept, or what keeping all of it would take. */
function Says({ state }: { state: KeptState | null | 'unknown' }): JSX.Element {
  if (state === null) return <p>{PROBLEM.unsupported}</p>
  const opened = 'Pages that you have opened work without a signal.'
  const whole = 'The whole site can be kept on this device, with its search and every calculator'
  if (state === 'unknown')
    return (
      <p>
        {opened} {whole}.
      </p>
    )
  if (state.whole)
    return (
      <p data-offline-kept={state.edition}>
        The whole site is kept on this device and works without a signal, the search too.
      </p>
    )
  return (
    <p>
      {opened} {whole}: {megabytes(state.wire)} to load, {megabytes(state.stored)} of room.
    </p>
  )
}

/** The whole site kept on this device, for where there is no signal: how much it is, how far it has come, and away with it. */
export function Offline(): JSX.Element {
  const [state, setState] = useState<KeptState | null | 'unknown'>('unknown')
  const [share, setShare] = useState<number | null>(null)
  const [note, setNote] = useState('')
  useEffect(() => void keptState().then(setState), [])
  const keep = async (): Promise<void> => {
    setNote('')
    setShare(0)
    const problem = await keepWhole(setShare)
    setShare(null)
    setNote(problem === null ? 'The whole site is now kept on this device.' : PROBLEM[problem])
    setState(await keptState())
  }
  const forget = async (): Promise<void> => {
    setState(await forgetKept())
    setNote('The kept pages are gone from this device. The bench book is as it was.')
  }
  const known = state === 'unknown' ? null : state
  return (
    <section class="offline needs-script" id="offline" aria-labelledby="offline-title">
      <h2 id="offline-title">Without a signal</h2>
      <Says state={state} />
      <p class="act">
        {known && !known.whole && (
          <button
            type="button"
            data-do="keep-offline"
            aria-disabled={share !== null}
            onClick={() => share === null && void keep()}
          >
            Keep for offline ({megabytes(known.wire)})
          </button>
        )}
        {share !== null && (
          <label>
            <progress max={1} value={share} data-offline-share={share} /> {Math.floor(share * 100)}{' '}
            % is here
          </label>
        )}
        {known?.whole && (
          <button type="button" data-do="forget-offline" onClick={() => void forget()}>
            Take the site off this device
          </button>
        )}
      </p>
      <p role="status" data-offline-note>
        {note}
      </p>
    </section>
  )
}

const PUT_OFF = 'witness-mark.offline-asked'

function wasAsked(): boolean {
  try {
    return localStorage.getItem(PUT_OFF) !== null
  } catch {
    return true
  }
}

/** On a bike's page, once: that the site can be kept for where there is no signal. */
export function OfflineOffer(): JSX.Element | null {
  const [shown, setShown] = useState(false)
  useEffect(() => {
    if (!wasAsked()) void keptState().then((state) => setShown(state !== null && !state.whole))
  }, [])
  const put = (): void => {
    setShown(false)
    try {
      localStorage.setItem(PUT_OFF, '1')
    } catch {
      // then it is asked again on the next page
    }
  }
  if (!shown) return null
  return (
    <p class="card offline-offer on-screen" data-offline-offer>
      Is there a signal where the bike stands? The whole site can be kept on this device.{' '}
      <a href="#offline" onClick={put}>
        Keep it for offline
      </a>{' '}
      <button type="button" data-do="offline-later" onClick={put}>
        Not now
      </button>
    </p>
  )
}
