import { mkdirSync } from 'node:fs'
import axe from 'axe-core'
import { parseHTML } from 'linkedom'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { Bundle } from '../../src/build/bundle.ts'
import { Needs } from '../../src/build/offlineNeeds.ts'
import { bikes, jobs } from './bookRecords.ts'
import { launch } from './browser.ts'
import { anotherEdition, openLine } from './offlineSite.ts'
import type { Line } from './offlineSite.ts'
import { builtText, onePageOfEachKind } from './pages.ts'

/* The site where there is no signal, and when a new edition comes out: a real service worker, and a server whose line is cut. */

const SAG = '/procedures/measure-front-sag/'
/** What another edition says on one page. */
const OLD = 'What this site is made of'
const NEW = 'What another edition is made of'

let line: Line
let browser: Browser
let context: BrowserContext
let other: Promise<string>
beforeAll(async () => {
  mkdirSync('.cache/tmp', { recursive: true })
  other = anotherEdition('licences', OLD, NEW)
  line = await openLine('dist')
  browser = await launch()
})
afterAll(async () => {
  await browser.close()
  line.close()
})

async function fresh(): Promise<Page> {
  await context?.close()
  line.mend()
  await line.serve('dist')
  context = await browser.newContext({ serviceWorkers: 'allow' })
  context.setDefaultTimeout(15_000)
  return context.newPage()
}
const open = (page: Page, address: string) => page.goto(line.origin + address)
/** Waits until a page is kept, with all that it needs: what it has loaded, and what it loads later. */
async function kept(page: Page, address: string): Promise<void> {
  const html = builtText(`${address}index.html`)
  const needs = await new Needs('dist', await Bundle.read()).of(html)
  await page.waitForFunction(
    async (addresses) => {
      const { active } = await navigator.serviceWorker.ready
      const cache = await caches.open('witness-mark /')
      const all = await Promise.all(
        addresses.map((each) => cache.match(each, { ignoreSearch: true })),
      )
      return active?.state === 'activated' && all.every((each) => each !== undefined)
    },
    [address, ...needs.map((need) => `/${need}`)],
    { polling: 50 },
  )
}
const heading = (page: Page) => page.locator('h1').first().innerText()
const soon = <T>(look: () => Promise<T>) => expect.poll(look, { timeout: 15_000 })
/** Locks of this site that are held, or that something waits for. */
const locksOf = async (page: Page, how: 'held' | 'pending'): Promise<string[]> => {
  const locks = await page.evaluate(() => navigator.locks.query())
  return (locks[how] ?? []).map(({ name, mode }) => `${mode} ${name}`)
}
const isOffer = (lock: string): boolean => lock === 'exclusive witness-mark.at-work'
const describes = (page: Page) => page.locator('meta[name="description"]').getAttribute('content')
/** The editions of which pages are kept. */
const editionsKept = (page: Page): Promise<(string | undefined)[]> =>
  page.evaluate(async () => {
    const cache = await caches.open('witness-mark /')
    const pages = (await cache.keys()).filter(({ url }) => /\/\?__WB/.test(url))
    const texts = await Promise.all(pages.map(async (each) => (await cache.match(each))!.text()))
    return [...new Set(texts.map((text) => /name="edition" content="(\w+)"/.exec(text)?.[1]))]
  })
/** What axe finds on the page as it is now. */
async function faultsOf(page: Page): Promise<string[]> {
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    })
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target }) => `${id}: ${target.join(' ')}`),
    )
  })
}
async function keepWhole(page: Page): Promise<void> {
  await open(page, '/record/')
  const button = page.locator('[data-do="keep-offline"]')
  expect(await button.innerText()).toMatch(/^Keep for offline \(\d\.\d MB\)$/)
  await button.click()
  await page.locator('[data-offline-kept]').waitFor()
}

describe('what was opened', () => {
  test('works without a network, with its numbers; what was not says so; the first visit asks for nothing else', async () => {
    const page = await fresh()
    const asked: string[] = []
    page.on('request', (request) => asked.push(new URL(request.url()).pathname))
    await open(page, '/calculators/sag/')
    await kept(page, '/calculators/sag/')
    // of all that this is, a page itself loads no more than the script that starts it
    expect(asked.filter((each) => /sw\.js|offer|askWorker|icons/.test(each))).toEqual([])
    line.cut()
    await open(page, '/calculators/sag/?v=1&extended=151')
    await soon(() => page.locator('[name="extended"]').inputValue()).toBe('151')
    await page.locator('[name="extended"]').fill('155')
    // its remarks were never loaded before
    await page.locator('[data-remarks], .remarks').first().waitFor()
    await soon(() => page.locator('output[name="sag"]').getAttribute('data-si')).not.toBeNull()
    await open(page, '/calculators/sag?')
    expect(new URL(page.url()).pathname).toBe('/calculators/sag/')
    expect(await heading(page)).toBe('Sag from three readings')
    await open(page, '/glossary/')
    expect(await heading(page)).toBe('No connection, and this page is not kept here')
    await open(page, '/no-such-page/')
    expect(await heading(page)).toBe('There is no page at this address')
    line.mend()
    expect((await open(page, '/no-such-page/'))?.status()).toBe(404)
    await open(page, '/chapters/friction/')
    await page.waitForURL('**/chapters/sag/')
  })
})

