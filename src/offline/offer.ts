import { atRest, isAtRest } from './atWork.ts'
import type { Asked } from './messages.ts'

/* A bar at the foot of the screen: a new edition is there, and is loaded when the reader says so. */

const LATER = 'witness-mark.edition-later'
const TEXT = {
  here: 'A new edition of this site is here.',
  load: 'Load it',
  later: 'Later',
  work: 'A job is under way in another tab: finish it there, or close that tab, then load the new edition.',
  older: 'Another tab has loaded a new edition of this site. This page is still of the one before.',
  again: 'Load this page again',
}

interface Act {
  name: string
  text: string
  act(say: (text: string) => void): void
}

/** Shows the bar with its acts; says the text once it stands there, so that it is read out. */
function showBar(text: string, acts: readonly Act[]): void {
  document.querySelector('[data-new-edition]')?.remove()
  const bar = document.createElement('div')
  bar.className = 'edition-bar'
  bar.dataset['newEdition'] = ''
  const says = document.createElement('p')
  says.setAttribute('role', 'status')
  const say = (words: string): void => void (says.textContent = words)
  bar.append(
    says,
    ...acts.map((each) => {
      const button = document.createElement('button')
      button.type = 'button'
      button.dataset['do'] = each.name
      button.textContent = each.text
      button.addEventListener('click', () => each.act(say))
      return button
    }),
  )
  document.body.append(bar)
  requestAnimationFrame(() => say(text))
}

const hide = (): void => document.querySelector('[data-new-edition]')?.remove()

function later(): void {
  hide()
  try {
    sessionStorage.setItem(LATER, '1')
  } catch {
    // then it is offered again on the next page
  }
}

function wasPutOff(): boolean {
  try {
    return sessionStorage.getItem(LATER) !== null
  } catch {
    return false
  }
}

let asked = false
let offered = false

async function load(
  registration: ServiceWorkerRegistration,
  say: (text: string) => void,
): Promise<void> {
  if (!(await isAtRest())) return say(TEXT.work)
  asked = true
  const ask: Asked = { ask: 'load' }
  registration.waiting?.postMessage(ask)
}

/** Offers the edition that waits, once no job is under way. */
export async function offerEdition(registration: ServiceWorkerRegistration): Promise<void> {
  if (offered || wasPutOff()) return
  offered = true
  await atRest()
  showBar(TEXT.here, [
    { name: 'load-edition', text: TEXT.load, act: (say) => void load(registration, say) },
    { name: 'edition-later', text: TEXT.later, act: later },
  ])
}

/** The new edition has come: loads this page in it where the reader asked here, else says that the page is older. */
export function tellOlder(): void {
  if (asked) return location.reload()
  showBar(TEXT.older, [
    { name: 'load-again', text: TEXT.again, act: () => location.reload() },
    { name: 'edition-later', text: TEXT.later, act: hide },
  ])
}
