import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { BrowserContext, Page } from 'playwright-core'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

async function phone(
  options: Parameters<Site['browser']['newContext']>[0] = {},
): Promise<{ context: BrowserContext; page: Page }> {
  const context = await site.browser.newContext({
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    ...options,
  })
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  return { context, page }
}

const address = '/chapters/preload-versus-rate/'
/** a chapter whose prediction has options */
const choice = '/chapters/sag/'
const WRONG = 'The tube is longer after the push, because the spring throws it up.'

describe('the preload chapter at 360 px', () => {
  test('keeps the calculator closed until a prediction is committed, then shows it beside the result, and remembers it', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + choice)
    const form = page.locator('form[data-calculator="sag"]')
    const predict = page.locator('[data-question="predict"]')
    await predict.getByRole('button', { name: 'Show me' }).waitFor()
    expect(await form.isVisible()).toBe(false)
    await predict.getByLabel(WRONG).check()
    await predict.getByRole('button', { name: 'Show me' }).click()
    await form.waitFor({ state: 'visible' })
    expect(await page.locator('.said').textContent()).toBe(
      `You said: “${WRONG.slice(0, -1)}”. Now see what the numbers say.`,
    )
    expect(await page.locator('.sheet-place > .reasons .why').first().isVisible()).toBe(true)
    await page.reload()
    await page.locator('.said').waitFor()
    expect(await form.isVisible()).toBe(true)
    await context.close()
  })

  // Fifteen millimetres of preload on the sealed fork, whose load falls by 7 N as the bike rises. With k = 18 N/mm and air of about 2.3 N/mm the front rises
  // (15·18 + 7)/20.3 = 13.7 mm; the air, with that much more room, leaves about 13.7·2.3 = 31 N to the springs, less the 7. Both to a tenth and to 2 N, since the air's slope is taken at one place.
  test('shows that the height moves while slope and force stay but for the air, and gives a link that brings it back', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    await page.getByRole('button', { name: 'Skip to the calculator' }).click()
    const form = page.locator('form[data-calculator="preload-versus-rate"]')
    await form.locator('input[name="preload"]').fill('30')
    await page.waitForFunction(() =>
      /^−13\.[6-8]/.test(document.querySelector('td[data-change="travelUsed"]')?.textContent ?? ''),
    )
    expect(await form.locator('td[data-change="rateHere"]').textContent()).toMatch(/^−0\.[3-6]\s/)
    expect(await form.locator('td[data-change="springForce"]').textContent()).toMatch(/^\+2[2-6]\s/)
    await form.getByRole('button', { name: 'Copy link' }).click()
    const href = await form.locator('input.link').inputValue()
    const fresh = await phone()
    await fresh.page.goto(href)
    await fresh.page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('input[name="preload"]')?.value === '30',
    )
    await fresh.page.waitForFunction(() =>
      /^−13\.[6-8]/.test(document.querySelector('td[data-change="travelUsed"]')?.textContent ?? ''),
    )
    await fresh.context.close()
    await context.close()
  })

  test('shows the picture first when a prediction is committed: “You said”, the card, then the reasons, and nothing jumps', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + choice)
    const predict = page.locator('[data-question="predict"]')
    const showMe = predict.getByRole('button', { name: 'Show me' })
    await predict.getByLabel(WRONG).check()
    const place = (): Promise<number> =>
      showMe.evaluate((button) => button.getBoundingClientRect().top + scrollY)
    const before = await place()
    await showMe.click()
    await page.locator('.said').waitFor()
    expect(await place()).toBe(before)
    const [said, draw, reasons] = await Promise.all(
      ['.said', '.sheet-place .draw', '.sheet-place > .reasons'].map((part) =>
        page.locator(part).boundingBox(),
      ),
    )
    expect(said!.y).toBeGreaterThanOrEqual(0)
    // the picture begins in the upper six tenths of the screen, and the reasons come after the card
    expect(draw!.y).toBeLessThan(0.6 * 740)
    expect(reasons!.y).toBeGreaterThan(draw!.y + draw!.height)
    expect(await page.locator('.sheet-place > .reasons p').first().textContent()).toBe(
      `No. “${WRONG}”`,
    )
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('said')
    await context.close()
  })

  test('“the calculator” for readers in a hurry opens the closed card, and so does a link from elsewhere', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    await page.getByRole('button', { name: 'Show me' }).waitFor()
    const form = page.locator('form[data-calculator="preload-versus-rate"]')
    expect(await form.isVisible()).toBe(false)
    const inSight = async (): Promise<void> => {
      await form.waitFor({ state: 'visible' })
      await expect
        .poll(async () => Math.round((await form.boundingBox())!.y), { timeout: 10_000 })
        .toBeLessThan(100)
      expect(
        await page.evaluate(
          () => document.activeElement?.closest('[data-calculator-place]') !== null,
        ),
      ).toBe(true)
    }
    await page.locator('.hurry a').first().press('Enter')
    await inSight()
    // a second visit by a link to something inside the card
    await page.goto('about:blank')
    await page.goto(`${site.origin}${address}#c-preload-versus-rate-rate`)
    await form.waitFor({ state: 'visible' })
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.id), { timeout: 10_000 })
      .toBe('c-preload-versus-rate-rate')
    await context.close()
  })

  test('asks in one order on the screen, without script and on paper', async () => {
    const orders: string[] = []
    for (const options of [{}, { javaScriptEnabled: false }]) {
      const { context, page } = await phone(options)
      await page.goto(site.origin + choice, { waitUntil: 'load' })
      const order = (): Promise<string[]> =>
        page
          .locator('[data-option]')
          .evaluateAll((all) => all.map((option) => (option as HTMLElement).dataset['option']!))
      orders.push(JSON.stringify(await order()))
      await page.emulateMedia({ media: 'print' })
      orders.push(JSON.stringify(await order()))
      await context.close()
    }
    expect(new Set(orders).size).toBe(1)
  })

  test('answers a self-check with the reason', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    const check = page.locator('[data-question="check"]').last()
    await check.getByRole('button', { name: 'Check' }).waitFor()
    expect(await check.locator('.why').first().isVisible()).toBe(false)
    await check.locator('[data-right="false"] input').first().check()
    await check.getByRole('button', { name: 'Check' }).click()
    expect(await check.locator('.reasons .why').first().isVisible()).toBe(true)
    expect(await check.getByRole('status').textContent()).toMatch(/^Not so/)
    await context.close()
  })

  test('reads whole without JavaScript: calculator, answers and reasons in sight', async () => {
    const { context, page } = await phone({ javaScriptEnabled: false })
    await page.goto(site.origin + address)
    expect(await page.locator('form[data-calculator] output').first().isVisible()).toBe(true)
    expect(await page.locator('[data-question] .why').first().isVisible()).toBe(true)
    expect(await page.locator('math').count()).toBeGreaterThan(3)
    await context.close()
  })

  test('prints whole: what the script closed is open on paper', async () => {
    const { context, page } = await phone({ viewport: { width: 900, height: 900 } })
    await page.goto(site.origin + address)
    await page.getByRole('button', { name: 'Show me' }).waitFor()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('form[data-calculator] output').first().isVisible()).toBe(true)
    expect(await page.locator('[data-question] .why').first().isVisible()).toBe(true)
    expect((await page.pdf({ format: 'A4' })).length).toBeGreaterThan(20_000)
    await context.close()
  })

  test('a number is set by the keyboard, told beside what it is, with the nearest reason first, and remembered', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    const predict = page.locator('[data-question="number"]')
    const form = page.locator('form[data-calculator="preload-versus-rate"]')
    await predict.getByRole('button', { name: 'Show me' }).click()
    expect(await predict.getByRole('status').textContent()).toBe('Write a number first.')
    await predict.getByRole('slider').press('End')
    expect(await predict.getByRole('slider').getAttribute('aria-valuetext')).toBe('400 N')
    await predict.getByRole('textbox').fill('350,0')
    expect(await predict.getByRole('slider').inputValue()).toBe('350')
    expect(await form.isVisible()).toBe(false)
    await predict.getByRole('textbox').press('Enter')
    await form.waitFor({ state: 'visible' })
    const said = 'You said 350 N. It is 204 N. Now see what the numbers say.'
    expect(await page.locator('.said').textContent()).toBe(said)
    expect(await page.locator('.sheet-place > .reasons b').allTextContents()).toEqual([
      'Not 350 N.',
      'Not 240 N.',
      'It is 204 N.',
    ])
    await page.reload()
    await page.locator('.said').waitFor()
    expect(await page.locator('.said').textContent()).toBe(said)
    await context.close()
  })

  test('a typed answer is taken to the text’s rounding, and a named mistake is answered by its name', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    const turn = page.locator('.turn')
    const answer = async (text: string): Promise<string> => {
      await turn.getByRole('textbox').fill(text)
      await turn.getByRole('button', { name: 'Check' }).click()
      return (await turn.getByRole('status').textContent()) ?? ''
    }
    expect(await answer('4.65')).toMatch(/^Not 4\.7 turns\.You multiplied/)
    expect(await turn.locator('details').getAttribute('open')).toBe(null)
    expect(await answer('9')).toMatch(/^Not that\./)
    expect(await answer('five')).toMatch(/^“five” is not a number/)
    expect(await answer('5,4')).toMatch(/^Right: 5\.4 turns\./)
    expect(await turn.locator('details').getAttribute('open')).toBe('')
    await context.close()
  })

  test('a derivation is folded, and opens for an address that leads to it', async () => {
    const { context, page } = await phone()
    await page.goto(site.origin + address)
    const fold = page.locator('details.steps-in-full')
    await page.waitForFunction(
      () => document.querySelector<HTMLDetailsElement>('details.steps-in-full')?.open === false,
    )
    await page.goto(`${site.origin}${address}#where-the-number-comes-from`)
    await page.waitForFunction(
      () => document.querySelector<HTMLDetailsElement>('details.steps-in-full')?.open === true,
    )
    expect(await fold.locator('math').first().isVisible()).toBe(true)
    await context.close()
  })
})
