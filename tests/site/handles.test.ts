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
const views = new Map(figures.map(({ id, Figure }) => [id, Figure.views ?? []]))
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

async function open(id: string, values = '', pulls = true): Promise<void> {
  await page.goto(`${site.origin}/calculators/${id}/${values && `?v=1&${values}`}`, {
    waitUntil: 'load',
  })
  await alive(page)
  const pulled = views
    .get(id)!
    .findIndex((view) => handled.some((each) => each.id === id && each.handle.view === view.id))
  const tab = page.locator('.tabs .tab').nth(pulled)
  // where all views stand at once there are no tabs for them
  if (await tab.isVisible()) await tab.click()
  if (pulls) await hands().first().waitFor()
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

/** Lettering of the drawings in sight that a grip or the line that says what to do stands on, by more than a pixel. */
const coveredLettering = (): Promise<string[]> =>
  page.evaluate(() => {
    const over = [...document.querySelectorAll('.hand .grip, .hands .pull')].map((each) => ({
      name: each.className,
      box: each.getBoundingClientRect(),
    }))
    return [...document.querySelectorAll('.draw .view text')].flatMap((text) => {
      const { left, right, top, bottom } = text.getBoundingClientRect()
      // the room above capitals and below descenders holds no ink
      const slack = right - left < bottom - top ? 1 : (bottom - top) * 0.16
      return over
        .filter(
          ({ box }) =>
            box.right > left + 1 &&
            box.left < right - 1 &&
            box.bottom > top + slack &&
            box.top < bottom - slack,
        )
        .map(({ name }) => `${name} on “${text.textContent}”`)
    })
  })

/** Nothing to pull: what they ask has no place on a drawing, is too small a part of one, or is a list, a choice or a name. */
const WITHOUT = {
  'coil-rate': 'a wire’s width and a spring of 350 mm do not go on one drawing',
  'spring-test': 'readings are rows of a table',
  'choose-rate': 'the drawing compares rates; what is asked is weights and readings',
  'progressive-spring': 'the axis of the chart ends where the spring does',
  'tyre-radius': 'a tyre is a marking, not a number',
  'wheel-loads': 'weights have no place that moves',
  'cg-height': 'the bike is drawn at a fifth of a pixel a millimetre',
  damping: 'the chart’s axes follow what is asked',
  'rear-rate': 'the charts show what comes out, not what is asked',
  'find-change': 'aims are asked, and ways are found',
}

test('every calculator has handles, or a reason to have none', () => {
  expect([...new Set(handled.map(({ id }) => id)), ...Object.keys(WITHOUT)].sort()).toEqual(
    [...calculatorIds].sort(),
  )
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

  test('cover no lettering, on a desk or on a phone', async () => {
    expect(await coveredLettering()).toEqual([])
    await page.setViewportSize({ width: 360, height: 740 })
    for (const view of new Set(all.map(({ handle }) => handle.view))) {
      const name = views.get(id)!.find((each) => each.id === view)!.name
      await page.locator('.tabs').getByRole('button', { name, exact: true }).click()
      await hands().first().waitFor()
      expect(await hands().count(), `${id}: ${view}`).toBe(
        all.filter(({ handle }) => handle.view === view).length,
      )
      expect(await coveredLettering()).toEqual([])
    }
    await page.setViewportSize({ width: 1280, height: 900 })
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

  test.each([
    ['trail', 'forkOffset=100&rake=15&frontRadius=200'],
    ['trail', 'forkOffset=-20&rake=40&frontRadius=420'],
    ['ride-height', 'by=tubes&amount=20'],
    ['ride-height', 'by=shock&amount=-20'],
  ])('%s with %s covers no lettering on a phone', async (id, values) => {
    await page.setViewportSize({ width: 360, height: 740 })
    await open(id, values, false)
    expect(await coveredLettering()).toEqual([])
    await page.setViewportSize({ width: 1280, height: 900 })
  })

  test('on a phone a finger on it does not scroll the page; on paper there is none', async () => {
    const each = handled.find(({ id }) => id === 'steering-modes')!
    await page.setViewportSize({ width: 360, height: 740 })
    await open('steering-modes')
    const start = await held(each)
    const scrolled = await page.evaluate(() => scrollY)
    await touch(each, -PULLED)
    expect(await held(each)).not.toBe(start)
    expect(await page.evaluate(() => scrollY)).toBe(scrolled)
    await page.emulateMedia({ media: 'print' })
    expect(await hands().first().isVisible()).toBe(false)
    await page.emulateMedia({ media: null })
  })
})
