import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { build } from 'vite'
import { Bundle } from '../../src/build/bundle.ts'
import { writeOffline } from '../../src/build/offline.ts'
import { launch } from './browser.ts'
import { openLine } from './offlineSite.ts'
import type { Line } from './offlineSite.ts'

/* The service worker and the script that starts it under a path of somebody else's site: a site of a few pages, since the built one is under "/". */

const BASE = '/shop/suspension/'
const FOLDERS = { old: '.cache/tmp/base-old', young: '.cache/tmp/base-young' }
const PAGES = ['', 'offline/', 'chapters/sag/', 'record/', '404.html']

/** Writes an edition of the small site, in which every page says so. */
async function writeEdition(folder: string, says: string): Promise<string> {
  const root = path.resolve(folder)
  rmSync(root, { recursive: true, force: true })
  for (const page of PAGES) {
    const file = path.join(root, page.endsWith('.html') ? page : `${page}index.html`)
    mkdirSync(path.dirname(file), { recursive: true })
    writeFileSync(
      file,
      `<!doctype html><html lang="en"><head><title>${page}</title></head><body><h1>${says} ${page}</h1><script type="module" src="${BASE}_astro/register.12345678.js"></script></body></html>`,
    )
  }
  await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    base: BASE,
    build: {
      outDir: root,
      emptyOutDir: false,
      modulePreload: false,
      rollupOptions: {
        input: path.resolve('src/offline/register.ts'),
        output: {
          entryFileNames: '_astro/register.12345678.js',
          chunkFileNames: '_astro/[name].[hash].js',
        },
      },
    },
  })
  await writeOffline(root, new Bundle([]))
  return root
}

let line: Line
let browser: Browser
beforeAll(async () => {
  await writeEdition(FOLDERS.old, 'old')
  await writeEdition(FOLDERS.young, 'young')
  line = await openLine(path.resolve(FOLDERS.old), BASE)
  browser = await launch()
})
afterAll(async () => {
  await browser.close()
  line.close()
})

const open = (page: Page, address: string) => page.goto(line.origin + BASE + address)
const heading = (page: Page) => page.locator('h1').innerText()
/** Keeps the whole site, as the book's page has it done. */
const keepWhole = (page: Page) =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready
    const { port1, port2 } = new MessageChannel()
    const last = new Promise<string>((done) => {
      port1.onmessage = ({ data: { kept } }: MessageEvent<{ kept: string }>) => {
        if (kept !== 'some') done(kept)
      }
    })
    active!.postMessage({ ask: 'keep' }, [port2])
    return last
  })

describe('under a sub-path', () => {
  test('the worker has that path and no other, keeps it whole, and takes a new edition on request, all of it', async () => {
    const context = await browser.newContext({ serviceWorkers: 'allow' })
    const page = await context.newPage()
    await open(page, '')
    expect(await page.evaluate(async () => (await navigator.serviceWorker.ready).scope)).toBe(
      line.origin + BASE,
    )
    expect(await keepWhole(page)).toBe('all')
    line.cut()
    await open(page, 'chapters/sag/?v=1')
    expect(await heading(page)).toBe('old chapters/sag/')
    await open(page, 'elsewhere/')
    expect(await heading(page)).toBe('old 404.html')
    const outside = await context.newPage()
    await expect(outside.goto(`${line.origin}/shop/`)).rejects.toThrow('net::ERR')
    await outside.close()

    line.mend()
    await line.serve(path.resolve(FOLDERS.young))
    await open(page, 'chapters/sag/')
    await page.locator('[data-do="load-edition"]').waitFor()
    expect(await heading(page)).toBe('old chapters/sag/')
    // a page of the edition before stays in it until it is asked
    const other = await context.newPage()
    await open(other, 'record/')
    expect(await heading(other)).toBe('old record/')
    line.cut()
    await page.locator('[data-do="load-edition"]').click()
    await page.locator('h1', { hasText: 'young chapters/sag/' }).waitFor()
    await other.locator('[data-do="load-again"]').click()
    await other.locator('h1', { hasText: 'young record/' }).waitFor()
    for (const address of ['', 'offline/', 'record/'])
      expect((await open(page, address))?.status(), address).toBe(200)
    expect(await heading(page)).toBe('young record/')
    await context.close()
  })

  test('a page that is not the one that the build listed is shown and not kept', async () => {
    line.mend()
    await line.serve(path.resolve(FOLDERS.old))
    const context = await browser.newContext({ serviceWorkers: 'allow' })
    const page = await context.newPage()
    await open(page, '')
    await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state)
    const file = path.join(FOLDERS.old, 'chapters/sag/index.html')
    const listed = readFileSync(file, 'utf8')
    writeFileSync(file, listed.replace('old', 'changed'))
    await open(page, 'chapters/sag/')
    expect(await heading(page)).toBe('changed chapters/sag/')
    expect(await keepWhole(page)).toBe('not')
    line.cut()
    await open(page, 'chapters/sag/')
    expect(await heading(page)).toBe('old offline/')
    await context.close()
  })
})
