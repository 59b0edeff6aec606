import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { calculatorIds } from '../../src/calculators/index.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { builtPages } from './pages.ts'
import { openCard, sightOf } from './sight.ts'
import type { Sight } from './sight.ts'

/* The picture stays in sight while a control moves: three controls of each calculator and of a share of the chapters. `npm run sight` tries all of them. */

const SCREENS = [
  { width: 360, height: 740 },
  { width: 1280, height: 800 },
]
/** The first screen at 200 % zoom. */
const ZOOMED = { width: 180, height: 370 }
/** Every so many chapters one: their cards are the calculators' own, in the column of the text. */
const EVERY = 4
const CONTROLS = 3

let site: Site
let page: Page
beforeAll(async () => {
  site = await openSite()
  page = await site.browser.newPage({ viewport: SCREENS[0]!, hasTouch: true })
})
afterAll(() => site.close())

/** What is in sight on each screen; the page is loaded once. */
async function look(address: string): Promise<{ where: string; sight: Sight }[]> {
  await page.setViewportSize(SCREENS[0]!)
  await page.goto(site.origin + address)
  if (!(await openCard(page))) return []
  const seen: { where: string; sight: Sight }[] = []
  for (const screen of SCREENS) {
    await page.setViewportSize(screen)
    for (const sight of await sightOf(page, CONTROLS))
      seen.push({ where: `${address} at ${screen.width} px`, sight })
  }
  return seen
}

test.each([
  [
    'the front page and the calculators',
    ['/', ...calculatorIds.map((id) => `/calculators/${id}/`)],
  ],
  [
    'chapters',
    builtPages()
      .filter((address) => /^\/chapters\/./.test(address))
      .filter((_, index) => index % EVERY === 0),
  ],
] as const)(
  'of %s: figure and strip are wholly in sight and nothing covers the control in hand',
  async (_, addresses) => {
    const seen: Awaited<ReturnType<typeof look>> = []
    for (const address of addresses) seen.push(...(await look(address)))
    expect(seen.length).toBeGreaterThan(addresses.length * 2)
    expect(
      seen.filter(({ sight: { figure, strip, covered } }) => !figure || !strip || covered),
    ).toEqual([])
  },
  120_000,
)

test('at 200 % zoom the stage is not pinned, and nothing covers the control in hand', async () => {
  await page.setViewportSize(ZOOMED)
  const found: Sight[] = []
  for (const address of [
    '/calculators/sag/',
    '/calculators/stance/',
    '/calculators/find-change/',
  ]) {
    await page.goto(site.origin + address)
    await openCard(page)
    found.push(...(await sightOf(page, CONTROLS)))
  }
  expect(found.length).toBeGreaterThan(6)
  expect(found.filter(({ pinned, covered }) => pinned || covered)).toEqual([])
})
