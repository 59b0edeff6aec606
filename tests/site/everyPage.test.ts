import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { inspect } from './inspect.ts'
import { builtPages, onePageOfEachKind } from './pages.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

/** Kinds of which all pages come from one template and differ by words alone: the checker runs on so many of each here, and on all by `npm run accessibility`. */
const ALIKE: Readonly<Record<string, number>> = {
  source: 4,
  cautions: 6,
  embed: 4,
  symptoms: 6,
  checks: 4,
  procedures: 12,
  jobs: 4,
}

/** Pages on which the checker runs: all, but for those that are alike an even share. */
function checkedPages(): string[] {
  const pages = builtPages().filter((page) => page !== '/404.html')
  const kindOf = (page: string): string => page.split('/')[1] ?? ''
  return pages.filter((page) => {
    const most = ALIKE[kindOf(page)]
    if (most === undefined) return true
    const kin = pages.filter((other) => kindOf(other) === kindOf(page))
    const every = Math.ceil(kin.length / most)
    return kin.indexOf(page) % every === 0
  })
}

describe('every page', () => {
  const pages = builtPages().filter((page) => page !== '/404.html')
  const checked = new Set(checkedPages())

  test.each([0, 1])(
    'passes the accessibility checker, logs nothing, and asks nothing of other origins (half %d)',
    async (half) => {
      expect(checked.size).toBeGreaterThan(80)
      expect(
        await inspect(
          site,
          pages.filter((_, index) => index % 2 === half),
          { viewport: { width: 1280, height: 900 } },
          (page) => checked.has(page),
        ),
      ).toEqual([])
    },
    400_000,
  )

  test('one page of each kind passes in the dark theme on a phone', async () => {
    expect(
      await inspect(
        site,
        onePageOfEachKind().filter((page) => page !== '/404.html'),
        { viewport: { width: 360, height: 740 }, colorScheme: 'dark' },
      ),
    ).toEqual([])
  }, 300_000)

  test('one page of each kind does not scroll sideways at 320 px', async () => {
    const context = await site.browser.newContext({ viewport: { width: 320, height: 740 } })
    const page = await context.newPage()
    const wide: string[] = []
    for (const address of onePageOfEachKind()) {
      await page.goto(site.origin + address, { waitUntil: 'load', timeout: 30_000 })
      const excess = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      )
      if (excess > 0) wide.push(`${address} by ${excess} px`)
    }
    await context.close()
    expect(wide).toEqual([])
  }, 200_000)
})

describe('a page without a calculator', () => {
  test('loads no part of the calculator machine', async () => {
    const context = await site.browser.newContext()
    const page = await context.newPage()
    const scripts: string[] = []
    page.on('request', (request) => {
      if (request.resourceType() === 'script') scripts.push(request.url())
    })
    for (const address of [
      '/procedures/',
      '/glossary/',
      '/cautions/bike-can-fall/',
      '/chapters/',
      '/checks/',
    ]) {
      await page.goto(site.origin + address, { waitUntil: 'networkidle', timeout: 30_000 })
      expect(await page.locator('astro-island').count(), address).toBe(0)
    }
    await context.close()
    expect(scripts.filter((url) => /Island|Card|preact|hooks/i.test(url))).toEqual([])
  }, 120_000)
})
