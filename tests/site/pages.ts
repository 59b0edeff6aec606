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
  return readFileSync(
    path.join(dist, address.endsWith('/') ? `${address}index.html` : address),
    'utf8',
  )
}

/** Pages by kind, at most so many of each: those of one folder, and the pages that stand alone. */
export function pagesByKind(most: number): Map<string, string[]> {
  const kinds = new Map<string, string[]>()
  for (const page of builtPages()) {
    const [, first = '', second] = page.split('/')
    const kind = second ? `${first}/*` : page
    const known = kinds.get(kind) ?? []
    if (known.length < most) kinds.set(kind, [...known, page])
  }
  return kinds
}

/** One page of each kind. */
export const onePageOfEachKind = (): string[] => [...pagesByKind(1).values()].flat()
