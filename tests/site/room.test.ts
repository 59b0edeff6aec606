import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { builtPages, builtText } from './pages.ts'

let site: Site
let page: Page
beforeAll(async () => {
  site = await openSite()
  page = await site.browser.newPage({ viewport: { width: 1280, height: 720 } })
})
afterAll(() => site.close())

const open = async (address: string): Promise<void> => {
  await page.goto(`${site.origin}${address}?room`)
  await page.locator('[data-room] [data-vote]').first().waitFor()
}
const bodyText = (): Promise<string> => page.evaluate(() => document.body.textContent ?? '')
const press = (key: string): Promise<void> => page.keyboard.press(key)
const stage = (): Promise<string | null> => page.locator('[data-room]').getAttribute('data-stage')

/** Smallest lettering in sight and what reaches past the screen: 28 px is what can be read from five metres. */
const sizes = () =>
  page.evaluate(() => {
    const small: string[] = []
    let least = Infinity
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent?.trim() ?? ''
      const parent = node.parentElement!
      const box = parent.getBoundingClientRect()
      if (text === '' || box.width < 2 || box.height < 2 || parent.closest('.hidden')) continue
      if (!parent.checkVisibility()) continue
      const svg = parent.closest('svg')
      const scale = svg
        ? Math.min(
            svg.getBoundingClientRect().width / svg.viewBox.baseVal.width,
            svg.getBoundingClientRect().height / svg.viewBox.baseVal.height,
          )
        : 1
      const size = parseFloat(getComputedStyle(parent).fontSize) * scale
      least = Math.min(least, size)
      if (size < 27.9) small.push(`${text} (${size.toFixed(1)})`)
    }
    return { small, least, wide: document.documentElement.scrollWidth - innerWidth }
  })

describe('a chapter’s prediction in a room', () => {
  test('shows the question alone: no answer, drawing or result in its text, in the page or in the address', async () => {
    await page.goto(`${site.origin}/chapters/sag/`)
    const why = await page.locator('[data-question="predict"] .why').allTextContents()
    expect(why.length).toBeGreaterThan(2)
    await open('/chapters/sag/')
    const text = await bodyText()
    expect(text).toContain('What do the two readings do?')
    for (const reason of why) expect(text).not.toContain(reason.trim().slice(0, 40))
    expect(await page.locator('svg, [data-right], [data-calculator], .right').count()).toBe(0)
    expect(await page.locator('meta[name="description"]').count()).toBe(0)
    expect(new URL(page.url()).search).toBe('?room')
    const { small, wide } = await sizes()
    expect(small).toEqual([])
    expect(wide).toBe(0)
  })

  test('counts hands by keys in two votes, and keeps them over a reload', async () => {
    for (const key of ['a', 'a', 'b', 'Shift+A']) await press(key)
    expect(await page.locator('.tally').allInnerTexts()).toEqual(['hands 1', 'hands 1', 'hands 0'])
    await press('PageDown')
    expect(await stage()).toBe('talk')
    await press('PageDown')
    await page.locator('[data-vote="c"]').click()
    await page.reload()
    await page.locator('[data-vote]').first().waitFor()
    expect(await stage()).toBe('second')
    expect(await page.locator('.tally').allInnerTexts()).toEqual(['hands 0', 'hands 0', 'hands 1'])
  })

  test('a full stop darkens the screen, Escape brings it back, and the result comes on command with both votes', async () => {
    await press('.')
    expect(await page.locator('[data-vote]').count()).toBe(0)
    await press('Escape')
    await page.locator('[data-reveal]').click()
    await page.locator('.room-figure svg').first().waitFor()
    expect(await page.locator('.tally').first().innerText()).toContain('1st 1')
    expect(await page.locator('li.right').count()).toBe(1)
    const { small } = await sizes()
    expect(small).toEqual([])
    await press('Escape')
    expect(await page.locator('svg, .right').count()).toBe(0)
  })

  test('a new class starts with no votes', async () => {
    await page.getByText('More', { exact: true }).click()
    await page.getByRole('button', { name: 'New class' }).click()
    expect(await stage()).toBe('first')
    expect(await page.locator('.tally').count()).toBe(0)
    expect(await page.evaluate(() => localStorage.getItem('witness-mark.answers'))).toBeNull()
  })
})

/** Those whose drawings are the tallest, the widest and the most lettered, and the one that elsewhere works in a worker; each takes about a second. */
const HARDEST = ['stance', 'fork-stack', 'find-change', 'rear-rate', 'choose-rate', 'cg-height']

test('a calculator has a room with a question, and shows drawing and slider in one sight', async () => {
  const faults: string[] = []
  for (const id of HARDEST) {
    await open(`/calculators/${id}/`)
    if ((await page.locator('[data-vote]').count()) < 3)
      faults.push(`${id}: fewer than three answers`)
    if ((await page.locator('svg').count()) > 0) faults.push(`${id}: a drawing before the result`)
    await page.locator('[data-reveal]').click()
    await page.locator('.room-figure').waitFor()
    const seen = await page.evaluate(() => {
      const bar = document.querySelector('.room-bar')!.getBoundingClientRect().top
      const bottom = (selector: string): number =>
        Math.max(
          0,
          ...[...document.querySelectorAll(selector)]
            .filter((each) => each.checkVisibility())
            .map((each) => each.getBoundingClientRect().bottom + scrollY),
        )
      return {
        bar,
        drawing: bottom('.room-figure svg'),
        slider: bottom('.room-slider input'),
        answers: bottom('.ballot li'),
      }
    })
    if (seen.drawing === 0) faults.push(`${id}: no drawing`)
    const end = Math.max(seen.drawing, seen.slider, seen.answers)
    if (end > seen.bar) faults.push(`${id}: ends at ${end} px, the bar begins at ${seen.bar}`)
    const { small } = await sizes()
    if (small.length > 0) faults.push(`${id}: ${small.slice(0, 3).join(', ')}`)
  }
  expect(faults).toEqual([])
})

test('a reader without a room loads nothing of it', async () => {
  const asked: string[] = []
  const reader = await site.browser.newPage()
  reader.on('request', (request) => asked.push(request.url()))
  await reader.goto(`${site.origin}/chapters/sag/`, { waitUntil: 'networkidle' })
  const names = asked.map((url) => url.split('/').at(-1)!)
  expect(
    names.filter((name) => /^(start|Classroom|exercises|questions\.[^.]+\.js\?room)/.test(name)),
  ).toEqual([])
  const pages = builtPages().filter((address) => /^\/chapters\/./.test(address))
  for (const address of pages) expect(builtText(address)).not.toMatch(/start\.[\w-]+\.(?:js|css)/)
  await reader.close()
})
