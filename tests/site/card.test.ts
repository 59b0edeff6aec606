import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Locator, Page } from 'playwright-core'
import { accessible } from './accessible.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { publish, PUBLISHED } from './published.ts'
import { readQr } from './qr.ts'

/* The card in a reader's hands: what it sends is what it shows, the focus stays on it, and what is an example's is called so. */

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

interface Opened {
  page: Page
  form: Locator
  close(): Promise<void>
}

async function open(address: string, before?: (page: Page) => Promise<unknown>): Promise<Opened> {
  const context = await site.browser.newContext()
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  await before?.(page)
  await page.goto(site.origin + address, { waitUntil: 'load' })
  await hydrated(page)
  return { page, form: page.locator('form[data-calculator]'), close: () => context.close() }
}

const hydrated = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
const press = (form: Locator, name: string | RegExp): Promise<void> =>
  form.getByRole('button', { name }).click()
const queryOf = (address: string | null): URLSearchParams =>
  new URL(address ?? 'none:').searchParams
/** Polls for as long as any other wait of these tests. */
const poll = <T>(read: () => T): ReturnType<typeof expect.poll<T>> =>
  expect.poll(read, { timeout: 10_000 })
/** The element that has the focus, by its accessible name's visible part, its id or its tag. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      document.activeElement?.id ||
      document.activeElement?.textContent ||
      document.activeElement?.tagName ||
      '',
  )

/** The words of a print without spaces: a PDF breaks words where it likes. */
async function textOf(pdf: Uint8Array): Promise<string> {
  const task = getDocument({ data: new Uint8Array(pdf), useSystemFonts: true, verbosity: 0 })
  const document = await task.promise
  let text = ''
  for (let number = 1; number <= document.numPages; number++)
    text += (await (await document.getPage(number)).getTextContent()).items
      .map((item) => ('str' in item ? item.str : ''))
      .join('')
  await task.destroy()
  return text.replaceAll(/\s+/g, '')
}

describe('what the card sends', () => {
  test('its link and its code follow every change, a held “before”, and Reset', async () => {
    const { form, close } = await open('/calculators/sag/', publish)
    await press(form, 'Copy link')
    await press(form, 'QR code')
    const both = async (): Promise<URLSearchParams> => {
      const link = await form.locator('input.link').inputValue()
      expect(await readQr(form.locator('.share > .qr svg'))).toBe(link)
      return queryOf(link)
    }
    expect([...(await both()).keys()]).toEqual(['v', 'sum'])
    await form.locator('input[name="settledUp"]').fill('125')
    await poll(async () => (await both()).get('settledUp')).toBe('125')
    await press(form, /Hold as/)
    await form.locator('input[name="settledUp"]').fill('121')
    await poll(async () => (await both()).toString()).toMatch(
      /settledUp=121.*before\.settledUp=125/,
    )
    expect(await form.getByRole('status').last().textContent()).toBe(
      'The values have changed since you copied the link.',
    )
    await press(form, 'Reset')
    await poll(async () => [...(await both()).keys()].join()).toBe('v,sum')
    await close()
  })

  test('its print from the browser’s own menu carries the code of what it shows', async () => {
    const { page, form, close } = await open('/calculators/sag/', publish)
    await form.locator('input[name="settledUp"]').fill('126.5')
    await page.waitForFunction(() => location.search.includes('126.5'))
    const text = await textOf(await page.pdf({ format: 'A4' }))
    expect(text).toContain(`Thecodeopensthesevaluesat${PUBLISHED}calculators/sag/`)
    const first = queryOf(await readQr(form.locator('.paper-code svg')))
    expect(first.get('settledUp')).toBe('126.5')
    await press(form, 'Reset')
    await page.pdf({ format: 'A4' })
    expect(queryOf(await readQr(form.locator('.paper-code svg'))).has('settledUp')).toBe(false)
    await close()
  })

  test('its print carries no code where none can be drawn', async () => {
    const { page, form, close } = await open('/calculators/sag/', async (fresh) => {
      await publish(fresh)
      await fresh.route(/\/codes\./, (route) => route.abort())
    })
    const text = await textOf(await page.pdf({ format: 'A4' }))
    expect(text).toContain('Exposedtube')
    expect(text).not.toContain('Thecodeopens')
    expect(await form.locator('.paper-code svg').count()).toBe(0)
    await close()
  })

  test('it draws no code and prints none where the site has no public address, and says who can give it one', async () => {
    const { page, form, close } = await open('/calculators/sag/')
    await press(form, 'Copy link')
    expect(await form.locator('input.link').inputValue()).toMatch(`${site.origin}/calculators/sag/`)
    await press(form, 'QR code')
    await form.getByText('Whoever publishes it sets SITE_URL').first().waitFor()
    expect(await form.locator('.share svg').count()).toBe(0)
    const text = await textOf(await page.pdf({ format: 'A4' }))
    expect(text).toContain('publicaddress')
    expect(text).not.toContain('Thecodeopens')
    expect(text).not.toContain(site.origin)
    expect(await form.locator('.share svg').count()).toBe(0)
    await close()
  })

  test('Reset takes the values out of the address, also where a link brought them', async () => {
    const { page, form, close } = await open('/calculators/sag/')
    await form.locator('input[name="settledUp"]').fill('95')
    await page.waitForFunction(() => location.search.includes('settledUp=95'))
    await press(form, 'Reset')
    await page.waitForFunction(() => location.search === '')
    await page.goto(
      `${site.origin}/calculators/sag/?v=1&settledUp=121&travel=130&before.settledUp=119`,
    )
    await hydrated(page)
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('input[name="settledUp"]')?.value === '121',
    )
    await press(form, 'Reset')
    await page.waitForFunction(() => location.search === '')
    expect(await form.locator('input[name="settledUp"]').inputValue()).toBe('118')
    await page.reload()
    await hydrated(page)
    expect(await form.locator('input[name="settledUp"]').inputValue()).toBe('118')
    await close()
  })

  test('what was wrong with a link is told again after a reload', async () => {
    const { page, form, close } = await open('/calculators/choose-rate/?v=1&riderMass=3000')
    await form.locator('.link-problems').waitFor()
    // longer than the address takes to follow a change: it must not be rewritten by a link alone
    await page.waitForTimeout(600)
    await page.reload()
    await form.locator('.link-problems').waitFor()
    expect(await form.locator('.link-problems').textContent()).toContain('3000')
    await close()
  })
})

