import type { BrowserContext } from 'playwright-core'
import type { Site } from './browser.ts'
import { violations } from './accessible.ts'

/* A page as it is in the browser: whether it passes the accessibility checker, what it logs, and what it asks of other origins. */

/** A fault and the page that has it. */
export interface Seen {
  page: string
  fault: string
}

/** Notes console messages, page errors, failed answers and requests that leave the origin. */
function watch(site: Site, context: BrowserContext, address: () => string, faults: Seen[]): void {
  context.on('console', (message) =>
    faults.push({ page: address(), fault: `console ${message.type()}: ${message.text()}` }),
  )
  context.on('weberror', (error) =>
    faults.push({ page: address(), fault: `error: ${error.error().message}` }),
  )
  context.on('request', (request) => {
    if (
      !request.url().startsWith(site.origin) &&
      !request.url().startsWith('data:') &&
      !request.url().startsWith('blob:')
    )
      faults.push({ page: address(), fault: `left the origin: ${request.url()}` })
  })
}

/** Opens pages one after the other, notes what they log and ask for, and runs the accessibility checker on those that are `checked`. */
export async function inspect(
  site: Site,
  addresses: readonly string[],
  options: Parameters<Site['browser']['newContext']>[0],
  checked: (address: string) => boolean = () => true,
): Promise<Seen[]> {
  const faults: Seen[] = []
  let address = ''
  const context = await site.browser.newContext(options)
  watch(site, context, () => address, faults)
  const page = await context.newPage()
  for (address of addresses) {
    await page.goto(site.origin + address, { waitUntil: 'load', timeout: 30_000 })
    await page.waitForFunction(
      () => document.querySelectorAll('astro-island[ssr]').length === 0,
      undefined,
      { timeout: 15_000 },
    )
    if (checked(address))
      for (const fault of await violations(page)) faults.push({ page: address, fault })
  }
  await context.close()
  return faults
}
