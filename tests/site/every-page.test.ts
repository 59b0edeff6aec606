import axe from 'axe-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { BrowserContext, Page } from 'playwright-core'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { builtPages, onePageOfEachKind } from './pages.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

interface Seen {
  page: string
  fault: string
}

/** Notes console messages, page errors, failed answers and requests that leave the origin. */
function watch(context: BrowserContext, address: () => string, faults: Seen[]): void {
  context.on('console', (message) => faults.push({ page: address(), fault: `console ${message.type()}: ${message.text()}` }))
  context.on('weberror', (error) => faults.push({ page: address(), fault: `error: ${error.error().message}` }))
  context.on('request', (request) => {
    if (!request.url().startsWith(site.origin) && !request.url().startsWith('data:') && !request.url().startsWith('blob:'))
      faults.push({ page: address(), fault: `left the origin: ${request.url()}` })
  })
}

async function violations(page: Page): Promise<string[]> {
  // the checker runs as a page script; evaluating it is not subject to the page's policy
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const checker = (window as unknown as { axe: typeof axe }).axe
    const { violations: found } = await checker.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
    return found.flatMap((violation) =>
      violation.nodes.map((node) => `${violation.id}: ${node.target.join(' ')} – ${node.failureSummary?.split('\n')[1]?.trim() ?? ''}`),
    )
  })
}

async function inspect(addresses: readonly string[], options: Parameters<Site['browser']['newContext']>[0]): Promise<Seen[]> {
  const faults: Seen[] = []
  let address = ''
  const context = await site.browser.newContext(options)
  watch(context, () => address, faults)
  const page = await context.newPage()
  for (address of addresses) {
    await page.goto(site.origin + address, { waitUntil: 'load', timeout: 30_000 })
    await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0, undefined, { timeout: 15_000 })
    for (const fault of await violations(page)) faults.push({ page: address, fault })
  }
  await context.close()
  return faults
}

describe('every page', () => {
  const pages = builtPages().filter((page) => page !== '/404.html')

  test.each([0, 1])(
    'passes the accessibility checker, logs nothing, and asks nothing of other origins (half %d)',
    async (half) => {
      expect(
        await inspect(
          pages.filter((_, index) => index % 2 === half),
          { viewport: { width: 1280, height: 900 } },
        ),
      ).toEqual([])
    },
    400_000,
  )

  test('one page of each kind passes in the dark theme on a phone', async () => {
    expect(
      await inspect(
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
      const excess = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
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
    for (const address of ['/', '/glossary/', '/cautions/bike-can-fall/', '/chapters/', '/checks/']) {
      await page.goto(site.origin + address, { waitUntil: 'networkidle', timeout: 30_000 })
      expect(await page.locator('astro-island').count(), address).toBe(0)
    }
    await context.close()
    expect(scripts.filter((url) => /Island|Card|preact|hooks/i.test(url))).toEqual([])
  }, 120_000)
})
