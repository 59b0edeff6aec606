import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'

const dist = path.resolve('dist')

/** Addresses of all built pages, "/" first. */
export function builtPages(): string[] {
  return readdirSync(dist, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.html'))
    .map((file) => `/${file.replace(/(^|\/)index\.html$/, '$1')}`)
    .sort()
}

/** The text of a built file at an address. */
export function builtText(address: string): string {
  return readFileSync(path.join(dist, address.endsWith('/') ? `${address}index.html` : address), 'utf8')
}

/** One page of each kind: the first of every folder, and the pages that stand alone. */
export function onePageOfEachKind(): string[] {
  const kinds = new Map<string, string>()
  for (const page of builtPages()) {
    const [, first = '', second] = page.split('/')
    const kind = second ? `${first}/*` : page
    if (!kinds.has(kind)) kinds.set(kind, page)
  }
  return [...kinds.values()]
}
