import axe from 'axe-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { BrowserContext, Page } from 'playwright-core'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

/* A procedure as a fitter uses it: on a phone, ticking and writing, away to the calculator and back. */

let site: Site
let context: BrowserContext
let page: Page
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

async function fresh(options: Parameters<Site['browser']['newContext']>[0] = { viewport: { width: 360, height: 740 } }): Promise<Page> {
  await context?.close()
  context = await site.browser.newContext(options)
  context.setDefaultTimeout(15_000)
  page = await context.newPage()
  return page
}

const open = (address: string) => page.goto(site.origin + address, { waitUntil: 'load', timeout: 30_000 })
const box = (step: string) => page.locator(`#${step} [data-tick]`)
const field = (reading: string, index = 0) => page.locator(`[data-reading="${reading}"] [data-box="${index}"]`)
const stored = () => page.evaluate(() => localStorage.getItem('witness-mark.bench-book') ?? '')

async function violations(): Promise<string[]> {
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const checker = (window as unknown as { axe: typeof axe }).axe
    const { violations: found } = await checker.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
    return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`))
  })
}

describe('a procedure', () => {
  test('keeps ticks and readings over a reload, as they were typed', async () => {
    await fresh()
    await open('/procedures/measure-front-sag/')
    await box('wipe-the-tube').check()
    await field('extended', 1).fill('150,5')
    await field('extended', 2).fill('149.5')
    await page.locator('[data-reading="extended"] [data-mean]', { hasText: '150\u00a0mm' }).waitFor()
    await page.reload()
    await page.locator('[data-progress]', { hasText: '1 of 16 steps ticked. Go on at step 1.' }).waitFor()
    expect(await box('wipe-the-tube').isChecked()).toBe(true)
    expect(await box('note-the-state').isChecked()).toBe(false)
    expect(await field('extended', 0).inputValue()).toBe('')
    expect(await field('extended', 1).inputValue()).toBe('150,5')
  })

  test('shows a step that reads differently as changed, and does not take it for ticked', async () => {
    await fresh()
    await open('/procedures/measure-front-sag/')
    await box('wipe-the-tube').check()
    // what a tick in an earlier edition looks like: the same step, other words
    await page.evaluate(() => {
      const book = JSON.parse(localStorage.getItem('witness-mark.bench-book')!) as {
        sheets: Record<string, { ticks: Record<string, { hash: string; at: string }> }>
      }
      book.sheets['measure-front-sag']!.ticks['wipe-the-tube'] = { hash: 'earlier-words', at: '2024-05-06' }
      localStorage.setItem('witness-mark.bench-book', JSON.stringify(book))
    })
    await page.reload()
    await page.locator('#wipe-the-tube [data-changed]', { hasText: 'Changed since you ticked it on 2024-05-06' }).waitFor()
    expect(await box('wipe-the-tube').isChecked()).toBe(false)
    await box('wipe-the-tube').check()
    expect(await page.locator('#wipe-the-tube [data-changed]').isVisible()).toBe(false)
  })

  test('says what is wrong with a reading, keeps it, and forgives it once it is right', async () => {
    await fresh()
    await open('/procedures/measure-front-sag/')
    await field('frontTravel').fill('1,200')
    await field('frontTravel').blur()
    const error = page.locator('[data-reading="frontTravel"] [data-error]')
    expect(await error.textContent()).toBe(
      'Full travel of the fork, from the manual: “1,200” can be read two ways. Leave out the thousands mark, or write more or fewer decimals',
    )
    expect(await field('frontTravel').getAttribute('aria-invalid')).toBe('true')
    expect(await field('frontTravel').inputValue()).toBe('1,200')
    await field('frontTravel').fill('120')
    await field('frontTravel').blur()
    expect(await error.isVisible()).toBe(false)
  })

  test('tells the sag in place against the window that the reader set, and opens the calculator with the readings', async () => {
    await fresh()
    await open('/procedures/measure-front-sag/')
    for (const [reading, value] of [
      ['frontTravel', '120'],
      ['extended', '150'],
      ['riderSettledDown', '112'],
      ['riderSettledUp', '118'],
    ] as const)
      await field(reading).fill(value)
    const said = page.locator('[data-carry="sag"] [data-carry-said]')
    // (150 − (112 + 118)/2) = 35 mm of 120 mm: 29 %
    await page
      .locator('[data-carry="sag"] [data-carry-said]', { hasText: 'Your sag is 35.0\u00a0mm, 29\u00a0% of the travel. The window used is 25 to 33\u00a0%' })
      .waitFor()
    await field('sag.windowLow').fill('30')
    await field('sag.windowHigh').fill('35')
    await page.locator('[data-carry="sag"] [data-carry-said]', { hasText: 'The window you set is 30 to 35\u00a0%' }).waitFor()
    expect(await said.textContent()).toContain('Your sag is 35.0\u00a0mm')
    await page.locator('[data-carry="sag"] [data-carry-link]').click()
    await page.waitForURL(/\/calculators\/sag\/\?/)
    await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
    expect(await page.locator('form[data-calculator="sag"] input[name="settledUp"]').inputValue()).toBe('118')
    expect(await page.locator('form[data-calculator="sag"] input[name="travel"]').inputValue()).toBe('120')
    await page.goBack()
    await page.locator('[data-carry="sag"] [data-carry-said]', { hasText: 'Your sag is 35.0\u00a0mm' }).waitFor()
    expect(await field('riderSettledUp').inputValue()).toBe('118')
  })

  test('follows the reader’s units, and a value comes back unchanged', async () => {
    await fresh()
    await open('/procedures/record-a-baseline/')
    await field('markLeft').fill('112.5')
    const use = (system: string) => page.evaluate((name) => document.querySelector<HTMLElement>(`[data-system="${name}"]`)!.click(), system)
    await use('imperial')
    await page.locator('[data-reading="markLeft"] [data-unit-symbol]', { hasText: 'in' }).waitFor()
    expect(await field('markLeft').inputValue()).toBe('4.429')
    expect(JSON.parse(await stored())).toHaveProperty('sheets.record-a-baseline.readings.markLeft.0', { typed: '112.5', unit: 'mm', value: 112.5 })
    await use('metric')
    expect(await field('markLeft').inputValue()).toBe('112.5')
  })

  test('shows the reading before beside the one after', async () => {
    await fresh()
    await open('/procedures/record-a-baseline/')
    await field('markLeft').fill('115')
    await open('/procedures/check-against-the-mark/')
    await page.locator('[data-reading="markLeftAfter"] [data-earlier]', { hasText: 'Earlier, in “Record a baseline”: 115\u00a0mm' }).waitFor()
  })

  test('asks once before it starts again', async () => {
    await fresh()
    await open('/procedures/inspect-first/')
    const first = page.locator('[data-tick]').first()
    await first.check()
    await page.getByRole('button', { name: 'Start again' }).click()
    await page.getByRole('button', { name: 'Keep them' }).click()
    expect(await first.isChecked()).toBe(true)
    await page.getByRole('button', { name: 'Start again' }).click()
    await page.getByRole('button', { name: 'Clear them' }).click()
    expect(await first.isChecked()).toBe(false)
  })

  test('has targets of 44 px for every tick, box, button and way on, at 360 px without sideways scrolling', async () => {
    await fresh()
    await open('/procedures/measure-front-sag/')
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('main [data-tick], main [data-box], main button, main summary, .next-job, [data-carry-link], .steps-nav a')]
        .map((element) => ({ element, height: element.getBoundingClientRect().height }))
        .filter(({ height }) => height > 0 && height < 43.5)
        .map(({ element, height }) => `${element.outerHTML.slice(0, 80)} ${height}`),
    )
    expect(small).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360)
  })

  test('passes the accessibility checker while a reading is wrong, a step has changed and a question stands', async () => {
    await fresh()
    await open('/procedures/measure-front-sag/')
    await field('frontTravel').fill('x')
    await field('frontTravel').blur()
    await page.getByRole('button', { name: 'Start again' }).click()
    expect(await violations()).toEqual([])
  })

  test('is a printed form without JavaScript', async () => {
    await fresh({ javaScriptEnabled: false })
    await open('/procedures/cut-a-spacer/')
    expect(await page.locator('[data-tick]').count()).toBe(21)
    expect(await page.locator('[data-reading="tubeDepth"] input').isVisible()).toBe(true)
    expect(await page.locator('[data-again]').isVisible()).toBe(false)
  })
})

describe('the job', () => {
  test('is followed by “next” alone from the baseline to the first ride, and leaves a filled book', async () => {
    await fresh()
    await open('/procedures/record-a-baseline/')
    const seen: string[] = []
    for (;;) {
      seen.push(new URL(page.url()).pathname)
      // the middle of each range: a reading that every box takes
      await page.evaluate(() => {
        const data = JSON.parse(document.querySelector('#readings-of-the-job')!.textContent!) as {
          taken: { procedure: string; spec: { id: string; quantity: string; range?: [number, number] } }[]
        }
        const here = document.querySelector<HTMLElement>('[data-procedure]')!.dataset['procedure']
        for (const { procedure, spec } of data.taken) {
          if (procedure !== here) continue
          for (const each of document.querySelectorAll<HTMLInputElement>(`[data-reading="${spec.id}"] [data-box]`)) {
            each.value = spec.quantity === 'text' ? 'noted' : String((spec.range![0] + spec.range![1]) / 2)
            each.dispatchEvent(new Event('input', { bubbles: true }))
          }
        }
        for (const tick of document.querySelectorAll<HTMLInputElement>('[data-tick]')) tick.click()
      })
      const next = page.locator('.next-job')
      if ((await next.count()) === 0) break
      await next.click()
      await page.waitForURL((url) => url.pathname !== seen.at(-1))
    }
    expect(seen).toHaveLength(21)
    expect(seen.at(-1)).toBe('/procedures/first-ride-checks/')
    await open('/record/')
    await page.locator('[data-book][data-filled]').waitFor()
    expect(await page.locator('[data-row][data-empty]').count()).toBe(0)
    expect(await page.locator('section[data-sheet][data-empty]').count()).toBe(0)
    expect(await page.locator('[data-pairs] tbody tr').count()).toBeGreaterThan(5)
  })

  test('stands in order on its overview, each procedure once', async () => {
    await fresh()
    await open('/procedures/')
    const jobs = await page.locator('[data-job]').evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset['job']))
    expect([jobs.length, jobs[0], jobs.at(-1)]).toEqual([21, 'record-a-baseline', 'first-ride-checks'])
  })
})

describe('the bench book', () => {
  test('saves a file, and reads it back after it was cleared', async () => {
    await fresh()
    await open('/procedures/record-a-baseline/')
    await field('notes').fill('dives on the brakes')
    await box('wipe-the-tubes').check()
    await open('/record/')
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save as a file' }).click()])
    const file = await download.path()
    const before = await stored()
    await page.getByRole('button', { name: 'Clear' }).click()
    await page.getByRole('button', { name: 'Clear it' }).click()
    await page.locator('[data-note]', { hasText: 'The bench book is empty.' }).waitFor()
    await page.locator('[data-file]').setInputFiles(file)
    await page.locator('[data-note]', { hasText: 'Read back: 1 reading and 1 tick.' }).waitFor()
    expect(JSON.parse(await stored())).toEqual(JSON.parse(before))
    expect(await page.locator('[data-row="record-a-baseline notes"]').textContent()).toContain('dives on the brakes')
  })

  test('asks before a file replaces what is there, and loses nothing to a bad file', async () => {
    await fresh()
    await open('/procedures/record-a-baseline/')
    await field('notes').fill('mine')
    await open('/record/')
    const before = await stored()
    const give = (text: string) => page.locator('[data-file]').setInputFiles({ name: 'other.json', mimeType: 'application/json', buffer: Buffer.from(text) })
    await give('{"format":"something else"}')
    await page.locator('[data-note].bad', { hasText: 'other.json: The file is not a bench book of this site.' }).waitFor()
    expect(await stored()).toBe(before)
    await give(JSON.stringify({ ...(JSON.parse(before) as object), bike: 'another bike', sheets: {} }))
    await page.getByRole('button', { name: 'Keep what is here' }).click()
    expect(await stored()).toBe(before)
  })

  test('passes the accessibility checker when it is filled', async () => {
    await fresh()
    await open('/procedures/record-a-baseline/')
    await field('markLeft').fill('115')
    await open('/procedures/check-against-the-mark/')
    await field('markLeftAfter').fill('121')
    await open('/record/')
    await page.locator('[data-pairs] tbody tr').waitFor()
    expect(await page.locator('[data-pairs] tbody tr').first().textContent()).toContain('+6\u00a0mm')
    expect(await violations()).toEqual([])
  })
})

describe('something feels wrong', () => {
  test('leads to a measurement in three choices', async () => {
    await fresh()
    await open('/symptoms/')
    await page.locator('.feels-when > summary', { hasText: 'When I brake' }).click()
    await page.locator('.feels-what > summary', { hasText: 'The front dives a lot' }).click()
    await page.locator('.feels-what[open] a', { hasText: 'Measure the front sag' }).click()
    await page.waitForURL(/\/procedures\/measure-front-sag\//)
  })
})
