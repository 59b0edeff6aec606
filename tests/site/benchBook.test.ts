import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { chromium } from 'playwright-core'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { migrated } from '../../src/record/migrate.ts'
import { fileText } from '../../src/record/recordFile.ts'
import { newBike, newJob } from '../../src/record/records.ts'
import type { Book } from '../../src/record/book.ts'
import { bikes, jobs, putRecord } from './bookRecords.ts'
import { findChromium, openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { violations } from './accessible.ts'

/* The bench book in a real browser: kept, shared by tabs, damaged, refused, sent as a file, and used in a calculator. */

const SAG = '/procedures/measure-front-sag/'
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
}
const open = (address: string, on = page) => on.goto(site.origin + address)
const box = (on: Page, reading: string) => on.locator(`[data-reading="${reading}"] [data-box="0"]`)
/** What the book comes to once it is kept: on a machine that is busy that takes its time. */
const soon = <T>(look: () => Promise<T>) => expect.poll(look, { timeout: 15_000 })
/** The book's page, once it has read the book. */
async function openBook(query = ''): Promise<void> {
  await open(`/record/${query}`)
  await page.locator('[data-book-ready="true"]').waitFor()
}
const typedIn = async (reading: string): Promise<string | undefined> => {
  const [job] = await jobs(page)
  return job?.parts.at(-1)?.readings[reading]?.boxes[0]?.typed
}
async function write(figure: string, value: string, plusMinus = ''): Promise<void> {
  const row = page.locator(`[data-bike-figure="${figure}"]`)
  await row.locator('[data-do="write"]').click()
  await row.locator('input[name="value"]').fill(value)
  await row.locator('input[name="plusMinus"]').fill(plusMinus)
  await row.locator('[data-do="save-figure"]').click()
  await page.locator(`[data-bike-figure="${figure}"][data-si]`).waitFor()
}

describe('the book is kept', () => {
  test('two tabs that write at once both keep what they wrote, and each shows the other’s', async () => {
    await fresh()
    const other = await context.newPage()
    await open(SAG)
    await open(SAG, other)
    await Promise.all([
      box(page, 'extended').fill('150'),
      box(other, 'riderSettledDown').fill('112'),
    ])
    await Promise.all([
      box(page, 'riderSettledUp').fill('118'),
      box(other, 'frontTravel').fill('120'),
    ])
    await soon(() => box(page, 'frontTravel').inputValue()).toBe('120')
    await soon(() => box(other, 'riderSettledUp').inputValue()).toBe('118')
    await soon(async () => (await jobs(page)).length).toBe(1)
    const [job] = await jobs(page)
    expect(Object.keys(job!.parts[0]!.readings).sort()).toEqual([
      'extended',
      'frontTravel',
      'riderSettledDown',
      'riderSettledUp',
    ])
    expect(await bikes(page)).toHaveLength(1)
  })

  test('what was typed last is kept although the page goes at once', async () => {
    await fresh()
    await open(SAG)
    await box(page, 'extended').pressSequentially('151')
    await open('/glossary/')
    await open(SAG)
    await soon(() => box(page, 'extended').inputValue()).toBe('151')
    await soon(() => typedIn('extended')).toBe('151')
  })

  test('the first book is taken over whole, once, and its old entry stays', async () => {
    await fresh()
    const books = JSON.parse(
      readFileSync('tests/record/fixtures/first-books.json', 'utf8'),
    ) as Book[]
    const old = JSON.stringify(books[3])
    await open('/licences/')
    await page.evaluate((text) => localStorage.setItem('witness-mark.bench-book', text), old)
    await openBook()
    await openBook()
    const { bike, job } = migrated(books[3]!, '2026-01-01')
    expect(await bikes(page)).toEqual([bike])
    expect((await jobs(page)).map(({ parts }) => parts)).toEqual([job.parts])
    expect(await page.evaluate(() => localStorage.getItem('witness-mark.bench-book'))).toBe(old)
    expect(await page.locator('[data-bike-chosen]').textContent()).toBe(bike.name)
  })

  test('a browser killed while it saves leaves whole records behind', async () => {
    const profile = mkdtempSync(path.resolve('.cache/tmp/book-'))
    const started = async () =>
      chromium.launchPersistentContext(profile, {
        executablePath: await findChromium(),
        args: ['--no-sandbox'],
        serviceWorkers: 'block',
      })
    const first = await started()
    const victim = first.pages()[0] ?? (await first.newPage())
    await open(SAG, victim)
    await box(victim, 'extended').fill('150')
    await victim.locator('[data-kept-for]', { hasText: 'My bike' }).waitFor()
    // a letter at a time, so that a save is always under way
    const typing = box(victim, 'riderSettledDown')
      .pressSequentially('1'.repeat(200), { delay: 1 })
      .catch(() => undefined)
    await new Promise((done) => setTimeout(done, 60))
    const { pid } = await processOf(profile)
    process.kill(pid, 'SIGKILL')
    await typing
    await first.close().catch(() => undefined)
    const second = await started()
    const after = second.pages()[0] ?? (await second.newPage())
    await open(SAG, after)
    await soon(() => box(after, 'extended').inputValue()).toBe('150')
    const [bike] = await bikes(after)
    const [job, ...more] = await jobs(after)
    expect(more).toEqual([])
    expect([job?.bike, bike?.job]).toEqual([bike?.id, job?.id])
    await second.close()
  })
})

