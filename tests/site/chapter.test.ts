import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { BrowserContext, Page } from 'playwright-core'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

async function phone(options: Parameters<Site['browser']['newContext']>[0] = {}): Promise<{ context: BrowserContext; page: Page }> {
  const context = await site.browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true, ...options })
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  return { context, page }
}

const address = '/chapters/preload-versus-rate/'

describe('the preload chapter at 360 px', () => {
  test('keeps the calculator closed until a prediction is committed, then shows it beside the result, and remembers it', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    const form = page.locator('form[data-calculator="preload-versus-rate"]')
    const predict = page.locator('[data-question="predict"]')
    await predict.getByRole('button', { name: 'Show me' }).waitFor()
    expect(await form.isVisible()).toBe(false)
    await predict.getByLabel('The spring gets stiffer.').check()
    await predict.getByRole('button', { name: 'Show me' }).click()
    await form.waitFor({ state: 'visible' })
    expect(await page.locator('.said').textContent()).toBe('You said: “The spring gets stiffer”. Now see what the numbers say.')
    expect(await predict.locator('.why').first().isVisible()).toBe(true)
    await page.reload()
    await page.locator('.said').waitFor()
    expect(await form.isVisible()).toBe(true)
    await context.close()
  }, 60_000)

  test('shows that slope and force stay and the height moves, and gives a link that brings it back', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    await page.getByRole('button', { name: 'Skip to the calculator' }).click()
    const form = page.locator('form[data-calculator="preload-versus-rate"]')
    await form.locator('input[name="preload"]').fill('30')
    await page.waitForFunction(() => /^−15\.0/.test(document.querySelector('td[data-change="travelUsed"]')?.textContent ?? ''))
    expect(await form.locator('td[data-change="rateHere"]').textContent()).toMatch(/^0\.0/)
    expect(await form.locator('td[data-change="springForce"]').textContent()).toMatch(/^0\s/)
    await form.getByRole('button', { name: 'Copy link' }).click()
    const href = await form.locator('input.link').inputValue()
    const fresh = await phone()
    await fresh.page.goto(href)
    await fresh.page.waitForFunction(() => document.querySelector<HTMLInputElement>('input[name="preload"]')?.value === '30')
    await fresh.page.waitForFunction(() => /^−15\.0/.test(document.querySelector('td[data-change="travelUsed"]')?.textContent ?? ''))
    await fresh.context.close()
    await context.close()
  }, 60_000)

  test('answers a self-check with the reason', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    const check = page.locator('[data-question="check"]').last()
    await check.getByRole('button', { name: 'Check' }).waitFor()
    expect(await check.locator('.why').first().isVisible()).toBe(false)
    await check.locator('[data-right="false"] input').first().check()
    await check.getByRole('button', { name: 'Check' }).click()
    expect(await check.locator('.why').first().isVisible()).toBe(true)
    expect(await check.getByRole('status').textContent()).toMatch(/^Not so/)
    await context.close()
  }, 60_000)

  test('reads whole without JavaScript: calculator, answers and reasons in sight', async () => {
    const { context, page } = await phone({ javaScriptEnabled: false })
    await page.goto(site.origin + address)
    expect(await page.locator('form[data-calculator] output').first().isVisible()).toBe(true)
    expect(await page.locator('[data-question] .why').first().isVisible()).toBe(true)
    expect(await page.locator('math').count()).toBeGreaterThan(3)
    await context.close()
  }, 60_000)

  test('prints whole: what the script closed is open on paper', async () => {
    const { context, page } = await phone({ viewport: { width: 900, height: 900 } })
    await page.goto(site.origin + address)
    await page.getByRole('button', { name: 'Show me' }).waitFor()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('form[data-calculator] output').first().isVisible()).toBe(true)
    expect(await page.locator('[data-question] .why').first().isVisible()).toBe(true)
    expect((await page.pdf({ format: 'A4' })).length).toBeGreaterThan(20_000)
    await context.close()
  }, 60_000)
})
