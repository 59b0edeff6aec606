import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { CDPSession, Locator, Page } from 'playwright-core'
import { calculatorIds } from '../../src/calculators/index.ts'
import { loadFigure } from '../../src/calculators/browser.ts'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import type { Staged } from '../../src/drawing/View.tsx'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { alive } from './calculatorPage.ts'

/* Handles on the drawings of the stage: what is pulled is what the row holds, by mouse, finger, keys and slider within. */

/** A target for a finger [px], and from centre to centre. */
const TARGET = 44
const APART = 46
/** How far a hand pulls [px]: at 1.5 px a step or more it is twenty steps at least. */
const PULLED = 30

interface Handled {
  id: string
  handle: { input: string; view: string; axis: 'x' | 'y' }
}
const figures = await Promise.all(
  calculatorIds.map(async (id) => ({
    id,
    Figure: (await loadFigure(id)) as Staged<LooseFigureProps>,
  })),
)
const handled: Handled[] = figures.flatMap(({ id, Figure }) =>
  (Figure.handles ?? []).map((handle) => ({ id, handle })),
)

let site: Site
let page: Page
let finger: CDPSession
beforeAll(async () => {
  site = await openSite()
  const context = await site.browser.newContext({
    viewport: { width: 1280, height: 900 },
    hasTouch: true,
  })
  page = await context.newPage()
  page.setDefaultTimeout(15_000)
  finger = await context.newCDPSession(page)
})
afterAll(() => site.close())

const hands = (): Locator => page.locator('.hand')
const handOf = ({ handle }: Handled): Locator => page.locator(`[data-handle="${handle.input}"]`)
const rowOf = ({ handle }: Handled): Promise<string> =>
  page.locator(`[data-field="${handle.input}"] input[type="text"]`).inputValue()
const within = (each: Handled): Promise<string> =>
  handOf(each).locator('input[type="range"]').inputValue()
/** What the row and the handle hold, which must be one number. */
async function held(each: Handled): Promise<number> {
  const [row, hand] = [await rowOf(each), await within(each)]
  expect(Number(hand), `${each.id}: handle and row`).toBe(Number(row))
  return Number(row)
}
async function middleOf(place: Locator): Promise<{ x: number; y: number }> {
  const { x, y, width, height } = (await place.boundingBox())!
  return { x: x + width / 2, y: y + height / 2 }
}
const ahead = ({ handle }: Handled, { x, y }: { x: number; y: number }, by: number) =>
  handle.axis === 'x' ? { x: x + by, y } : { x, y: y + by }
const undo = async (): Promise<void> => page.getByRole('button', { name: 'Undo' }).click()

async function open(id: string): Promise<void> {
  await page.goto(`${site.origin}/calculators/${id}/`, { waitUntil: 'load' })
  await alive(page)
  await hands().first().waitFor()
}

async function mouse(each: Handled, by: number): Promise<void> {
  const from = await middleOf(handOf(each))
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  const to = ahead(each, from, by)
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2)
  await page.mouse.move(to.x, to.y)
  await page.mouse.up()
}

async function touch(each: Handled, by: number): Promise<void> {
  const from = await middleOf(handOf(each))
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: { x: number; y: number }[]) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: at })
  await send('touchStart', [from])
  // a slanted pull: the page must not take it for a scroll
  const slant = ahead(
    { ...each, handle: { ...each.handle, axis: each.handle.axis === 'x' ? 'y' : 'x' } },
    from,
    -60,
  )
  for (const share of [0.3, 0.6, 1]) {
    const along = ahead(each, from, by * share)
    await send('touchMove', [
      each.handle.axis === 'x'
        ? { x: along.x, y: from.y + (slant.y - from.y) * share }
        : { x: from.x + (slant.x - from.x) * share, y: along.y },
    ])
  }
  await send('touchEnd', [])
}

test('at least six calculators have handles', () => {
  expect(new Set(handled.map(({ id }) => id)).size).toBeGreaterThanOrEqual(6)
})

describe.each([...new Set(handled.map(({ id }) => id))])('the handles of %s', (id) => {
  const all = handled.filter((each) => each.id === id)

  test('are large enough, on the drawing and apart', async () => {
    await open(id)
    const draw = (await page.locator('.draw').boundingBox())!
    const places: { x: number; y: number }[] = []
    for (const each of all) {
      const box = (await handOf(each).boundingBox())!
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(TARGET)
      expect(box.x).toBeGreaterThanOrEqual(draw.x)
      expect(box.y).toBeGreaterThanOrEqual(draw.y)
      expect(box.x + box.width).toBeLessThanOrEqual(draw.x + draw.width)
      expect(box.y + box.height).toBeLessThanOrEqual(draw.y + draw.height)
      places.push(await middleOf(handOf(each)))
    }
    for (const [index, a] of places.entries())
      for (const b of places.slice(index + 1))
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(APART)
  })

  test('follow mouse, finger and keys, and one pull is one step of undo', async () => {
    for (const each of all) {
      const start = await held(each)
      await mouse(each, -PULLED)
      const pulled = await held(each)
      expect(pulled, `${id}: pulled by the mouse`).not.toBe(start)
      await undo()
      expect(await held(each)).toBe(start)
      const scrolled = await page.evaluate(() => scrollY)
      await touch(each, -PULLED)
      expect(await held(each), `${id}: pulled by a finger`).toBe(pulled)
      expect(await page.evaluate(() => scrollY)).toBe(scrolled)
      await undo()
      const range = handOf(each).locator('input[type="range"]')
      const [low, high, step] = await range.evaluate((input: HTMLInputElement) =>
        [input.min, input.max, input.step].map(Number),
      )
      await range.focus()
      await range.press('ArrowRight')
      expect(await held(each)).toBeCloseTo(start + step!, 9)
      await range.press('ArrowLeft')
      expect(await held(each)).toBe(start)
      expect(await range.getAttribute('aria-label')).toMatch(/, on the drawing$/)
      expect(await range.getAttribute('aria-valuetext')).toMatch(/\d.* \S/)
      expect([low! < start, start < high!]).toEqual([true, true])
    }
  })
})

describe('at the ends of a handle', () => {
  test('Home and End take it there, and the row with it', async () => {
    const each = handled.find(({ id }) => id === 'braking-dive')!
    await open('braking-dive')
    const range = handOf(each).locator('input[type="range"]')
    await range.press('End')
    expect(await held(each)).toBe(Number(await range.getAttribute('max')))
    await range.press('Home')
    expect(await held(each)).toBe(Number(await range.getAttribute('min')))
  })

  test('on a phone a finger on it does not scroll the page; on paper there is none', async () => {
    const each = handled.find(({ id }) => id === 'steering-modes')!
    await page.setViewportSize({ width: 360, height: 740 })
    await open('steering-modes')
    const start = await held(each)
    await touch(each, -PULLED)
    expect(await held(each)).not.toBe(start)
    expect(await page.evaluate(() => scrollY)).toBe(0)
    await page.emulateMedia({ media: 'print' })
    expect(await hands().first().isVisible()).toBe(false)
    await page.emulateMedia({ media: null })
  })
})
