import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import path from 'node:path'
import { chromium as playwright } from 'playwright-core'
import type { Browser, BrowserContext, BrowserContextOptions } from 'playwright-core'
import { createSiteServer } from '../../src/build/serve.ts'

const INSTALLED = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/opt/google/chrome/chrome',
]

/** Where a Chromium is: CHROME_PATH, an installed one, else the one that an npm package unpacks (once, in globalSetup). */
export async function findChromium(): Promise<string> {
  const named = process.env['CHROME_PATH']
  if (named) return named
  const installed = INSTALLED.find((file) => existsSync(file))
  if (installed) return installed
  const { default: packaged } = await import('@sparticuz/chromium')
  return packaged.executablePath()
}

/** A context's options without the service worker, which would come between a test and its page; only the tests of what is kept offline have it. */
export const WITHOUT_WORKER: BrowserContextOptions = { serviceWorkers: 'block' }

/** Takes service workers from a context's pages: blocked alone, each page would say so in the log that tests read. */
export const hideWorkers = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => void Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'))

/** Starts a browser, whose contexts have no service worker unless they ask for it; its own arguments are few on purpose, so that it keeps web security on. */
export async function launch(): Promise<Browser> {
  const browser = await playwright.launch({
    executablePath: await findChromium(),
    args: ['--no-sandbox'],
    timeout: 60_000,
  })
  const open = browser.newContext.bind(browser)
  browser.newContext = async (options) => {
    const context = await open({ ...WITHOUT_WORKER, ...options })
    if (options?.serviceWorkers !== 'allow') await hideWorkers(context)
    return context
  }
  return browser
}

export interface Site {
  origin: string
  browser: Browser
  close(): Promise<void>
}

/** The built site, but for one word of its style: the text's letters take their place however late they come, so that what is measured on a busy machine is measured in them. */
async function withLettersAwaited(root: string): Promise<Server> {
  const site = await createSiteServer(root)
  return createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost')
    if (!pathname.endsWith('.css')) return void site.emit('request', request, response)
    readFile(path.join(root, pathname), 'utf8').then(
      (style) =>
        response
          .writeHead(200, { 'content-type': 'text/css', 'cache-control': 'max-age=600' })
          .end(style.replaceAll(/font-display: ?optional/g, 'font-display:swap')),
      () => site.emit('request', request, response),
    )
  })
}

/** Serves a built site, this one or another folder’s, on a free port and starts a browser; `asBuilt` leaves it to the browser whether late letters are shown. */
export async function openSite(folder = 'dist', { asBuilt = false } = {}): Promise<Site> {
  const root = path.resolve(folder)
  const server = asBuilt ? await createSiteServer(root) : await withLettersAwaited(root)
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const browser = await launch()
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    browser,
    async close() {
      await browser.close()
      server.closeAllConnections()
      server.close()
    },
  }
}
