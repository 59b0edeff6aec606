import type { Locator, Page } from 'playwright-core'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import { defaultsOf, isAsked } from '../../src/machine/evaluate.ts'
import type { Site } from './browser.ts'

/* A calculator's page in a browser, and what its card shows. */

export interface Opened {
  page: Page
  form: Locator
  close(): Promise<void>
}

/** Waits until every card of a page is alive. */
export const alive = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)

/** Opens a calculator as a reader who has never been here does. */
export async function openCalculator(
  site: Site,
  address: string,
  options: Parameters<Site['browser']['newContext']>[0] = {},
  before?: (page: Page) => Promise<void>,
): Promise<Opened> {
  const context = await site.browser.newContext(options)
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  await before?.(page)
  await page.goto(site.origin + address, { waitUntil: 'load' })
  await alive(page)
  return { page, form: page.locator('form[data-calculator]'), close: () => context.close() }
}

/** A first quantity that shows at first, to move by a step. */
export function firstQuantity(definition: WholeCalculator): string | null {
  const given = defaultsOf(definition)
  const found = Object.entries(definition.inputs).find(
    ([, input]) =>
      input.kind === 'quantity' &&
      !input.more &&
      isAsked(input, given) &&
      input.default !== undefined,
  )
  return found?.[0] ?? null
}

/** Changes the first quantity by three presses of its button, or a text or cell; returns the input's name and what it now holds. */
export async function changeSomething(
  definition: WholeCalculator,
  form: Locator,
): Promise<[name: string, value: string]> {
  const name = firstQuantity(definition)
  if (name !== null) {
    const button = form.locator(`[data-field="${name}"] button.step`).last()
    for (let press = 0; press < 3; press++) await button.click()
    return [name, await form.locator(`input[name="${name}"]`).inputValue()]
  }
  const [id, input] = Object.entries(definition.inputs).findLast(
    ([, each]) => each.kind === 'text' || each.kind === 'table',
  )!
  const field = form.locator(`[data-field="${id}"] input[type="text"]`).first()
  const value = await field.inputValue()
  await field.fill(
    input.kind === 'text'
      ? value.replace(/^\d+/, (digits) => String(Number(digits) + 10))
      : String(Number(value) + 1),
  )
  return [id, await field.inputValue()]
}

/** Waits until nothing is being worked out beside the page. */
const settled = (form: Locator): Promise<unknown> =>
  form.page().waitForFunction(() => document.querySelector('form[aria-busy=true]') === null)

export async function outputsOf(form: Locator): Promise<string> {
  await settled(form)
  return form
    .locator('output')
    .evaluateAll((all) =>
      all.map((output) => `${(output as HTMLOutputElement).name}=${output.textContent}`).join('\n'),
    )
}
/** Texts and the numbers of the drawing: a moved line counts as much as another label. */
export async function pictureOf(form: Locator): Promise<string> {
  await settled(form)
  return form.locator('.draw').evaluate((draw) => draw.innerHTML)
}