describe('the whole site kept', () => {
  test('every kind of page, the search, the calculators and the book work without a network; then it can be taken away', async () => {
    const page = await fresh()
    await keepWhole(page)
    line.cut()
    const pages = onePageOfEachKind()
    expect(pages.length).toBeGreaterThan(30)
    const trouble: string[] = []
    page.on('pageerror', (error) => trouble.push(error.message))
    for (const address of pages) {
      const response = await open(page, address)
      const built = parseHTML(builtText(address)).document.querySelector('title')!.textContent
      if (!builtText(address).includes('http-equiv="refresh"'))
        expect([response?.status(), await page.title()], address).toEqual([200, built])
    }
    expect(trouble).toEqual([])
    await open(page, '/search/?q=jack')
    await page.locator('li[data-result][data-kind=caution]').first().waitFor()
    // worked out in a worker of its own
    await open(page, '/calculators/find-change/')
    await page.locator('[name="rider"]').fill('95')
    await page.locator('[data-way]').first().waitFor()
    await open(page, SAG)
    await page.locator('[data-reading="extended"] [data-box="0"]').fill('150')
    await soon(async () => (await jobs(page)).length).toBe(1)
    await open(page, '/record/')
    await page.locator('.bike-card').first().waitFor()
    line.mend()
    await page.locator('[data-do="forget-offline"]').click()
    await page.locator('[data-do="keep-offline"]').waitFor()
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBeLessThan(2)
    expect(await bikes(page)).toHaveLength(1)
  })
})

describe('keeping the whole site', () => {
  test('is offered once a bike is saved, and no more after “Not now”', async () => {
    const page = await fresh()
    await open(page, '/record/')
    await page.locator('[data-do="keep-offline"]').waitFor()
    expect(await page.locator('[data-offline-offer]').count()).toBe(0)
    await page.locator('[data-do="add-bike"]').click()
    await page.locator('[data-offline-offer] a[href="#offline"]').waitFor()
    expect(await faultsOf(page)).toEqual([])
    await page.locator('[data-do="offline-later"]').click()
    await page.locator('[data-offline-offer]').waitFor({ state: 'detached' })
    await page.reload()
    await page.locator('[data-do="keep-offline"]').waitFor()
    expect(await page.locator('[data-offline-offer]').count()).toBe(0)
  })
})

describe('a new edition', () => {
  test('is offered and loaded on request, never in the middle of a job, and leaves the book as it was', async () => {
    const page = await fresh()
    await open(page, '/licences/')
    await kept(page, '/licences/')
    await open(page, '/glossary/')
    await kept(page, '/glossary/')
    const work = await context.newPage()
    await open(work, SAG)
    await work.locator('[data-reading="extended"] [data-box="0"]').fill('150')
    await soon(async () => (await jobs(page)).length).toBe(1)
    const before = [await bikes(page), await jobs(page)]
    await line.serve(await other)
    await open(page, '/licences/')
    await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting !== null)
    // the edition of before is shown, and nothing is offered while the job is under way in the other tab
    expect(await describes(page)).toContain(OLD)
    await work.reload()
    // both tabs have seen it and wait: one behind the other
    await soon(async () => (await locksOf(page, 'pending')).filter(isOffer).length).toBe(2)
    for (const each of [page, work])
      expect(await each.locator('[data-new-edition]').count()).toBe(0)
    // what of the new edition is not kept yet comes from the network, and is not put with the old
    await open(page, '/cautions/')
    expect(await heading(page)).toBe('Cautions')
    await open(page, '/licences/')
    await work.close()
    const load = page.locator('[data-new-edition] [data-do="load-edition"]')
    await load.waitFor()
    expect(await describes(page)).toContain(OLD)
    expect(await faultsOf(page)).toEqual([])
    // a job that is gone on with meanwhile holds it up again
    const again = await context.newPage()
    await open(again, SAG)
    await soon(() => locksOf(again, 'held')).toContain('shared witness-mark.at-work')
    await load.click()
    await page.locator('[data-new-edition] [role="status"]', { hasText: 'under way' }).waitFor()
    await again.close()
    await load.click()
    await soon(() => describes(page)).toContain(NEW)
    expect([await bikes(page), await jobs(page)]).toEqual(before)
    // what was opened before is there in the new edition, and nothing of the old one is left
    line.cut()
    for (const address of ['/glossary/', SAG, '/licences/']) {
      await open(page, address)
      expect(await page.locator('.site-head').isVisible()).toBe(true)
      expect(await heading(page)).not.toContain('No connection')
    }
    expect(await editionsKept(page)).toHaveLength(1)
  })
})
