/* `npm run search-quality`: asks the built site's own search page every question of the two lists, and prints how often the answer comes first, and in the first three. */
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Page } from 'playwright-core'
import { parse } from 'yaml'
import { openSite } from './browser.ts'

interface Asked {
  q: string
  who: string
  want: string[]
}

const LISTS = [
  'search-queries.yaml',
  'search-queries-more.yaml',
  'search-queries-third.yaml',
  'search-queries-fourth.yaml',
  'search-queries-fifth.yaml',
]
const TARGET = 0.95

/** Addresses of the results, in order, without the origin. */
async function ask(page: Page, origin: string, q: string): Promise<string[]> {
  await page.goto(`${origin}/search/?q=${encodeURIComponent(q)}`)
  await page.waitForFunction(
    () => document.querySelector('[data-search-status]')?.textContent !== '',
  )
  const found = await page.$$eval('li[data-result]', (items) =>
    items.map((item) => item.querySelector('a')?.href ?? ''),
  )
  return found.map((address) => address.slice(origin.length))
}

const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`

/** Scores one list and prints what did not come first; returns the share in the first three. */
async function score(page: Page, origin: string, list: string): Promise<number> {
  const asked: Asked[] = parse(await readFile(path.join(import.meta.dirname, list), 'utf8'))
  let first = 0
  let firstThree = 0
  for (const { q, want } of asked) {
    const found = await ask(page, origin, q)
    const at = found.findIndex((address) => want.includes(address))
    if (at === 0) first += 1
    if (at >= 0 && at < 3) firstThree += 1
    else
      console.log(
        `  missed: “${q}” gave ${found.slice(0, 3).join(', ') || 'nothing'}; wanted ${want.join(' or ')}`,
      )
  }
  console.log(
    `${list}: ${asked.length} queries, hit@1 ${percent(first, asked.length)}, hit@3 ${percent(firstThree, asked.length)}`,
  )
  return firstThree / asked.length
}

const site = await openSite()
const page = await site.browser.newPage()
page.on('pageerror', (error) => console.log(`  error on the page: ${error.message}`))
const shares: number[] = []
for (const list of LISTS) shares.push(await score(page, site.origin, list))
await site.close()
if (shares.some((share) => share < TARGET)) {
  console.log(`The target is ${percent(TARGET, 1)} in the first three.`)
  process.exitCode = 1
}
