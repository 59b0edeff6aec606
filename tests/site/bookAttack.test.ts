import { readFileSync } from 'node:fs'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { fileText } from '../../src/record/recordFile.ts'
import { newBike, newJob } from '../../src/record/records.ts'
import type { Records } from '../../src/record/records.ts'
import { MARKUP, marked } from '../record/hostileFiles.ts'
import { all, bikes, jobs, putRecord, putRecords } from './bookRecords.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

/* The bench book spoilt by hand, filled with markup, and cut off for want of room: nothing is lost, nothing runs. */

const DAY = '2026-03-12'
let site: Site
let context: BrowserContext
let page: Page
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

async function fresh(): Promise<void> {
  await context?.close()
  context = await site.browser.newContext({ viewport: { width: 1280, height: 800 } })
  context.setDefaultTimeout(15_000)
  page = await context.newPage()
  await openBook()
}
const open = (address: string) => page.goto(site.origin + address)
async function openBook(query = ''): Promise<void> {
  await open(`/record/${query}`)
  await page.locator('[data-book-ready="true"]').waitFor()
}
const give = (text: string) =>
  page
    .locator('[data-file]')
    .setInputFiles({ name: 'b.json', mimeType: 'application/json', buffer: Buffer.from(text) })

const bike = newBike('good', { name: 'Good one', like: 'middleweight-roadster', made: DAY })
const job = newJob('good-job', { bike: 'good', kind: 'loose', opened: DAY })

/** A record with one field spoilt, for each of its fields. */
const spoilt = (store: 'bikes' | 'jobs', record: object): [string, string, unknown][] =>
  Object.keys(record).map((field) => {
    const id = `bad-${store}-${field.toLowerCase()}`
    return [store, id, { ...record, id, [field]: { spoilt: true } }]
  })

describe('records spoilt by hand', () => {
  test('each field in turn: every such record is told and offered, stays as it is, and hides no other', async () => {
    await fresh()
    await putRecords(page, [
      ['bikes', 'good', bike],
      ['jobs', 'good-job', job],
    ])
    const bad = [
      ...spoilt('bikes', bike),
      ...spoilt('jobs', job),
      ['bikes', 'bad-place', { ...bike, id: 'elsewhere' }],
      ['bikes', 'bad-more', { ...bike, id: 'bad-more', more: 1 }],
      ['bikes', 'bad-figure', { ...bike, id: 'bad-figure', figures: { mass: { value: NaN } } }],
    ] as const
    await putRecords(page, bad)
    await openBook()
    await page.locator('[data-bad-record]').first().waitFor()
    expect(await page.locator('[data-bad-record]').count()).toBe(bad.length)
    expect(await page.locator('.bike-card h2').allTextContents()).toEqual(['Good one'])
    // the good ones are changed, and the bad ones stay as they are
    await page.locator('[data-do="choose"]').click()
    await page.locator('[data-bike-chosen]', { hasText: 'Good one' }).waitFor()
    await page.locator('[name="name"]').fill('Another')
    await page.locator('[data-do="add-bike"]').click()
    await page.locator('.bike-page h1', { hasText: 'Another' }).waitFor()
    const there = [...(await bikes(page)), ...(await jobs(page))] as unknown[]
    for (const [, , value] of bad) expect(there).toContainEqual(value)
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('[data-bad-record="bad-more"] button').first().click(),
    ])
    expect(JSON.parse(readFileSync(await file.path(), 'utf8'))).toEqual({
      ...bike,
      id: 'bad-more',
      more: 1,
    })
  })

  test('a spoilt list of changes, choice and settings leave the book readable', async () => {
    await fresh()
    await putRecords(page, [['bikes', 'good', bike]])
    await putRecord(page, 'changes', null, { at: 7, before: 'nothing' })
    await putRecord(page, 'changes', null, '<b>')
    await putRecord(page, 'state', 'chosen', { id: 'good' })
    await putRecord(page, 'state', 'settings', [1, 2])
    await page.evaluate(() => {
      localStorage.setItem('witness-mark.bike', '{"id":')
      localStorage.setItem('witness-mark.pending.x', '[{"change":{"do":"explode"}},7]')
      localStorage.setItem('witness-mark.pending.y', '{"not":"a list"')
    })
    const trouble: string[] = []
    page.on('pageerror', (error) => trouble.push(error.message))
    await openBook()
    expect(await page.locator('.bike-card h2').allTextContents()).toEqual(['Good one'])
    expect(await page.locator('[data-bike-chosen]').isVisible()).toBe(false)
    expect(await page.locator('[data-do="undo"]').getAttribute('aria-disabled')).toBe('true')
    await open('/procedures/measure-front-sag/')
    await page.locator('[data-reading="extended"] [data-box="0"]').fill('150')
    await expect.poll(async () => (await jobs(page)).length, { timeout: 15_000 }).toBe(1)
    expect(trouble).toEqual([])
    expect(await all(page, 'changes')).toContainEqual('<b>')
  })
})

describe('a book with markup in every text', () => {
  test('is shown as the text that it is, on every page that shows it', async () => {
    await fresh()
    await give(fileText(marked as unknown as Records, MARKUP.slice(0, 90), DAY))
    await page.locator('[data-import-take="mine"]').click()
    await page.locator('.bike-card h2', { hasText: MARKUP }).waitFor()
    await page.locator('[data-do="choose"]').click()
    await page.locator('[data-bike-chosen]', { hasText: MARKUP }).waitFor()
    for (const address of [
      '/record/',
      '/record/?bike=b1',
      '/record/?bike=b1&job=j1',
      '/procedures/measure-front-sag/',
      '/jobs/set-sag/',
      '/calculators/sag/',
    ]) {
      await open(address)
      await page.locator('[data-bike-chosen]', { hasText: MARKUP }).waitFor()
      if (address.startsWith('/record')) await page.locator('[data-book-ready="true"]').waitFor()
      expect(await page.locator('img[src="x"]').count(), address).toBe(0)
      expect(await page.evaluate(() => Reflect.get(window, 'hit') as unknown), address).toBe(
        undefined,
      )
    }
    await open('/procedures/measure-front-sag/')
    const box = page.locator('[data-reading="extended"] [data-box="0"]')
    await expect.poll(() => box.inputValue(), { timeout: 15_000 }).toBe(MARKUP)
  })
})

describe('room that runs out', () => {
  test('in the middle of an import nothing of it is kept, the page says so, and the book is as it was', async () => {
    await fresh()
    await putRecords(page, [['bikes', 'good', bike]])
    await page.addInitScript(() => {
      const put = IDBObjectStore.prototype.put
      let left = 3
      IDBObjectStore.prototype.put = function (...of) {
        if (left-- <= 0) throw new DOMException('full', 'QuotaExceededError')
        return put.apply(this, of)
      }
    })
    await openBook()
    const many: Records = {
      bikes: [bike],
      jobs: Array.from({ length: 20 }, (_, n) => ({ ...job, id: `j${n}` })),
    }
    await give(fileText(many, 'e', DAY))
    await page.locator('[data-import-take="mine"]').click()
    await page.locator('.keeping', { hasText: 'store for this site is full' }).waitFor()
    expect(await page.locator('[data-note]').textContent()).toBe('')
    expect([await bikes(page), await jobs(page)]).toEqual([[bike], []])
  })
})
