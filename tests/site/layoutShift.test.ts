import { afterAll, beforeAll, expect, test } from 'vitest'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { pagesByKind } from './pages.ts'

/* Late fonts must not move what is being read. */

let site: Site
/** the same with the text's letters awaited, as the other tests have it */
let awaited: Site
beforeAll(async () => {
  site = await openSite('dist', { asBuilt: true })
  awaited = await openSite()
})
afterAll(() => Promise.all([site.close(), awaited.close()]))

/** How long the fonts take [ms]. */
const LATE = 1500
/** The share of the screen that may move, times how far: a tenth of what web.dev calls good (0.1; from memory). */
const MOST = 0.01
const PAGES = 3
const AT_ONCE = 8

interface Shift {
  value: number
  hadRecentInput: boolean
  sources: { node: Node | null }[]
}

interface Found {
  value: number
  /** what moved, for the message */
  moved: string[]
  /** fonts that were asked for, late */
  fonts: number
}

/** A browser page whose fonts come late every time, and the layout shifts of addresses opened in it. */
async function lateFonts(viewport: {
  width: number
  height: number
}): Promise<{ shiftOf(address: string): Promise<Found>; close(): Promise<void> }> {
  const context = await site.browser.newContext({ viewport })
  const page = await context.newPage()
  let fonts = 0
  await page.route('**/*.woff2', async (route) => {
    fonts++
    await new Promise((done) => setTimeout(done, LATE))
    await route.continue()
  })
  await page.addInitScript(() => {
    const seen: { value: number; moved: string[] } = { value: 0, moved: [] }
    Object.assign(window, { seen })
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as unknown as Shift[]) {
        seen.value += entry.value
        for (const { node } of entry.sources)
          seen.moved.push(
            `${entry.value.toFixed(4)} ${node?.nodeName} ${node?.textContent?.trim().slice(0, 40)}`,
          )
      }
    }).observe({ type: 'layout-shift', buffered: true })
  })
  const shiftOf = async (address: string): Promise<Found> => {
    fonts = 0
    await page.goto(site.origin + address, { waitUntil: 'load', timeout: 60_000 })
    await page.evaluate(() => document.fonts.ready.then(() => undefined))
    // the frame in which the fonts take their place, and one more
    await page.evaluate(
      () =>
        new Promise((done) =>
          requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 100))),
        ),
    )
    const seen = await page.evaluate(
      () => (window as unknown as { seen: { value: number; moved: string[] } }).seen,
    )
    return { ...seen, fonts }
  }
  return { shiftOf, close: () => context.close() }
}

test.each([
  { width: 360, height: 740 },
  { width: 1280, height: 900 },
])(
  'late fonts move next to nothing on any page of a kind, $width px wide',
  async (viewport) => {
    const kinds = pagesByKind(PAGES)
    const waiting = [...kinds.values()].flat()
    const found = new Map<string, Found>()
    const worker = async (): Promise<void> => {
      const { shiftOf, close } = await lateFonts(viewport)
      for (let address = waiting.shift(); address !== undefined; address = waiting.shift())
        found.set(address, await shiftOf(address))
      await close()
    }
    await Promise.all(Array.from({ length: AT_ONCE }, worker))
    expect([...found].filter(([, { fonts }]) => fonts < 2)).toEqual([])
    expect([...found].filter(([, { value }]) => value > MOST)).toEqual([])
  },
  120_000,
)

test('the head keeps its one row in letters that are wider, as those of another font are', async () => {
  const context = await awaited.browser.newContext({ viewport: { width: 1280, height: 900 } })
  const page = await context.newPage()
  await page.goto(`${awaited.origin}/chapters/sag/`)
  const heightOf = (spacing: string): Promise<number> =>
    page.evaluate((wider) => {
      const head = document.querySelector<HTMLElement>('.site-head')!
      head.style.letterSpacing = wider
      return head.getBoundingClientRect().height
    }, spacing)
  // Arial, fitted to the site's font over a whole text, sets the names of this row 6 % wider: half a pixel a letter
  expect(await heightOf('0.8px')).toBe(await heightOf('0px'))
  await context.close()
})

test('once the fonts have come, the text is set in them, upright and bold', async () => {
  const context = await awaited.browser.newContext()
  const page = await context.newPage()
  await page.goto(`${awaited.origin}/chapters/sag/`)
  await page.evaluate(() => document.fonts.ready.then(() => undefined))
  const session = await context.newCDPSession(page)
  await session.send('DOM.enable')
  await session.send('CSS.enable')
  const { root } = await session.send('DOM.getDocument')
  for (const selector of ['h1', '.able li', '.steps-nav']) {
    const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector })
    const { fonts } = await session.send('CSS.getPlatformFontsForNode', { nodeId })
    // an arrow of the way on is from the signs, which are cut from STIX Two Math
    expect(
      fonts
        .map(({ familyName, isCustomFont }) => `${familyName} ${isCustomFont}`)
        .filter((font) => !/^(Atkinson Hyperlegible Next.*|STIX Two Math) true$/.test(font)),
      selector,
    ).toEqual([])
    expect(fonts.length).toBeGreaterThan(0)
  }
  await context.close()
})