/** The browser's own process, by the profile that it was started with. */
async function processOf(profile: string): Promise<{ pid: number }> {
  const text = await new Promise<string>((done) => {
    const list = spawn('ps', ['-eo', 'pid,args'])
    let all = ''
    list.stdout.on('data', (part: Buffer) => (all += part.toString()))
    list.on('close', () => done(all))
  })
  const line = text
    .split('\n')
    .find((each) => each.includes(`--user-data-dir=${profile}`) && !each.includes('--type='))
  return { pid: Number(line?.trim().split(/\s+/)[0]) }
}

describe('the book is damaged or refused', () => {
  test('a record that can’t be read hides no other, and is offered as a file', async () => {
    await fresh()
    await openBook()
    const good = newBike('good', {
      name: 'Good one',
      like: 'middleweight-roadster',
      made: '2026-03-12',
    })
    await putRecord(page, 'bikes', 'good', good)
    await putRecord(page, 'bikes', 'bad', { id: 'bad', name: 7, figures: '<b>' })
    await putRecord(page, 'jobs', 'worse', 'not even a record')
    await openBook()
    expect(await page.locator('.bike-card h2').allTextContents()).toEqual(['Good one'])
    expect(await page.locator('[data-bad-record]').count()).toBe(2)
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page
        .locator('[data-bad-record="bad"]')
        .getByRole('button', { name: 'Save it as a file' })
        .click(),
    ])
    expect(JSON.parse(readFileSync(await file.path(), 'utf8'))).toEqual({
      id: 'bad',
      name: 7,
      figures: '<b>',
    })
    await page
      .locator('[data-bad-record="worse"]')
      .getByRole('button', { name: 'Take it out of the book' })
      .click()
    await soon(() => page.locator('[data-bad-record]').count()).toBe(1)
    expect(await violations(page)).toEqual([])
  })

  test('where the browser keeps nothing the page works on, and says so', async () => {
    await fresh()
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError')
      }
    })
    await open(SAG)
    await box(page, 'extended').fill('150')
    await page
      .locator('[data-progress]', { hasText: 'This browser keeps nothing for this site' })
      .waitFor()
    expect(await box(page, 'extended').inputValue()).toBe('150')
    await openBook()
    await page.locator('.keeping', { hasText: 'gone once the page is closed' }).waitFor()
  })

  test('where the store is full the typed text stays, and the page says what to do', async () => {
    await fresh()
    await page.addInitScript(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError')
      }
    })
    await open(SAG)
    await box(page, 'extended').fill('150')
    await page.locator('[data-progress]', { hasText: 'store for this site is full' }).waitFor()
    expect(await box(page, 'extended').inputValue()).toBe('150')
  })
})

describe('the book is sent as a file', () => {
  test('a bad file is refused with its reason; a good one shows what is new and in conflict; all can be taken back', async () => {
    await fresh()
    await openBook()
    const give = async (name: string, text: string): Promise<void> => {
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.locator('[data-do="import"]').click(),
      ])
      await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) })
    }
    const problem = page.locator('[data-import-problem]')
    for (const [text, says] of [
      ['<script>alert(1)</script>', 'x.json: The file is not JSON'],
      ['['.repeat(200_000), 'nested more than 30 levels deep'],
      [
        '{"format":"witness-mark-bench-book","version":99}',
        'version 99; this edition reads versions 1 and 2',
      ],
      ['{"__proto__":{},"format":"witness-mark-bench-book","version":2}', 'a name, “__proto__”'],
    ] as const) {
      await give('x.json', text)
      await problem.filter({ hasText: says }).waitFor()
    }
    expect(await bikes(page)).toEqual([])
    const name = '<img src=x onerror="document.title=1">'
    const bike = newBike('b1', { name, like: 'light-commuter', made: '2026-03-12' })
    const job = newJob('j1', { bike: 'b1', kind: 'loose', opened: '2026-03-12' })
    await give('book.json', fileText({ bikes: [bike], jobs: [job] }, 'e', '2026-03-12'))
    await page.locator('[data-import-new="2"]').waitFor()
    expect(await bikes(page)).toEqual([])
    await page.locator('[data-import-take="mine"]').click()
    await page.locator('.bike-card h2', { hasText: name }).waitFor()
    expect(await page.title()).toBe('Bench book · Witness Mark')
    await give(
      'book.json',
      fileText({ bikes: [{ ...bike, name: 'Another' }], jobs: [job] }, 'e', '2026-03-12'),
    )
    await page.locator('[data-import-conflict="1"]').waitFor()
    await page.locator('[data-import-take="both"]').click()
    await soon(async () => (await bikes(page)).map((each) => each.name).sort()).toEqual([
      name,
      'Another',
    ])
    // what the page shows is what it saves
    await page.locator('.bike-card').nth(1).waitFor()
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('[data-do="export"]').click(),
    ])
    const saved = JSON.parse(readFileSync(await download.path(), 'utf8')) as { bikes: unknown[] }
    expect(saved.bikes).toHaveLength(2)
    for (const left of [1, 0]) {
      await page.locator('[data-do="undo"]').click()
      await soon(async () => (await bikes(page)).length).toBe(left)
    }
  })

  test('a thousand jobs are taken over, and all are there', async () => {
    await fresh()
    await openBook()
    const bike = newBike('b1', {
      name: 'Roadster',
      like: 'middleweight-roadster',
      made: '2026-03-12',
    })
    const all = Array.from({ length: 1000 }, (_, n) =>
      newJob(`j${n}`, { bike: 'b1', kind: 'loose', opened: '2026-03-12' }),
    )
    await page.locator('[data-file]').setInputFiles({
      name: 'many.json',
      mimeType: 'application/json',
      buffer: Buffer.from(fileText({ bikes: [bike], jobs: all }, 'e', '2026-03-12')),
    })
    await page.locator('[data-import-take="mine"]').click()
    await page.locator('[data-note]', { hasText: 'Read back: 1001 records.' }).waitFor()
    expect(await jobs(page)).toHaveLength(1000)
  })
})

