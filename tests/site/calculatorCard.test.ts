import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { loadCalculator } from '../../src/calculators/index.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { alive, firstQuantity, openCalculator, outputsOf, pictureOf } from './calculatorPage.ts'
import { publish, PUBLISHED } from './published.ts'
import { readQr } from './qr.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

describe('the calculator card', () => {
  test('takes 7,5 with a comma, keeps nonsense and says what to do', async () => {
    const { page, form, close } = await openCalculator(site, '/calculators/preload-versus-rate/')
    const rate = form.locator('input[name="rate"]')
    await rate.fill('7,5')
    await page.waitForFunction(() =>
      document
        .querySelector<HTMLOutputElement>('output[name="rateHere"]')
        ?.textContent?.startsWith('15.0'),
    )
    await rate.fill('stiff')
    await rate.blur()
    await page.waitForSelector('[data-field="rate"] .error')
    expect(await rate.inputValue()).toBe('stiff')
    expect(await form.locator('[data-field="rate"] .error').textContent()).toBe(
      'Spring rate, each leg: “stiff” is not a number. Write digits with one point or comma, as 7.5 or 7,5',
    )
    expect(await form.locator('output[name="rateHere"]').textContent()).toMatch(/^15\.0/)
    await rate.fill('1,234')
    await rate.blur()
    await page.waitForFunction(() =>
      /two ways/.test(document.querySelector('[data-field="rate"] .error')?.textContent ?? ''),
    )
    await rate.fill('400')
    await rate.blur()
    await page.waitForFunction(() =>
      /must be between 3 and 20\sN\/mm/.test(
        document.querySelector('[data-field="rate"] .error')?.textContent ?? '',
      ),
    )
    await close()
  })

  test('worked out in a worker, follows an input, and drops a question that was overtaken', async () => {
    const errors: string[] = []
    const scripts: string[] = []
    const { page, form, close } = await openCalculator(
      site,
      '/calculators/find-change/',
      {},
      (on) => {
        on.on('console', (message) => message.type() === 'error' && errors.push(message.text()))
        on.on('pageerror', (error) => errors.push(error.message))
        on.on('worker', (worker) => scripts.push(worker.url()))
        return Promise.resolve()
      },
    )
    const rider = form.locator('input[name="rider"]')
    // the address follows once a value stands still
    const stands = (weight: string): Promise<unknown> =>
      page.waitForFunction(
        (wanted) => new URLSearchParams(location.search).get('rider') === wanted,
        weight,
      )
    const before = await pictureOf(form)
    // the strip says that the search goes on, and no longer once it has ended
    const strip = form.locator('[data-strip]')
    await strip.evaluate((node) => {
      const note = (): void => {
        if (/Still looking/.test(node.textContent)) node.setAttribute('data-said', '')
      }
      new MutationObserver(note).observe(node, {
        subtree: true,
        childList: true,
        characterData: true,
      })
    })
    // the second weight is asked for before the first is answered: the ways that stay are those of the second
    await rider.fill('60')
    await rider.fill('80')
    await stands('80')
    const [results, drawn] = [await outputsOf(form), await pictureOf(form)]
    expect(drawn).not.toBe(before)
    expect(await strip.getAttribute('data-said')).toBe('')
    expect(await strip.textContent()).not.toMatch(/Still looking/)
    await rider.fill('60')
    await stands('60')
    expect(await outputsOf(form)).not.toBe(results)
    await rider.fill('80')
    await stands('80')
    expect(await outputsOf(form)).toBe(results)
    expect(scripts).toHaveLength(1)
    expect(scripts[0]).toMatch(/\/_astro\/worker-[^/]+\.js$/)
    expect(errors).toEqual([])
    await close()
  })

  test('moves by keyboard: arrows in the box and on the slider', async () => {
    const { page, form, close } = await openCalculator(site, '/calculators/preload-versus-rate/')
    const preload = form.locator('input[name="preload"]')
    await preload.focus()
    await page.keyboard.press('ArrowUp')
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('input[name="preload"]')?.value === '26',
    )
    const slider = form.locator('[data-field="preload"] input[type="range"]')
    await slider.focus()
    await page.keyboard.press('End')
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('input[name="preload"]')?.value === '60',
    )
    expect(await slider.getAttribute('aria-valuetext')).toBe('60 millimetres')
    await close()
  })

  test('moves by touch on the slider', async () => {
    const { page, form, close } = await openCalculator(site, '/calculators/preload-versus-rate/', {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    })
    const slider = form.locator('[data-field="preload"] input[type="range"]')
    await slider.scrollIntoViewIfNeeded()
    const box = (await slider.boundingBox())!
    await page.touchscreen.tap(box.x + box.width * 0.9, box.y + box.height / 2)
    await page.waitForFunction(
      () => Number(document.querySelector<HTMLInputElement>('input[name="preload"]')?.value) > 45,
    )
    await close()
  })

  test('switches units in one place, keeps them, and does not drift', async () => {
    const { page, form, close } = await openCalculator(
      site,
      '/calculators/preload-versus-rate/?v=1&rate=8.5&preload=22',
    )
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('input[name="rate"]')?.value === '8.5',
    )
    const si = await form.locator('output[name="travelUsed"]').getAttribute('data-si')
    await page.locator('[data-settings] summary').click()
    for (let round = 0; round < 3; round++) {
      await page.locator('[data-system="imperial"]').click()
      await page.waitForFunction(() =>
        /in$/.test(document.querySelector('output[name="travelUsed"]')?.textContent ?? ''),
      )
      await page.locator('[data-system="metric"]').click()
      await page.waitForFunction(() =>
        /mm$/.test(document.querySelector('output[name="travelUsed"]')?.textContent ?? ''),
      )
    }
    expect(await form.locator('output[name="travelUsed"]').getAttribute('data-si')).toBe(si)
    expect(await form.locator('input[name="rate"]').inputValue()).toBe('8.5')
    await page.locator('[data-system="imperial"]').click()
    await page.goto(`${site.origin}/calculators/sag/`)
    await page.waitForFunction(() =>
      / in /.test(
        `${document.querySelector('output[name="sag"]')?.textContent ?? ''} `.replaceAll(
          '\u00a0',
          ' ',
        ),
      ),
    )
    await close()
  })

  test('reads the new numbers in words, and says so when the words do not come', async () => {
    const reading = (where: Page, wanted: RegExp): Promise<unknown> =>
      where.waitForFunction(
        (source) => new RegExp(source).test(document.querySelector('.remarks')?.textContent ?? ''),
        wanted.source,
      )
    const { page, form, close } = await openCalculator(site, '/calculators/sag/')
    await form.locator('input[name="settledUp"]').fill('115')
    await reading(page, /The bike settles about 36.5\smm down/)
    await close()
    const context = await site.browser.newContext()
    const lost = await context.newPage()
    await lost.route(/\/remarks\./, (route) => route.abort())
    await lost.goto(`${site.origin}/calculators/sag/`, { waitUntil: 'load' })
    await alive(lost)
    await reading(lost, /The bike settles about 35.0\smm down/)
    await lost.locator('input[name="settledUp"]').fill('115')
    await reading(lost, /could not be loaded. Load the page again/)
    await context.close()
  })

  test('what is out of sight or folded follows the numbers', async () => {
    const { page, form, close } = await openCalculator(site, '/calculators/stance/', {
      viewport: { width: 360, height: 740 },
    })
    const rider = form.locator('input[name="rider"]')
    await rider.evaluate((field) => field.scrollIntoView({ block: 'center' }))
    const [drawn, rear] = [
      await pictureOf(form),
      await form.locator('output[name="rearLoad"]').getAttribute('data-si'),
    ]
    for (const kilograms of ['90', '100', '110']) await rider.fill(kilograms)
    await page.waitForFunction(
      (before) =>
        document.querySelector('output[name="rearLoad"]')?.getAttribute('data-si') !== before,
      rear,
    )
    await page.waitForFunction(
      (before) => document.querySelector('.draw')?.innerHTML !== before,
      drawn,
    )
    await page.waitForFunction(() => location.search.includes('rider=110'))
    const fresh = await openCalculator(site, `/calculators/stance/${new URL(page.url()).search}`, {
      viewport: { width: 1280, height: 2400 },
    })
    // the drawings alone: what to pull is said to a reader who has moved nothing yet
    await fresh.page.waitForFunction(
      (wanted) =>
        [...document.querySelectorAll('.draw .view')].map((each) => each.textContent).join() ===
        wanted,
      (await form.locator('.draw .view').allTextContents()).join(),
    )
    expect(await outputsOf(form)).toBe(await outputsOf(fresh.form))
    await fresh.close()
    await close()
  })

  test('holds a before, shows the change, and the link carries both', async () => {
    const { page, form, close } = await openCalculator(site, '/calculators/sag/')
    await form.getByRole('button', { name: 'Hold as “before”' }).click()
    await form.locator('input[name="settledUp"]').fill('122')
    await page.waitForSelector('td[data-change="sag"]')
    await page.waitForFunction(() => location.search.includes('before.settledUp='))
    const change = await form.locator('td[data-change="sag"]').textContent()
    const fresh = await openCalculator(site, `/calculators/sag/${new URL(page.url()).search}`)
    await fresh.page.waitForFunction(
      (wanted) => document.querySelector('td[data-change="sag"]')?.textContent === wanted,
      change,
    )
    await fresh.close()
    await close()
  })

  test('copies a link that opens the same values in a fresh profile, and draws it as a QR code', async () => {
    const { form, close } = await openCalculator(site, '/calculators/trail/', {}, publish)
    const name = firstQuantity(loadCalculator('trail'))!
    await form.locator(`[data-field="${name}"] button.step`).last().click()
    await form.getByRole('button', { name: 'Copy link' }).click()
    const href = await form.locator('input.link').inputValue()
    expect(href.startsWith(`${PUBLISHED}calculators/trail/?v=`)).toBe(true)
    const wanted = await outputsOf(form)
    const fresh = await openCalculator(site, `/${href.slice(PUBLISHED.length)}`)
    await fresh.page.waitForFunction(
      (text) =>
        [...document.querySelectorAll('form[data-calculator] output')]
          .map((output) => `${(output as HTMLOutputElement).name}=${output.textContent}`)
          .join('\n') === text,
      wanted,
    )
    await fresh.close()
    await form.getByRole('button', { name: 'QR code' }).click()
    await form.locator('.share > .qr svg').waitFor()
    expect(await readQr(form.locator('.share > .qr svg'))).toBe(href)
    await close()
  }, 90_000)
})
