import { passages } from './excerpt.ts'
import type { Piece, Section } from './excerpt.ts'
import type { Fragment } from './find.ts'
import { nameOfKind } from './kinds.ts'
import type { Entry } from './lexicon.ts'
import type { Query } from './query.ts'

function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className: string,
  ...children: (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name)
  if (className) made.className = className
  made.append(...children)
  return made
}

function link(address: string, text: string): HTMLAnchorElement {
  const made = element('a', '', text)
  made.href = address
  return made
}

const marked = (pieces: readonly Piece[]): (Node | string)[] =>
  pieces.map(({ text, found }) => (found ? element('mark', '', text) : text))

const section = (page: string, { id, heading, pieces }: Section): HTMLLIElement =>
  element(
    'li',
    '',
    link(`${page}#${id}`, heading),
    ' ',
    element('span', 'excerpt', ...marked(pieces)),
  )

function kindOf({ kind, signal }: Entry): HTMLElement {
  const line = element('p', 'result-kind')
  if (signal) line.append(element('b', `signal ${signal.toLowerCase()}`, signal), ' ')
  line.append(nameOfKind(kind))
  return line
}

/** One result by what is known of it at once: its link, its kind and signal word. */
export function resultItem(entry: Entry, base: string): HTMLLIElement {
  const item = element(
    'li',
    'result',
    element('h2', '', link(base + entry.url, entry.title)),
    kindOf(entry),
  )
  item.dataset['result'] = ''
  item.dataset['kind'] = entry.kind
  return item
}

/** Adds the passage that answers best, and the headings under which there is more. */
export function addPassages(
  item: HTMLLIElement,
  entry: Entry,
  fragment: Fragment,
  query: Query,
  base: string,
): void {
  const { passage, sections } = passages(fragment, entry.title, query)
  item.append(element('p', 'excerpt', ...marked(passage.pieces)))
  if (sections.length > 0)
    item.append(
      element('ul', 'result-sections', ...sections.map((each) => section(base + entry.url, each))),
    )
}
