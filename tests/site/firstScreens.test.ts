import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { builtPages, builtText } from './pages.ts'

/* How far a phone is scrolled before what a page is for comes: screens of 360 × 740. */

const SCREEN = { width: 360, height: 740 }

let site: Site
let page: Page
beforeAll(async () => {
  site = await openSite()
  page = await site.browser.newPage({ viewport: SCREEN })
})
afterAll(() => site.close())

const pagesUnder = (folder: string, holding: string): string[] =>
  builtPages().filter(
    (address) => address.startsWith(`/${folder}/`) && builtText(address).includes(holding),
  )

/** Where the first element of each kind begins [screens]. */
async function placesOf(address: string, selectors: readonly string[]): Promise<number[]> {
  await page.goto(site.origin + address)
  await page.evaluate(() => document.fonts.ready.then(() => undefined))
  const tops = await page.evaluate(
    (all) => all.map((each) => document.querySelector(each)!.getBoundingClientRect().top + scrollY),
    selectors,
  )
  return tops.map((top) => Math.round((top / SCREEN.height) * 100) / 100)
}

test('a chapter asks its question within 1.2 screens, and has its calculator within 2.5', async () => {
  const chapters = pagesUnder('chapters', 'data-question="')
  expect(chapters.length).toBeGreaterThan(15)
  const late: string[] = []
  for (const address of chapters) {
    const [question, card] = await placesOf(address, [
      '[data-question="predict"], [data-question="number"]',
      '[data-calculator-place]',
    ])
    if (question! > 1.2 || card! > 2.5) late.push(`${address} ${question}, ${card}`)
  }
  expect(late).toEqual([])
})

test('a procedure has its first step within 1.5 screens', async () => {
  const procedures = pagesUnder('procedures', 'data-procedure=')
  expect(procedures.length).toBeGreaterThan(20)
  const late: string[] = []
  for (const address of procedures) {
    const [step] = await placesOf(address, ['.step'])
    if (step! > 1.5) late.push(`${address} ${step}`)
  }
  expect(late).toEqual([])
})
