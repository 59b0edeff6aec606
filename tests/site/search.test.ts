import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

interface Opened {
  page: Page
  /** what the page complained of, and what it asked of other origins */
  trouble: string[]
  asked: string[]
  close(): Promise<void>
}

async function open(
  address: string,
  options: Parameters<Site['browser']['newContext']>[0] = {},
): Promise<Opened> {
  const context = await site.browser.newContext(options)
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  const trouble: string[] = []
  const asked: string[] = []
  page.on('console', (message) => trouble.push(message.text()))
  page.on('pageerror', (error) => trouble.push(error.message))
  page.on('request', (request) => asked.push(request.url()))
  await page.goto(site.origin + address, { waitUntil: 'load' })
  return { page, trouble, asked, close: () => context.close() }
}

const results = (page: Page): Promise<string[]> =>
  page.$$eval('li[data-result]', (items) =>
    items.map(
      (item) =>
        new URL(item.querySelector('a')!.href).pathname +
        new URL(item.querySelector('a')!.href).hash,
    ),
  )

/** Polls for as long as any other wait of these tests: a busy machine takes seconds to load the index. */
const poll = <T>(read: () => T): ReturnType<typeof expect.poll<T>> =>
  expect.poll(read, { timeout: 15_000 })

/** Holds the search's index back until it is let go. */
async function holdIndex(page: Page): Promise<() => void> {
  let letGo = (): void => undefined
  const held = new Promise<void>((done) => (letGo = done))
  await page.route('**/pagefind/**', async (route) => {
    await held
    await route.continue()
  })
  return letGo
}

