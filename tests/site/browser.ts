import { existsSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import path from 'node:path'
import { chromium as playwright } from 'playwright-core'
import type { Browser } from 'playwright-core'
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

/** Starts a browser; its own arguments are few on purpose, so that it keeps web security on. */
export async function launch(): Promise<Browser> {
  return playwright.launch({
    executablePath: await findChromium(),
    args: ['--no-sandbox'],
    timeout: 60_000,
  })
}

export interface Site {
  origin: string
  browser: Browser
  close(): Promise<void>
}

/** Serves a built site, this one or another folder’s, on a free port and starts a browser. */
export async function openSite(folder = 'dist'): Promise<Site> {
  const server = await createSiteServer(path.resolve(folder))
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
