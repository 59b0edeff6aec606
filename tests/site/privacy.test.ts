import { readdirSync, readFileSync } from 'node:fs'
import { parseHTML } from 'linkedom'
import { expect, test } from 'vitest'
import { builtText } from './pages.ts'

/** Names under which the site's scripts keep something in a browser, or that stand for no keeping: locks, channels, events. */
const NOT_KEPT = ['witness-mark.book', 'witness-mark.at-work']

test('the page of what is kept names every key that a script keeps something under, and no other', () => {
  const files = ['src', 'components'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|tsx)$/.test(file))
      .map((file) => `${folder}/${file}`),
  )
  const used = files.flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/['"`](witness-mark(?:[.-][\w.-]*)?(?: |(?=['"`$])))/g)]
      .map(([, key]) => (key!.endsWith(' ') ? `${key}/` : key!))
      .filter((key) => !NOT_KEPT.includes(key) && key !== 'witness-mark-bench-book'),
  )
  const { document } = parseHTML(builtText('/privacy/'))
  const named = [...document.querySelectorAll('[data-keys]')].flatMap(
    (row) => row.getAttribute('data-keys')?.split('|') ?? [],
  )
  expect(named.sort()).toEqual([...new Set(used)].sort())
  expect(named.length).toBeGreaterThan(12)
})
