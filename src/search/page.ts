import { base } from '../base.ts'
import type { Found } from './find.ts'
import { readKinds } from './kinds.ts'
import { loadSearch, searchSite } from './load.ts'
import { addPassages, resultItem } from './result.ts'
import { sayCorrections, sayCount } from './say.ts'

/* The search page: the words and the kind stand in the address, the results in the list, their number in the status line. */

const PAUSE_MS = 200
/** How long a list of titles waits for its passages: on a fast line they come together and nothing moves. */
const PATIENCE_MS = 150
const AT_ONCE = 10
/** Results weaker than this share of the best say little about what was asked. */
const WORTH_SHOWING = 0.4

const form = document.querySelector<HTMLFormElement>('[data-search-page]')
const input = form?.querySelector<HTMLInputElement>('[name=q]')
const select = form?.querySelector<HTMLSelectElement>('[name=kind]')
const status = document.querySelector<HTMLElement>('[data-search-status]')
const corrected = document.querySelector<HTMLElement>('[data-search-corrected]')
const list = document.querySelector<HTMLOListElement>('[data-search-results]')
const more = document.querySelector<HTMLButtonElement>('[data-search-more]')
const empty = document.querySelector<HTMLElement>('[data-search-empty]')

let run = 0
let shown: Found | undefined
let showing = AT_ONCE

function keepInAddress(text: string, kind: string): void {
  const words = new URLSearchParams({ ...(text && { q: text }), ...(kind && { kind }) })
  history.replaceState(null, '', `${location.pathname}${words.size > 0 ? `?${words}` : ''}`)
}

const worthShowing = ({ ranked }: Found): Found['ranked'] =>
  ranked.filter(({ score }) => score >= WORTH_SHOWING * (ranked[0]?.score ?? 0))

/** The items of some results; waits for their passages, but not for long, and lets late ones come in by themselves. */
async function items({ query, ranked, load }: Found): Promise<HTMLLIElement[]> {
  const made = ranked.map(({ entry }) => resultItem(entry, base))
  const filled = ranked.map(async ({ entry }, index) => {
    const [item, fragment] = [made[index], await load(entry.id)]
    if (item && fragment) addPassages(item, entry, fragment, query, base)
  })
  await Promise.race([
    Promise.allSettled(filled),
    new Promise((done) => setTimeout(done, PATIENCE_MS)),
  ])
  return made
}

function say(text: string, correction = ''): void {
  if (status) status.textContent = text
  if (corrected) corrected.textContent = correction
}

function clear(): void {
  shown = undefined
  list?.replaceChildren()
  if (more) more.hidden = true
}

async function show(found: Found, text: string, current: number): Promise<void> {
  const ranked = worthShowing(found)
  const made = await items({ ...found, ranked: ranked.slice(0, AT_ONCE) })
  if (current !== run) return
  shown = { ...found, ranked }
  showing = made.length
  list?.replaceChildren(...made)
  if (more) more.hidden = ranked.length <= showing
  if (empty) empty.hidden = ranked.length > 0
  say(sayCount(ranked.length, text), sayCorrections(found.query.corrections))
}

async function search(): Promise<void> {
  const current = ++run
  const text = input?.value.trim() ?? ''
  const kind = select?.value ?? ''
  keepInAddress(text, kind)
  if (text === '') {
    clear()
    if (empty) empty.hidden = false
    say('')
    return
  }
  try {
    const found = await searchSite(text, readKinds([kind]))
    if (current === run) await show(found, text, current)
  } catch {
    if (current !== run) return
    clear()
    say('The search did not load. Check the connection, then press Search again.')
  }
}

async function showMore(): Promise<void> {
  if (!shown) return
  const found = shown
  const made = await items({ ...found, ranked: found.ranked.slice(showing, showing + AT_ONCE) })
  if (found !== shown) return
  showing += made.length
  list?.append(...made)
  if (more) more.hidden = found.ranked.length <= showing
  // the button may be gone, and whoever pressed it goes on with the first new result
  made[0]?.querySelector('a')?.focus()
}

function start(): void {
  const words = new URLSearchParams(location.search)
  if (input) input.value = words.get('q') ?? ''
  if (select) select.value = [...readKinds(words.getAll('kind'))][0] ?? ''
  if (input?.value) void search()
  let pause: ReturnType<typeof setTimeout> | undefined
  input?.addEventListener('focus', () => void loadSearch().catch(() => undefined), { once: true })
  input?.addEventListener('input', () => {
    clearTimeout(pause)
    pause = setTimeout(() => void search(), PAUSE_MS)
  })
  form?.addEventListener('submit', (event) => {
    event.preventDefault()
    clearTimeout(pause)
    void search()
  })
  select?.addEventListener('change', () => void search())
  more?.addEventListener('click', () => void showMore())
}

start()
