import { base } from '../base.ts'
import { nameOfKind } from './kinds.ts'
import type { Entry } from './lexicon.ts'
import { loadSearch, searchSite } from './load.ts'

const MOST = 5
const PAUSE_MS = 120

function option(entry: Entry, id: string): HTMLLIElement {
  const item = document.createElement('li')
  item.id = id
  item.role = 'option'
  item.ariaSelected = 'false'
  item.dataset['address'] = base + entry.url
  const kind = document.createElement('small')
  kind.textContent = entry.signal
    ? `${entry.signal} · ${nameOfKind(entry.kind)}`
    : nameOfKind(entry.kind)
  item.append(entry.title, ' ', kind)
  return item
}

/** The first five results under the field, as a combobox whose list is optional: Enter without a choice still submits the form. */
export function suggest(box: HTMLFormElement, field: HTMLInputElement): void {
  const list = box.querySelector<HTMLUListElement>('[role=listbox]')
  if (!list) return
  let chosen = -1
  let run = 0
  let pause: ReturnType<typeof setTimeout> | undefined

  const choose = (index: number): void => {
    chosen = index
    for (const [at, item] of [...list.children].entries()) item.ariaSelected = String(at === index)
    const item = list.children[index]
    if (item) field.setAttribute('aria-activedescendant', item.id)
    else field.removeAttribute('aria-activedescendant')
  }
  const close = (): void => {
    run += 1
    list.hidden = true
    field.ariaExpanded = 'false'
    choose(-1)
  }
  const open = (entries: readonly Entry[]): void => {
    list.replaceChildren(...entries.map((entry, index) => option(entry, `${list.id}-${index}`)))
    list.hidden = entries.length === 0
    field.ariaExpanded = String(entries.length > 0)
    choose(-1)
  }
  const update = async (): Promise<void> => {
    const current = ++run
    const text = field.value.trim()
    if (text.length < 2) return close()
    const { ranked } = await searchSite(text, new Set())
    if (current === run && document.activeElement === field)
      open(ranked.slice(0, MOST).map(({ entry }) => entry))
  }
  const go = (item: Element | null | undefined): void => {
    if (item instanceof HTMLElement && item.dataset['address'])
      location.assign(item.dataset['address'])
  }
  const onKey = (event: KeyboardEvent): void => {
    if (event.isComposing || list.hidden) return
    const count = list.children.length
    if (event.key === 'ArrowDown') choose(chosen + 1 < count ? chosen + 1 : -1)
    else if (event.key === 'ArrowUp') choose(chosen < 0 ? count - 1 : chosen - 1)
    else if (event.key === 'Enter' && chosen >= 0) go(list.children[chosen])
    else if (event.key === 'Escape') close()
    else return
    event.preventDefault()
  }

  field.addEventListener('input', () => {
    clearTimeout(pause)
    pause = setTimeout(() => void update().catch(close), PAUSE_MS)
  })
  // before the handler by which Escape leaves the field, so that the first Escape only closes the list
  field.addEventListener('keydown', onKey, { capture: true })
  field.addEventListener('blur', close)
  // a press must not take the focus from the field before the click arrives
  list.addEventListener('pointerdown', (event) => event.preventDefault())
  list.addEventListener('click', (event) =>
    go(event.target instanceof Element ? event.target.closest('[role=option]') : null),
  )
  void loadSearch().catch(() => undefined)
  if (field.value) void update().catch(close)
}
