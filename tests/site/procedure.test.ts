import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { BrowserContext, Page } from 'playwright-core'
import { listed, procedures } from '../content/entries.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { jobs, putRecord } from './bookRecords.ts'
import { violations } from './accessible.ts'

/** What a reader sets beside the readings, where more than two of them go to the sag calculator. */
const WINDOW = ['sag.windowLow', 'sag.windowHigh']

/** Every box of the job, as the book names it: the readings of each procedure, and the window that its sag is told against. */
const boxesOfTheJob = (): string[] =>
  procedures().flatMap(({ id, readings = [] }) => {
    const sags = readings.filter(({ to }) => to?.calculator === 'sag')
    const set = sags.length > 2 ? WINDOW : []
    return [...readings.map((reading) => reading.id), ...set].map((reading) => `${id}.${reading}`)
  })

/* A procedure as a fitter uses it: on a phone, ticking and writing, away to the calculator and back. */

let site: Site
let context: BrowserContext
let page: Page
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

async function fresh(
  options: Parameters<Site['browser']['newContext']>[0] = { viewport: { width: 360, height: 740 } },
): Promise<Page> {
  await context?.close()
  context = await site.browser.newContext(options)
  context.setDefaultTimeout(15_000)
  page = await context.newPage()
  return page
}

const open = (address: string) =>
  page.goto(site.origin + address, { waitUntil: 'load', timeout: 30_000 })
/** All procedures in the order of the work, as their files give it. */
const inOrder = procedures()
  .sort((one, other) => one.order - other.order)
  .map(({ id }) => id)
const box = (step: string) => page.locator(`#${step} [data-tick]`)
const field = (reading: string, index = 0) =>
  page.locator(`[data-reading="${reading}"] [data-box="${index}"]`)