describe('the search page', () => {
  test('a reader searches “jack”, sees the signal word, and reaches the caution', async () => {
    const { page, trouble, close } = await open('/search/?q=jack')
    const caution = page.locator('li[data-result][data-kind=caution]').first()
    await caution.waitFor()
    expect(await caution.locator('.signal').textContent()).toBe('WARNING')
    expect((await results(page)).slice(0, 3)).toContain('/cautions/bike-can-fall/')
    await caution.locator('a').first().click()
    await page.waitForURL(/\/cautions\/[a-z-]+\/$/)
    expect(trouble).toEqual([])
    await close()
  })

  test('a typing error is corrected, and the page says so', async () => {
    const { page, close } = await open('/search/?q=preloda')
    await page.locator('li[data-result]').first().waitFor()
    expect(await page.locator('[data-search-corrected]').textContent()).toBe(
      'Searched for preload; you wrote preloda.',
    )
    expect(await results(page)).toContain('/glossary/#preload')
    await close()
  })

  test('words typed into the field are searched, counted in the status, and kept in the address', async () => {
    const { page, close } = await open('/search/')
    await page.locator('#search-field').fill('clunk')
    await page.locator('li[data-result]').first().waitFor()
    await poll(() => page.locator('[data-search-status]').textContent()).toMatch(
      /^\d+ results? for “clunk”\.$/,
    )
    expect(new URL(page.url()).search).toBe('?q=clunk')
    await page.reload()
    await page.locator('li[data-result]').first().waitFor()
    expect(await page.locator('#search-field').inputValue()).toBe('clunk')
    await close()
  })

  test('one kind alone can be shown', async () => {
    const { page, close } = await open('/search/?q=preload')
    await page.locator('li[data-result]').first().waitFor()
    await page.locator('#search-kind').selectOption('caution')
    await poll(() =>
      page.$$eval('li[data-result]', (items) => [
        ...new Set(items.map((item) => (item as HTMLElement).dataset['kind'])),
      ]),
    ).toEqual(['caution'])
    expect(new URL(page.url()).search).toBe('?q=preload&kind=caution')
    await close()
  })

  test('a result leads to the heading under which the words stand', async () => {
    const { page, close } = await open('/search/?q=jack')
    const heading = page.locator('.result-sections a').first()
    await heading.waitFor()
    const id = new URL((await heading.getAttribute('href'))!, site.origin).hash.slice(1)
    await heading.click()
    await page.waitForURL(/#/)
    expect(
      await page.evaluate((name) => document.getElementById(name)?.matches('h2, h3, h4'), id),
    ).toBe(true)
    await close()
  })

  test('words that no page has give a way on', async () => {
    const { page, close } = await open('/search/')
    const letGo = await holdIndex(page)
    await page.locator('#search-field').fill('xylophone')
    await page.waitForURL(/q=xylophone$/)
    // nothing is said before the index has answered
    expect(await page.locator('[data-search-status]').textContent()).toBe('')
    letGo()
    await poll(() => page.locator('[data-search-status]').textContent()).toBe(
      'Nothing found for “xylophone”.',
    )
    expect(await page.locator('[data-search-empty] a[href$="/symptoms/"]').isVisible()).toBe(true)
    await close()
  })

  test('a word of the language is searched as it is beside words that pages have', async () => {
    const { page, close } = await open('/search/?q=vague+track+fork')
    await page.locator('li[data-result]').first().waitFor()
    expect(await page.locator('[data-search-corrected]').textContent()).toBe('')
    await page.goto(`${site.origin}/search/?q=worksheet`)
    await page.locator('li[data-result]').first().waitFor()
    expect((await results(page))[0]).toBe('/worksheets/')
    await close()
  })

  test.each([
    ['which spring do I need', /^\/(calculators\/choose-rate|chapters\/choosing-a-spring)\/$/],
    [
      'which fork spring for 95 kg rider',
      /^\/(calculators\/choose-rate|chapters\/choosing-a-spring)\/$/,
    ],
    [
      'should I lower the front 10 mm',
      /^\/(procedures\/change-ride-height|chapters\/ride-height|calculators\/ride-height)\/$/,
    ],
  ])('“%s” has its answer in the first three', async (question, answer) => {
    const { page, close } = await open(`/search/?q=${encodeURIComponent(question)}`)
    await page.locator('li[data-result]').first().waitFor()
    expect((await results(page)).slice(0, 3).some((address) => answer.test(address))).toBe(true)
    await close()
  })

  test('only kinds of which there is something are offered', async () => {
    const { page, close } = await open('/search/')
    const offered = await page.$$eval('#search-kind option', (options) =>
      options.map((option) => (option as HTMLOptionElement).value),
    )
    expect(offered).toContain('caution')
    expect(offered).toContain('lesson')
    expect(offered).not.toContain('worksheet')
    await close()
  })

  test('nothing of the index is loaded before the reader asks', async () => {
    const { page, asked, close } = await open('/search/')
    expect(asked.filter((address) => address.includes('/pagefind/'))).toEqual([])
    await page.locator('#search-field').focus()
    await poll(() => asked.some((address) => address.includes('/pagefind/pagefind.js'))).toBe(true)
    expect(asked.every((address) => address.startsWith(site.origin))).toBe(true)
    await close()
  })

  test('without JavaScript the page says where to look instead', async () => {
    const { page, close } = await open('/search/', { javaScriptEnabled: false })
    expect(await page.locator('main').innerText()).toContain('Search needs JavaScript')
    await close()
  })
})

describe('the box in the header', () => {
  test('the keyboard alone opens it with /, searches with Enter, and reaches a result', async () => {
    const { page, close } = await open('/cautions/bike-can-fall/')
    await page.keyboard.press('/')
    await page.keyboard.type('triple clamp')
    await page.keyboard.press('Enter')
    await page.waitForURL(/\/search\/\?q=triple\+clamp$/)
    await page.locator('li[data-result]').first().waitFor()
    await page.keyboard.press('/')
    for (let presses = 0; presses < 12; presses++) {
      await page.keyboard.press('Tab')
      if (await page.evaluate(() => document.activeElement?.closest('[data-result]') !== null))
        break
    }
    await page.keyboard.press('Enter')
    await page.waitForURL(/\/glossary\/#yoke$/)
    await close()
  })

  test('the first results come under it and are chosen by the arrow keys', async () => {
    const { page, close } = await open('/cautions/bike-can-fall/')
    await page.keyboard.press('/')
    await page.keyboard.insertText('stanchion') // at once: typed letter by letter, a busy machine searches for the first few too
    await page.locator('[role=option]').first().waitFor()
    await page.keyboard.press('ArrowDown')
    const chosen = page.locator('[role=option][aria-selected=true]')
    expect(await chosen.count()).toBe(1)
    expect(await page.locator('#search-box-field').getAttribute('aria-activedescendant')).toBe(
      await chosen.getAttribute('id'),
    )
    await page.keyboard.press('Enter')
    await page.waitForURL(/\/glossary\/#fork-tube$/)
    await close()
  })

  test('Escape closes the list first and leaves the field second', async () => {
    const { page, close } = await open('/cautions/bike-can-fall/')
    await page.keyboard.press('/')
    await page.keyboard.insertText('sag')
    await page.locator('[role=option]').first().waitFor()
    await page.keyboard.press('Escape')
    expect(await page.locator('[role=listbox]').isVisible()).toBe(false)
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('search-box-field')
    await page.keyboard.press('Escape')
    expect(await page.evaluate(() => document.activeElement?.id)).not.toBe('search-box-field')
    await close()
  })

  test('/ typed into another field stays there', async () => {
    const { page, close } = await open('/search/')
    await page.locator('#search-field').focus()
    await page.keyboard.type('N/mm')
    expect(await page.locator('#search-field').inputValue()).toBe('N/mm')
    await close()
  })
})