describe('the keyboard’s place', () => {
  test('goes from “I don’t know this one” to “Enter a value”, and on to the field', async () => {
    const { page, form, close } = await open('/calculators/choose-rate/')
    await form.locator('.more:has([data-field]) > summary').click()
    const button = form.getByRole('button', { name: /I don’t know this one/ }).first()
    const field = await button.evaluate(
      (each) => each.closest<HTMLElement>('[data-field]')!.dataset['field']!,
    )
    await button.press('Enter')
    await poll(() => focused(page)).toBe(`c-choose-rate-${field}-known`)
    await page.keyboard.press('Enter')
    await poll(() => focused(page)).toBe(`c-choose-rate-${field}`)
    await close()
  })

  test('goes from “Forget” to “Hold”, and stays on Reset', async () => {
    const { page, form, close } = await open('/calculators/sag/')
    await form.getByRole('button', { name: 'Hold as “before”' }).press('Enter')
    await form.getByRole('button', { name: 'Forget “before”' }).press('Enter')
    await poll(() => focused(page)).toBe('c-sag-hold')
    await page.keyboard.press('Enter')
    await form.getByRole('button', { name: 'Reset' }).press('Enter')
    await form.getByRole('button', { name: 'Forget “before”' }).waitFor({ state: 'detached' })
    expect(await focused(page)).toBe('Reset')
    await close()
  })

  test('stays in the table as rows are removed and added', async () => {
    const { page, form, close } = await open('/calculators/choose-rate/')
    await form.locator('.more:has([data-field]) > summary').click()
    const table = form.locator('.table-field').first()
    const id = await table.evaluate((each) => (each as HTMLElement).dataset['field']!)
    await poll(() => table.locator('tbody tr').count()).toBeGreaterThan(2)
    for (let rows = await table.locator('tbody tr').count(); rows > 1; rows--) {
      const last = table.getByRole('button', { name: /^Remove row/ }).last()
      if (await last.isDisabled()) break
      await last.press('Enter')
      await poll(() => table.locator('tbody tr').count()).toBe(rows - 1)
      expect(await focused(page)).toMatch(
        new RegExp(`^c-choose-rate-${id}-(remove-${rows - 2}|${rows - 2}-0)$`),
      )
    }
    const rows = await table.locator('tbody tr').count()
    await table.getByRole('button', { name: /^Add a row/ }).press('Enter')
    await poll(() => focused(page)).toBe(`c-choose-rate-${id}-${rows}-0`)
    await close()
  })
})

