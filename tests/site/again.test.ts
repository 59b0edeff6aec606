import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

/* What was answered wrong in a chapter comes back two chapters on, with other numbers, and can be cleared. */

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

describe('asked again', () => {
  test('shows nothing before it is due, one question two chapters on, the next after five, and forgets on request', async () => {
    const page = await site.browser.newPage()
    page.setDefaultTimeout(15_000)
    await page.goto(`${site.origin}/chapters/sag/`)
    const check = page.locator('[data-question="check"]').last()
    await check.getByRole('button', { name: 'Check' }).waitFor()
    await check.locator('[data-right="false"] input').first().check()
    await check.getByRole('button', { name: 'Check' }).click()
    const status = page.locator('[data-again-status]')
    const shown = page.locator('[data-again]:visible')
    const read = async (chapter: string): Promise<void> => {
      await page.evaluate((address) => {
        const answers = JSON.parse(localStorage.getItem('witness-mark.answers') ?? '{}') as object
        localStorage.setItem('witness-mark.answers', JSON.stringify({ ...answers, [address]: 0 }))
      }, `/chapters/${chapter}/#c1`)
      await page.goto(`${site.origin}/again/`)
      await page.waitForFunction(
        () => document.querySelector('[data-again-status]')!.textContent !== '',
      )
    }
    await read('rate-from-sag')
    expect(await status.textContent()).toBe(
      'Nothing is due yet. One chapter comes back as you read on.',
    )
    expect(await shown.count()).toBe(0)
    await read('choosing-a-spring')
    expect(await status.textContent()).toBe('One question is due.')
    expect(await shown.evaluateAll((all) => all.map((each) => each.dataset['stage']))).toEqual([
      '0',
    ])
    await shown.locator('[data-right="true"] input').check()
    await shown.getByRole('button', { name: 'Check' }).click()
    expect(await shown.getByRole('status').textContent()).toMatch(/^Right/)
    await page.reload()
    await page.waitForFunction(
      () => document.querySelector('[data-again-status]')!.textContent !== '',
    )
    expect(await shown.count()).toBe(0)
    await read('ride-height')
    expect(await shown.evaluateAll((all) => all.map((each) => each.dataset['stage']))).toEqual([
      '1',
    ])
    await page.getByRole('button', { name: 'Forget what I got wrong' }).click()
    expect(await status.textContent()).toMatch(/^Nothing is due\. /)
    expect(await shown.count()).toBe(0)
    await page.close()
  })

  test('asks three questions of every chapter where no script runs', async () => {
    const context = await site.browser.newContext({ javaScriptEnabled: false })
    const page = await context.newPage()
    await page.goto(`${site.origin}/again/`)
    const chapters = await page
      .locator('[data-again]')
      .evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset['again']))
    expect(new Set(chapters).size).toBe(19)
    expect(chapters.length).toBe(3 * 19)
    await context.close()
  })
})
