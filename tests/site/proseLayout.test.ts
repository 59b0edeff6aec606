import { afterAll, beforeAll, expect, test } from 'vitest'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { builtPages, builtText } from './pages.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

/** Least distance between a table in the text and what follows it [px]: about half a line of prose, less than any margin of a paragraph. */
const LEAST = 12

test.each([360, 1280])(
  'a table in a chapter keeps its distance from what follows at %d px',
  async (width) => {
    const pages = builtPages().filter(
      (page) =>
        page.startsWith('/chapters/') && /class="scroll"[^>]*>\s*<table/.test(builtText(page)),
    )
    expect(pages.length).toBeGreaterThan(2)
    const context = await site.browser.newContext({ viewport: { width, height: 900 } })
    const page = await context.newPage()
    const near: string[] = []
    for (const address of pages) {
      await page.goto(site.origin + address)
      const gaps = await page.$$eval('main .scroll:has(> table):not(.sheet *)', (tables) =>
        tables
          .filter((table) => table.checkVisibility() && table.nextElementSibling !== null)
          .map((table) => ({
            table: table.getAttribute('aria-label'),
            gap:
              table.nextElementSibling!.getBoundingClientRect().top -
              table.getBoundingClientRect().bottom,
          })),
      )
      for (const { table, gap } of gaps)
        if (gap < LEAST) near.push(`${address} ${table}: ${gap} px`)
    }
    await context.close()
    expect(near).toEqual([])
  },
  60_000,
)
