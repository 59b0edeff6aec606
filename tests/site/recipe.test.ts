import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, readdirSync, rmSync, symlinkSync } from 'node:fs'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { readQr } from './qr.ts'

/* The recipe for a new calculator as DEVELOPERS.md gives it: one command, nothing else written. It is tried on a copy of the project, which is built whole. */

const ID = 'squeeze-of-a-spring'
const COPY = path.resolve('.cache/recipe')
const PROJECT = ['astro.config.mjs', 'components', 'content', 'package.json', 'public', 'src']

/** A build in a copy takes about 25 s alone, and several times that beside other tests. */
const BUILD = 300_000

function copyProject(): void {
  rmSync(COPY, { recursive: true, force: true })
  mkdirSync(`${COPY}/node_modules`, { recursive: true })
  for (const name of [...PROJECT, 'tsconfig.json'])
    cpSync(name, `${COPY}/${name}`, { recursive: true })
  // each package by a link of its own, so that what a build caches beside them stays in the copy
  for (const name of readdirSync('node_modules'))
    if (!['.astro', '.vite', '.cache'].includes(name))
      symlinkSync(path.resolve('node_modules', name), `${COPY}/node_modules/${name}`)
}

function run(...command: string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, command, {
    cwd: COPY,
    encoding: 'utf8',
    timeout: BUILD,
    env: { ...process.env, SITE_URL: 'https://example.org', ASTRO_TELEMETRY_DISABLED: '1' },
  })
  expect(status, stdout + stderr).toBe(0)
  return stdout
}

describe('npm run new -- <id>', () => {
  let site: Site
  let wrote: string
  beforeAll(async () => {
    copyProject()
    wrote = run('src/build/newCalculator.ts', ID)
    run('node_modules/astro/bin/astro.mjs', 'build')
    site = await openSite(`${COPY}/dist`)
  }, BUILD)
  afterAll(async () => {
    await site?.close()
    rmSync(COPY, { recursive: true, force: true })
  })

  test('writes a folder and a page, and nothing else', () => {
    const files = [...wrote.matchAll(/^wrote (.+)$/gm)].map(([, file]) => file)
    expect(files).toHaveLength(7)
    for (const file of files)
      expect(file).toMatch(
        new RegExp(`^(src/calculators/${ID}/[A-Za-z]+\\.tsx?|content/calculators/${ID}\\.mdx)$`),
      )
  })

  test('gives a page that computes, takes a link, shows its code and prints', async () => {
    const page = await site.browser.newPage()
    page.setDefaultTimeout(15_000)
    await page.goto(`${site.origin}/calculators/${ID}/?v=1&load=600&rate=10`)
    await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
    const squeeze = page.locator('output[name="squeeze"]')
    // 600 N / 10 N/mm = 60 mm
    expect(await squeeze.getAttribute('data-si')).toBe('0.06')
    await page.locator('input[name="rate"]').first().fill('12')
    await page.locator('output[name="squeeze"][data-si="0.05"]').waitFor()
    await page.getByRole('button', { name: /code/i }).first().click()
    const link = new URL((await readQr(page.locator('.qr svg').first())) ?? '')
    expect(link.origin).toBe('https://example.org')
    expect(link.searchParams.get('rate')).toBe('12')
    expect(await page.getByRole('button', { name: /print/i }).count()).toBeGreaterThan(0)
    expect((await page.pdf()).length).toBeGreaterThan(10_000)
    await page.close()
  })

  test('gives a frame for other sites', async () => {
    const page = await site.browser.newPage()
    const answer = await page.goto(`${site.origin}/embed/${ID}/`)
    expect(answer?.status()).toBe(200)
    await page.locator('output[name="squeeze"]').waitFor()
    await page.close()
  })
})
