import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

test('an embedded calculator on a page of another origin works, tells its height, follows the colours, links to the full page and stores nothing', async () => {
  const host = createServer((_request, response) => {
    response
      .setHeader('content-type', 'text/html')
      .end(
        `<!doctype html><html lang="en" style="color-scheme: dark"><title>host</title><script>addEventListener('message', (e) => { if (e.data && e.data.type === 'witness-mark:height' && e.source === document.querySelector('iframe').contentWindow) { window.told = e.data; document.querySelector('iframe').style.height = e.data.height + 'px' } })</script><iframe src="${site.origin}/embed/sag/?v=1&settledUp=121" title="Sag" width="700" height="200"></iframe><iframe src="${site.origin}/embed/ride-height/?v=1&amount=20" title="Height" width="700" height="900"></iframe>`,
      )
  })
  await new Promise<void>((done) => host.listen(0, '127.0.0.1', done))
  const context = await site.browser.newContext({ colorScheme: 'dark' })
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  await page.goto(`http://localhost:${(host.address() as AddressInfo).port}/`)
  const frame = page.frameLocator('iframe[title="Sag"]')
  await frame.locator('output[name="sag"]').waitFor()
  const inner = page.frames().find((each) => each.url().includes('/embed/sag/'))!
  await inner.waitForFunction(
    () => document.querySelector<HTMLInputElement>('input[name="settledUp"]')?.value === '121',
  )
  await page.waitForFunction(
    () => ((window as unknown as { told?: { height: number } }).told?.height ?? 0) > 300,
  )
  expect(await page.evaluate(() => (window as unknown as { told: { id: string } }).told.id)).toBe(
    'sag',
  )
  await frame.locator('[data-field="settledUp"] button.step').last().click()
  await inner.waitForFunction(
    () => document.querySelector<HTMLInputElement>('input[name="settledUp"]')?.value === '121.5',
  )
  expect(await context.storageState({ indexedDB: true })).toEqual({ cookies: [], origins: [] })
  expect(await inner.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe(
    'dark',
  )
  expect(await frame.locator('a.whole, .whole a').getAttribute('href')).toBe('/calculators/sag/')
  // a caution that opened in the frame would empty it, and lie above what the host page shows of it
  const caution = page.frameLocator('iframe[title="Height"]').locator('.remark.caution a').first()
  const [opened] = await Promise.all([context.waitForEvent('page'), caution.click()])
  await opened.waitForURL(/\/cautions\//)
  await context.close()
  host.closeAllConnections()
  host.close()
})