describe('a procedure', () => {
  test('keeps ticks and readings over a reload, as they were typed', async () => {
    await fresh()
    await open('/procedures/measure-front-sag/')
    await box('wipe-the-tube').check()
    await field('extended', 1).fill('150,5')
    await field('extended', 2).fill('149.5')
    await page
      .locator('[data-reading="extended"] [data-mean]', { hasText: '150\u00a0mm' })
      .waitFor()
    await page.reload()
    await page
      .locator('[data-progress]', { hasText: '1 of 19 steps ticked. Go on at step 1.' })
      .waitFor()
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
    await expect.poll(() => jobs(page).then((all) => all.length), { timeout: 10_000 }).toBe(1)
    const [job] = await jobs(page)
    job!.parts[0]!.ticks['wipe-the-tube'] = { hash: 'earlier-words', at: '2024-05-06' }
    await putRecord(page, 'jobs', job!.id, job)
    await page.reload()
    await page
      .locator('#wipe-the-tube [data-changed]', {
        hasText: 'Changed since you ticked it on 2024-05-06',
      })
      .waitFor()
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
      .locator('[data-carry="sag"] [data-carry-said]', {
        hasText: 'Your sag is 35.0\u00a0mm, 29\u00a0% of the travel. The window is 25 to 33\u00a0%',
      })
      .waitFor()
    await field('sag.windowLow').fill('30')
    await field('sag.windowHigh').fill('35')
    await page
      .locator('[data-carry="sag"] [data-carry-said]', {
        hasText: 'The window is 30 to 35\u00a0%',
      })
      .waitFor()
    expect(await said.textContent()).toContain('Your sag is 35.0\u00a0mm')
    await page.locator('[data-carry="sag"] [data-carry-link]').click()
    await page.waitForURL(/\/calculators\/sag\/\?/)
    await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
    expect(
      await page.locator('form[data-calculator="sag"] input[name="settledUp"]').inputValue(),
    ).toBe('118')
    expect(
      await page.locator('form[data-calculator="sag"] input[name="travel"]').inputValue(),
    ).toBe('120')
    await page.goBack()
    await page
      .locator('[data-carry="sag"] [data-carry-said]', { hasText: 'Your sag is 35.0\u00a0mm' })
      .waitFor()
    expect(await field('riderSettledUp').inputValue()).toBe('118')
  })

  test('says beside the boxes when readings lie too far apart, and holds the verdict back until they agree', async () => {
    await fresh()
    await open('/procedures/measure-front-sag/')
    for (const [reading, value] of [
      ['frontTravel', '120'],
      ['extended', '150'],
      ['riderSettledDown', '112'],
    ] as const)
      await field(reading).fill(value)
    const [up, apart, mean] = ['', ' [data-apart]', ' .mean'].map((part) =>
      page.locator(`[data-reading="riderSettledUp"]${part}`),
    )
    await field('riderSettledUp', 0).fill('118')
    await page.locator('[data-carry="sag"] [data-carry-said]', { hasText: 'Your sag is' }).waitFor()
    await field('riderSettledUp', 1).fill('118')
    await field('riderSettledUp', 2).fill('98')
    await apart!.filter({ hasText: 'These are 20\u00a0mm apart: read once more.' }).waitFor()
    expect(await mean!.isVisible()).toBe(false)
    // beside the third box: the same line or the next
    const [third, told] = [
      await field('riderSettledUp', 2).boundingBox(),
      await apart!.boundingBox(),
    ]
    expect(told!.y - third!.y).toBeLessThan(80)
    await page
      .locator('[data-carry="sag"] [data-carry-count]', {
        hasText: 'whose readings lie too far apart',
      })
      .waitFor()
    await expect
      .poll(() => page.locator('[data-carry="sag"] [data-carry-said]').textContent(), {
        timeout: 10_000,
      })
      .toBe('')
    await page.evaluate(() =>
      document.querySelector<HTMLElement>('[data-system="imperial"]')!.click(),
    )
    await apart!.filter({ hasText: '0.787\u00a0in apart' }).waitFor()
    await page.evaluate(() =>
      document.querySelector<HTMLElement>('[data-system="metric"]')!.click(),
    )
    await field('riderSettledUp', 2).fill('119')
    await page.locator('[data-carry="sag"] [data-carry-said]', { hasText: 'Your sag is' }).waitFor()
    expect(await apart!.textContent()).toBe('')
    expect(await up!.locator('[data-mean]').textContent()).toBe('118.3\u00a0mm')
  })

  test.each(['screen', 'print'] as const)(
    'ticks a step with a tick, not with a cross (%s)',
    async (media) => {
      await fresh({ viewport: { width: 360, height: 740 }, deviceScaleFactor: 4 })
      await open('/procedures/measure-front-sag/')
      await box('wipe-the-tube').check()
      await page.mouse.click(1, 1)
      await page.emulateMedia({ media })
      const picture = (await box('wipe-the-tube').screenshot()).toString('base64')
      // the mark is the rarer tone inside the box; a cross has as much of it at the top left as at the top right, a tick has none there
      const [left, right] = await page.evaluate(async (data) => {
        const image = new Image()
        image.src = `data:image/png;base64,${data}`
        await image.decode()
        const canvas = document.createElement('canvas')
        const { width, height } = image
        Object.assign(canvas, { width, height })
        const context = canvas.getContext('2d')!
        context.drawImage(image, 0, 0)
        const inner = context.getImageData(width * 0.3, height * 0.3, width * 0.4, height * 0.4)
        const light = Array.from(
          { length: inner.width * inner.height },
          (_, at) => inner.data[at * 4]! + inner.data[at * 4 + 1]! + inner.data[at * 4 + 2]! > 382,
        )
        const rarer = light.filter(Boolean).length < light.length / 2
        const count = (from: number, to: number): number =>
          light.filter(
            (each, at) =>
              each === rarer &&
              at % inner.width >= from * inner.width &&
              at % inner.width < to * inner.width &&
              at < light.length * 0.4,
          ).length
        return [count(0, 0.4), count(0.6, 1)]
      }, picture)
      expect(right).toBeGreaterThan(3)
      expect(left).toBe(0)
    },
  )

  test('follows the reader’s units, and a value comes back unchanged', async () => {
    await fresh()
    await open('/procedures/record-a-baseline/')
    await field('markLeft').fill('112.5')
    const use = (system: string) =>
      page.evaluate(
        (name) => document.querySelector<HTMLElement>(`[data-system="${name}"]`)!.click(),
        system,
      )
    await use('imperial')
    await page.locator('[data-reading="markLeft"] [data-unit-symbol]', { hasText: 'in' }).waitFor()
    expect(await field('markLeft').inputValue()).toBe('4.429')
    // what was typed is kept as it was typed, whatever the units in sight
    await expect
      .poll(async () => (await jobs(page))[0]?.parts[0]?.readings['markLeft']?.boxes, {
        timeout: 10_000,
      })
      .toEqual([{ typed: '112.5', unit: 'mm', value: 112.5 }])
    await use('metric')
    expect(await field('markLeft').inputValue()).toBe('112.5')
  })

  test('shows the reading before beside the one after', async () => {
    await fresh()
    await open('/procedures/record-a-baseline/')
    await field('markLeft').fill('115')
    await open('/procedures/check-against-the-mark/')
    await page
      .locator('[data-reading="markLeftAfter"] [data-earlier]', {
        hasText: 'Earlier, in “Record a baseline”: 115\u00a0mm',
      })
      .waitFor()
  })

  test('tells a caution in full once, and at every later step what to do about it', async () => {
    await fresh()
    await open('/procedures/open-the-fork-top/')
    const boxes = await page.locator('[data-caution]').evaluateAll((all) =>
      all.map((box) => ({
        id: (box as HTMLElement).dataset['caution']!,
        words: box.textContent.split(/\s+/).length,
        defers: box.querySelector('.defers') !== null,
        says: box.textContent,
      })),
    )
    const first = new Map(boxes.map((box) => [box.id, box] as const).reverse())
    const later = boxes.filter((box) => first.get(box.id) !== box)
    expect([...first.values()].every(({ defers }) => defers)).toBe(true)
    expect(
      later.filter(({ id, defers, words }) => defers || words >= first.get(id)!.words),
    ).toEqual([])
    expect(later.find(({ id }) => id === 'plate-under-the-locknut')?.says).toMatch(
      /WARNING Slotted plate can slip\. Press the spacer from its sides/,
    )
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
      [
        ...document.querySelectorAll<HTMLElement>(
          'main [data-tick], main [data-box], main button, main summary, .next-job, [data-carry-link], .steps-nav a',
        ),
      ]
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
    expect(await violations(page)).toEqual([])
  })

  test('is a printed form without JavaScript', async () => {
    await fresh({ javaScriptEnabled: false })
    await open('/procedures/cut-a-spacer/')
    expect(await page.locator('[data-tick]').count()).toBe(23)
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
        const data = JSON.parse(document.querySelector('#readings-of-the-job')!.textContent) as {
          taken: {
            procedure: string
            spec: { id: string; quantity: string; range?: [number, number] }
          }[]
        }
        const here = document.querySelector<HTMLElement>('[data-procedure]')!.dataset['procedure']
        for (const { procedure, spec } of data.taken) {
          if (procedure !== here) continue
          for (const each of document.querySelectorAll<HTMLInputElement>(
            `[data-reading="${spec.id}"] [data-box]`,
          )) {
            each.value =
              spec.quantity === 'text' ? 'noted' : String((spec.range![0] + spec.range![1]) / 2)
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
    expect(seen).toHaveLength(inOrder.length)
    expect(seen.at(-1)).toBe(`/procedures/${inOrder.at(-1)}/`)
    await open('/record/')
    await page.locator('.bike-card h2 a').click()
    await page.locator('.jobs [data-job] a').click()
    await page.locator('[data-pairs] tbody tr').first().waitFor()
    // every reading of every procedure is in the job, each in its part, and so is the window that was set
    const kept = await page
      .locator('.job-record [data-reading]:not([data-lost])')
      .evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset['reading']))
    expect(kept.sort()).toEqual(boxesOfTheJob().sort())
    expect(await page.locator('.job-record [data-lost]').count()).toBe(0)
    expect(await page.locator('.job-record [data-sheet]').count()).toBe(inOrder.length)
    expect(await page.locator('[data-pairs] tbody tr').count()).toBeGreaterThan(5)
  })

  test('stands in order on its overview, each procedure once', async () => {
    await fresh()
    await open('/procedures/')
    const jobs = await page
      .locator('[data-job]')
      .evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset['job']))
    expect(jobs).toEqual(inOrder)
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

  test('names every cause that the full list names, also several that one measurement tells apart', async () => {
    await fresh()
    await open('/symptoms/')
    const shown = await page
      .locator('.feels-what')
      .evaluateAll((all) =>
        Object.fromEntries(
          all.map((each) => [
            each.querySelector('summary')!.textContent,
            [...each.querySelectorAll('.feels-cause')].map((cause) => cause.textContent),
          ]),
        ),
      )
    const hidden = listed('symptoms.yaml').flatMap(({ feel, causes }) =>
      (causes as { cause: string }[])
        .filter(
          ({ cause }) => !shown[feel as string]?.some((text) => text.includes(cause.slice(1))),
        )
        .map(({ cause }) => `${String(feel)}: ${cause}`),
    )
    expect(hidden).toEqual([])
  })

  test('says of each link what kind of page it leads to', async () => {
    await fresh()
    for (const address of ['/symptoms/', '/']) {
      await open(address)
      const links = await page.locator('.feels ol a, .symptom .links a').evaluateAll((all) =>
        all.map((each) => ({
          to: new URL((each as HTMLAnchorElement).href).pathname.split('/')[1]!,
          text: each.textContent,
        })),
      )
      expect(links.length).toBeGreaterThan(30)
      const kinds: Record<string, string> = {
        procedures: 'Do: ',
        calculators: 'Calculator: ',
        chapters: 'Chapter: ',
      }
      expect(links.filter(({ to, text }) => !text.startsWith(kinds[to] ?? 'nothing'))).toEqual([])
    }
  })

  test('has a stop for every symptom, above its first cause', async () => {
    await fresh()
    await open('/symptoms/')
    const without = await page
      .locator('[data-symptom]')
      .evaluateAll((all) =>
        all
          .filter(
            (each) =>
              !(
                each
                  .querySelector('.feels-stop')
                  ?.compareDocumentPosition(each.querySelector('.causes')!) ===
                Node.DOCUMENT_POSITION_FOLLOWING
              ),
          )
          .map((each) => (each as HTMLElement).dataset['symptom']),
      )
    expect(without).toEqual([])
  })
})