describe('what is the example’s', () => {
  const mark = (form: Locator, input: string): Locator =>
    form.locator(`[data-field="${input}"] .origin`)
  const heads = (form: Locator): Promise<string[]> =>
    form
      .locator('.sheet-table')
      .first()
      .locator('thead th')
      .allTextContents()
      .then((all) => all.map((text) => text.trim()))

  test('says so in each field, to eyes and screen readers, until the reader sets it', async () => {
    const { page, form, close } = await open('/calculators/sag/')
    expect(await mark(form, 'extended').textContent()).toBe('example')
    expect(await mark(form, 'settledUp').textContent()).toBe('example')
    const description = async (): Promise<string> =>
      (await accessible(page)).find(
        ({ role, name }) => role === 'textbox' && name.startsWith('Exposed tube, wheel hanging'),
      )!.description
    expect(await description()).toMatch(/^example/)
    await form.locator('input[name="extended"]').fill('152')
    await mark(form, 'extended').waitFor({ state: 'detached' })
    expect(await description()).not.toContain('example')
    expect(await mark(form, 'settledUp').textContent()).toBe('example')
    await page.waitForFunction(() => location.search.includes('extended=152'))
    await page.reload()
    await hydrated(page)
    await mark(form, 'extended').waitFor({ state: 'detached' })
    expect(await mark(form, 'settledUp').textContent()).toBe('example')
    await press(form, 'Reset')
    await mark(form, 'extended').waitFor()
    await close()
  })

  test('a link’s values are its sender’s; what it leaves out is the example’s', async () => {
    const { form, close } = await open('/calculators/sag/?v=1&extended=151&settledUp=121')
    await poll(() => mark(form, 'extended').textContent()).toBe('from the link')
    expect(await mark(form, 'travel').textContent()).toBe('example')
    await form.locator('[data-field="extended"] button.step').last().click()
    await mark(form, 'extended').waitFor({ state: 'detached' })
    await close()
  })

  test('its “before” goes with the first value of the reader’s own, who may hold one; Reset brings it back', async () => {
    const { form, close } = await open('/calculators/preload-versus-rate/')
    expect(await heads(form)).toEqual(['before example', 'now', 'change'])
    await press(form, 'Copy link')
    // what the card compares with, the link brings too
    expect(queryOf(await form.locator('input.link').inputValue()).get('before.preload')).toBe('15')
    await form.locator('input[name="rate"]').fill('8.5')
    await poll(() => heads(form)).toEqual(['result'])
    expect(await form.locator('.remarks').textContent()).not.toContain('both changed')
    await poll(async () =>
      queryOf(await form.locator('input.link').inputValue()).toString(),
    ).not.toContain('before')
    await press(form, /Hold as/)
    await form.locator('input[name="preload"]').fill('20')
    await poll(() => heads(form)).toEqual(['before', 'now', 'change'])
    expect(await form.locator('td[data-change="rateHere"]').textContent()).toMatch(/^0\.0/)
    await press(form, 'Reset')
    await poll(() => heads(form)).toEqual(['before example', 'now', 'change'])
    await close()
  })

  test('a link without a “before” is not compared with the example, and one with its own keeps it when the reader sets a value', async () => {
    const { page, form, close } = await open(
      '/calculators/preload-versus-rate/?v=1&rate=8.5&preload=20',
    )
    await poll(() => heads(form)).toEqual(['result'])
    await page.goto(
      `${site.origin}/calculators/preload-versus-rate/?v=1&rate=8.5&preload=20&before.rate=8.5&before.preload=10`,
    )
    await hydrated(page)
    await poll(() => heads(form)).toEqual(['before', 'now', 'change'])
    await form.locator('input[name="preload"]').fill('22')
    await page.waitForFunction(() => location.search.includes('preload=22'))
    expect(await heads(form)).toEqual(['before', 'now', 'change'])
    await close()
  })

  test('a change measured from nothing stays compared with the reader’s own state', async () => {
    const { page, form, close } = await open('/calculators/ride-height/')
    await form.locator('[data-field="amount"] button.step').last().click()
    await page.waitForFunction(() => location.search.includes('amount='))
    expect(await heads(form)).toEqual(['before', 'now', 'change'])
    await close()
  })

  test('a chapter’s card stays compared with the state that its text names', async () => {
    const { page, form, close } = await open('/chapters/preload-versus-rate/')
    await page.getByRole('button', { name: 'Skip to the calculator' }).click()
    await form.locator('input[name="preload"]').fill('30')
    // from 15 mm of preload under 974 N to 30 mm under 967 N
    await poll(() => form.locator('td[data-change="travelUsed"]').textContent()).toMatch(/^−13\.7/)
    expect(await heads(form)).toEqual(['before example', 'now', 'change'])
    await close()
  })
})
