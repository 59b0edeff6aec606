import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { calculatorIds } from '../../src/calculators/index.ts'
import { loadTopics } from '../../src/calculators/exercises.ts'
import { isRight } from '../../src/worksheet/pose.ts'
import { DEFAULTS } from '../../src/worksheet/settings.ts'
import type { Settings } from '../../src/worksheet/settings.ts'
import { makeSheet } from '../../src/worksheet/sheet.ts'
import { bikes } from '../calculators/bikes.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

let site: Site
let page: Page
beforeAll(async () => {
  site = await openSite()
  page = await site.browser.newPage()
})
afterAll(() => site.close())

const topics = await loadTopics(calculatorIds)
const settings: Settings = {
  ...DEFAULTS,
  seed: 4711,
  topics: ['sag', 'rear-rate', 'ride-height'],
  n: 9,
  units: 'imperial',
}
const ADDRESS =
  '/worksheets/?seed=4711&topics=sag,rear-rate,ride-height&level=all&n=9&units=imperial'
const { questions } = makeSheet(topics, settings, bikes)

const texts = (selector: string): Promise<string[]> => page.locator(selector).allInnerTexts()

test('a browser makes the same sheet as Node from the same address, with nothing of its answers in the page', async () => {
  await page.goto(site.origin + ADDRESS)
  await page.getByText('Worksheet 4711', { exact: true }).waitFor()
  expect(await texts('[data-question] > p')).toEqual(questions.map(({ text }) => text))
  const shown = await texts('[data-question]:first-of-type [data-option]')
  expect(shown.map((text) => text.replace(/^[A-D]\s*/, ''))).toEqual(
    questions[0]!.options.map(({ text }) => text),
  )
  expect(await page.locator('[data-right], [data-key]').count()).toBe(0)
  const served = await (await page.request.get(site.origin + ADDRESS)).text()
  expect(served).not.toMatch(/<[^>]*\sdata-right/)
})

test('the key comes on pages of its own, with the right letters', async () => {
  await page.getByRole('button', { name: 'Show the key' }).click()
  const letters = await page
    .locator('[data-key] [data-right]')
    .evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset['right']))
  expect(letters).toEqual(questions.map(({ options }) => 'abcd'[options.findIndex(isRight)]))
  await page.emulateMedia({ media: 'print' })
  expect(
    await page.locator('[data-key]').evaluate((key) => getComputedStyle(key).breakBefore),
  ).toBe('page')
  expect(await page.locator('.order').isVisible()).toBe(false)
  await page.emulateMedia({ media: 'screen' })
})

test('what can’t be used is told, stays in its field, and changes nothing', async () => {
  const number = page.getByLabel('Questions, 1 to 40')
  await number.fill('400')
  await number.press('Enter')
  await page.getByText('“400” can’t be used for the number of questions').waitFor()
  expect(await number.inputValue()).toBe('400')
  expect(await page.locator('[data-question]').count()).toBe(9)
  await number.fill('3')
  await number.press('Enter')
  await page.waitForFunction(() => document.querySelectorAll('[data-question]').length === 3)
  expect(new URL(page.url()).searchParams.get('n')).toBe('3')
})