describe('a rider’s bike', () => {
  test('entered from nothing, used in calculators, and results kept as its figures', async () => {
    await fresh()
    await openBook()
    expect(await page.locator('[data-bike-chosen]').isVisible()).toBe(false)
    await page.locator('[data-new-bike] input[name="name"]').fill('Blue roadster')
    await page.locator('[data-do="add-bike"]').click()
    await page.locator('.bike-page h1', { hasText: 'Blue roadster' }).waitFor()
    await write('mass', '210', '2')
    await write('frontShare', '48')
    await write('riderMass', '92')
    await write('fork.travel', '130')
    await write('fork.exposedTube', '156')
    expect(await page.locator('[data-bike-figure="fork.travel"]').getAttribute('data-si')).toBe(
      '0.13',
    )
    // worked out of mass and share: 210 kg × 48 % × 9.80665 = 988.5 N
    expect(
      Number(await page.locator('[data-bike-figure="frontScale"]').getAttribute('data-si')),
    ).toBeCloseTo(988.51, 2)
    expect(await violations(page)).toEqual([])

    await open('/calculators/sag/')
    expect(await page.locator('[data-bike-chosen]').textContent()).toBe('Blue roadster')
    await page.locator('[data-do="use-bike"]').click()
    const field = (name: string) => page.locator(`form[data-calculator] [name="${name}"]`)
    await soon(() => field('extended').inputValue()).toBe('156')
    expect(await field('travel').inputValue()).toBe('130')
    expect(await page.locator('[data-field="travel"] .origin').textContent()).toMatch(
      /^measured \d+ [A-Z][a-z]{2}$/,
    )
    await field('settledDown').fill('114')
    await field('settledUp').fill('120')
    // 156 − (114 + 120) ÷ 2 = 39 mm
    await page
      .locator('[data-do="keep"][data-figure="frontRiderSag"]', { hasText: 'Keep 39.0' })
      .click()
    await page
      .locator('.keep-results .note', { hasText: 'Kept: sag with the rider, front' })
      .waitFor()
    expect((await bikes(page))[0]?.figures['frontRiderSag']?.value).toBeCloseTo(39, 6)

    await open('/calculators/wheel-loads/')
    await soon(() => field('bike').locator('option').first().textContent()).toBe('Blue roadster')
    await field('bike').selectOption({ label: 'Blue roadster' })
    await page.locator('[data-own-count]', { hasText: 'middleweight roadster’s' }).waitFor()
    expect(await field('rider').inputValue()).toBe('92')
    await page.waitForURL(/bike=middleweight-roadster;mass:210/)
    expect(page.url()).not.toContain((await bikes(page))[0]!.id)
    const link = page.url()
    await page.locator('[data-do="go-on"]').click()
    const stance = page.locator('.go-on-with a[href*="/calculators/stance/"]')
    expect(await stance.getAttribute('href')).toContain('bike=middleweight-roadster;mass:210')

    const loads = await page.locator('output[name="frontLoad"]').getAttribute('data-si')
    await fresh()
    await page.goto(link)
    await page.locator('.sent-bike', { hasText: 'A bike from a link' }).waitFor()
    expect(await page.locator('output[name="frontLoad"]').getAttribute('data-si')).toBe(loads)
    expect(await bikes(page)).toEqual([])
    await page.locator('[data-do="keep-bike"]').click()
    await soon(async () => (await bikes(page))[0]?.figures['mass']?.value).toBe(210)
  }, 180_000)
})
