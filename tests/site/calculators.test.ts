import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Locator, Page } from 'playwright-core'
import type { Definition } from '../../src/calculators/define.ts'
import { defaultsOf, isAsked } from '../../src/calculators/evaluate.ts'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

async function openCalculator(
  address: string,
  options: Parameters<Site['browser']['newContext']>[0] = {},
): Promise<{ page: Page; form: Locator; close(): Promise<void> }> {
  const context = await site.browser.newContext(options)
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  await page.goto(site.origin + address, { waitUntil: 'load' })
  if (options.javaScriptEnabled !== false) await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
  return { page, form: page.locator('form[data-calculator]'), close: () => context.close() }
}

/** A first quantity that shows at first, to move by a step. */
function firstQuantity(definition: Definition): string | null {
  const given = defaultsOf(definition)
  const found = Object.entries(definition.inputs).find(
    ([, input]) => input.kind === 'quantity' && !input.more && isAsked(input, given) && input.default !== undefined,
  )
  return found?.[0] ?? null
}

/** Changes the first quantity by three presses of its button, or a text or cell; returns the input's name and what it now holds. */
async function changeSomething(definition: Definition, form: Locator): Promise<[name: string, value: string]> {
  const name = firstQuantity(definition)
  if (name !== null) {
    const button = form.locator(`[data-field="${name}"] button.step`).last()
    for (let press = 0; press < 3; press++) await button.click()
    return [name, await form.locator(`input[name="${name}"]`).inputValue()]
  }
  const [id, input] = Object.entries(definition.inputs).findLast(([, each]) => each.kind === 'text' || each.kind === 'table')!
  const field = form.locator(`[data-field="${id}"] input[type="text"]`).first()
  const value = await field.inputValue()
  await field.fill(input.kind === 'text' ? value.replace(/^\d+/, (digits) => String(Number(digits) + 10)) : String(Number(value) + 1))
  return [id, await field.inputValue()]
}

const outputsOf = (form: Locator): Promise<string> =>
  form.locator('output').evaluateAll((all) => all.map((output) => `${(output as HTMLOutputElement).name}=${output.textContent}`).join('\n'))
/** Texts and the numbers of the drawing: a moved line counts as much as another label. */
const pictureOf = (form: Locator): Promise<string> => form.locator('.draw').evaluate((draw) => draw.innerHTML)

describe.each(calculatorIds.map((id) => [id] as const))('%s', (id) => {
  test('an input changed by its button changes result, picture and link, and the link brings it back', async () => {
    const definition = await loadCalculator(id)
    const { page, form, close } = await openCalculator(`/calculators/${id}/`)
    const [before, drawn] = [await outputsOf(form), await pictureOf(form)]
    const [name, value] = await changeSomething(definition, form)
    // the address follows once the values stand still: then results and picture are those of the last change
    await page.waitForFunction(([key, wanted]) => new URLSearchParams(location.search).get(key)?.split(/[:;]/).includes(wanted), [name, value] as const)
    const after = await outputsOf(form)
    expect(after).not.toBe(before)
    expect(await pictureOf(form)).not.toBe(drawn)
    const fresh = await openCalculator(`/calculators/${id}/${new URL(page.url()).search}`)
    await fresh.page.waitForFunction(
      (wanted) =>
        [...document.querySelectorAll('form[data-calculator] output')]
          .map((output) => `${(output as HTMLOutputElement).name}=${output.textContent}`)
          .join('\n') === wanted,
      after,
    )
    await fresh.close()
    await close()
  }, 60_000)

  test('without JavaScript it shows its picture, results, reading and limits', async () => {
    const { form, close } = await openCalculator(`/calculators/${id}/`, { javaScriptEnabled: false })
    expect(await form.locator('svg').count()).toBeGreaterThan(0)
    expect(await form.locator('output').first().textContent()).toMatch(/\S/)
    expect(await form.locator('.remark.reading').first().textContent()).toMatch(/[.:]$/)
    expect(await form.locator('.limits li').count()).toBeGreaterThan(1)
    await close()
  }, 30_000)

  test('at 360 px its targets are at least 44 px high and its lettering at least 12 px', async () => {
    const { page, form, close } = await openCalculator(`/calculators/${id}/`, { viewport: { width: 360, height: 740 } })
    const small = await form.locator('button, input:not([type=hidden]):not([type=radio]), select, summary, .segments label').evaluateAll((all) =>
      all
        .filter((each) => each.checkVisibility())
        .flatMap((each) => {
          // a tick box is pressed by its label too
          const target = (each as HTMLInputElement).type === 'checkbox' ? (each.closest('label') ?? each) : each
          const { height } = target.getBoundingClientRect()
          return height < 43.5 ? [`${each.tagName} ${each.textContent?.slice(0, 30)} ${height.toFixed(1)}`] : []
        }),
    )
    expect(small).toEqual([])
    const tiny = await page.locator('.draw svg text').evaluateAll((all) =>
      all
        .filter((each) => each.checkVisibility() && each.textContent?.trim())
        .flatMap((each) => {
          const svg = (each as SVGTextElement).ownerSVGElement!
          const scale = Math.abs((each as SVGTextElement).getScreenCTM()!.d) || svg.getBoundingClientRect().width / svg.viewBox.baseVal.width
          const size = Number.parseFloat(getComputedStyle(each).fontSize) * scale
          return size < 11.9 ? [`“${each.textContent}” ${size.toFixed(1)} px`] : []
        }),
    )
    expect(tiny).toEqual([])
    await close()
  }, 30_000)
})

describe('the calculator card', () => {
  test('takes 7,5 with a comma, keeps nonsense and says what to do', async () => {
    const { page, form, close } = await openCalculator('/calculators/preload-versus-rate/')
    const rate = form.locator('input[name="rate"]')
    await rate.fill('7,5')
    await page.waitForFunction(() => document.querySelector<HTMLOutputElement>('output[name="rateHere"]')?.textContent?.startsWith('15.0'))
    await rate.fill('stiff')
    await rate.blur()
    await page.waitForSelector('[data-field="rate"] .error')
    expect(await rate.inputValue()).toBe('stiff')
    expect(await form.locator('[data-field="rate"] .error').textContent()).toBe(
      'Spring rate, each leg: “stiff” is not a number. Write digits with one point or comma, as 7.5 or 7,5',
    )
    expect(await form.locator('output[name="rateHere"]').textContent()).toMatch(/^15\.0/)
    await rate.fill('1,234')
    await rate.blur()
    await page.waitForFunction(() => /two ways/.test(document.querySelector('[data-field="rate"] .error')?.textContent ?? ''))
    await rate.fill('400')
    await rate.blur()
    await page.waitForFunction(() => /must be between 3 and 20\sN\/mm/.test(document.querySelector('[data-field="rate"] .error')?.textContent ?? ''))
    await close()
  }, 60_000)

  test('moves by keyboard: arrows in the box and on the slider', async () => {
    const { page, form, close } = await openCalculator('/calculators/preload-versus-rate/')
    const preload = form.locator('input[name="preload"]')
    await preload.focus()
    await page.keyboard.press('ArrowUp')
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('input[name="preload"]')?.value === '26')
    const slider = form.locator('[data-field="preload"] input[type="range"]')
    await slider.focus()
    await page.keyboard.press('End')
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('input[name="preload"]')?.value === '60')
    expect(await slider.getAttribute('aria-valuetext')).toBe('60 millimetres')
    await close()
  }, 60_000)

  test('moves by touch on the slider', async () => {
    const { page, form, close } = await openCalculator('/calculators/preload-versus-rate/', {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    })
    const slider = form.locator('[data-field="preload"] input[type="range"]')
    await slider.scrollIntoViewIfNeeded()
    const box = (await slider.boundingBox())!
    await page.touchscreen.tap(box.x + box.width * 0.9, box.y + box.height / 2)
    await page.waitForFunction(() => Number(document.querySelector<HTMLInputElement>('input[name="preload"]')?.value) > 45)
    await close()
  }, 60_000)

  test('switches units in one place, keeps them, and does not drift', async () => {
    const { page, form, close } = await openCalculator('/calculators/preload-versus-rate/?v=1&rate=8.5&preload=22')
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('input[name="rate"]')?.value === '8.5')
    const si = await form.locator('output[name="travelUsed"]').getAttribute('data-si')
    await page.locator('[data-settings] summary').click()
    for (let round = 0; round < 3; round++) {
      await page.locator('[data-system="imperial"]').click()
      await page.waitForFunction(() => /in$/.test(document.querySelector('output[name="travelUsed"]')?.textContent ?? ''))
      await page.locator('[data-system="metric"]').click()
      await page.waitForFunction(() => /mm$/.test(document.querySelector('output[name="travelUsed"]')?.textContent ?? ''))
    }
    expect(await form.locator('output[name="travelUsed"]').getAttribute('data-si')).toBe(si)
    expect(await form.locator('input[name="rate"]').inputValue()).toBe('8.5')
    await page.locator('[data-system="imperial"]').click()
    await page.goto(`${site.origin}/calculators/sag/`)
    await page.waitForFunction(() => / in /.test(`${document.querySelector('output[name="sag"]')?.textContent ?? ''} `.replaceAll('\u00a0', ' ')))
    await close()
  }, 60_000)

  test('reads the new numbers in words, and says so when the words do not come', async () => {
    const reading = (where: Page, wanted: RegExp): Promise<unknown> =>
      where.waitForFunction((source) => new RegExp(source).test(document.querySelector('.remarks')?.textContent ?? ''), wanted.source)
    const { page, form, close } = await openCalculator('/calculators/sag/')
    await form.locator('input[name="settledUp"]').fill('115')
    await reading(page, /The bike settles about 36.5\smm down/)
    await close()
    const context = await site.browser.newContext()
    const lost = await context.newPage()
    await lost.route(/\.remarks\./, (route) => route.abort())
    await lost.goto(`${site.origin}/calculators/sag/`, { waitUntil: 'load' })
    await lost.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
    await reading(lost, /The bike settles about 35.0\smm down/)
    await lost.locator('input[name="settledUp"]').fill('115')
    await reading(lost, /could not be loaded. Load the page again/)
    await context.close()
  }, 60_000)

  test('what is out of sight or folded follows the numbers', async () => {
    const { page, form, close } = await openCalculator('/calculators/stance/', { viewport: { width: 360, height: 740 } })
    const rider = form.locator('input[name="rider"]')
    await rider.evaluate((field) => field.scrollIntoView({ block: 'center' }))
    const [drawn, rear] = [await pictureOf(form), await form.locator('output[name="rearLoad"]').getAttribute('data-si')]
    for (const kilograms of ['90', '100', '110']) await rider.fill(kilograms)
    await page.waitForFunction((before) => document.querySelector('output[name="rearLoad"]')?.getAttribute('data-si') !== before, rear)
    await page.waitForFunction((before) => document.querySelector('.draw')?.innerHTML !== before, drawn)
    await page.waitForFunction(() => location.search.includes('rider=110'))
    const fresh = await openCalculator(`/calculators/stance/${new URL(page.url()).search}`, { viewport: { width: 1280, height: 2400 } })
    await fresh.page.waitForFunction((wanted) => document.querySelector('.draw')?.textContent === wanted, await form.locator('.draw').textContent())
    expect(await outputsOf(form)).toBe(await outputsOf(fresh.form))
    await fresh.close()
    await close()
  }, 60_000)

  test('holds a before, shows the change, and the link carries both', async () => {
    const { page, form, close } = await openCalculator('/calculators/sag/')
    await form.getByRole('button', { name: 'Hold as “before”' }).click()
    await form.locator('input[name="settledUp"]').fill('122')
    await page.waitForSelector('td[data-change="sag"]')
    await page.waitForFunction(() => location.search.includes('before.settledUp='))
    const change = await form.locator('td[data-change="sag"]').textContent()
    const fresh = await openCalculator(`/calculators/sag/${new URL(page.url()).search}`)
    await fresh.page.waitForFunction((wanted) => document.querySelector('td[data-change="sag"]')?.textContent === wanted, change)
    await fresh.close()
    await close()
  }, 60_000)

  test('copies a link that opens the same values in a fresh profile, and draws it as a QR code', async () => {
    const { form, close } = await openCalculator('/calculators/trail/')
    const name = firstQuantity(await loadCalculator('trail'))!
    await form.locator(`[data-field="${name}"] button.step`).last().click()
    await form.getByRole('button', { name: 'Copy link' }).click()
    const href = await form.locator('input.link').inputValue()
    expect(href.startsWith(`${site.origin}/calculators/trail/?v=`)).toBe(true)
    const wanted = await outputsOf(form)
    const fresh = await openCalculator(href.slice(site.origin.length))
    await fresh.page.waitForFunction(
      (text) =>
        [...document.querySelectorAll('form[data-calculator] output')]
          .map((output) => `${(output as HTMLOutputElement).name}=${output.textContent}`)
          .join('\n') === text,
      wanted,
    )
    await fresh.close()
    await form.getByRole('button', { name: 'QR code' }).click()
    await form.locator('.qr svg').waitFor()
    const { data, width, height } = await form.locator('.qr svg').evaluate(async (svg) => {
      const image = new Image()
      image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(svg))}`
      await image.decode()
      const canvas = document.createElement('canvas')
      canvas.width = canvas.height = 600
      const context = canvas.getContext('2d')!
      context.drawImage(image, 0, 0, 600, 600)
      return { data: [...context.getImageData(0, 0, 600, 600).data], width: 600, height: 600 }
    })
    const { default: readCode } = await import('jsqr')
    expect(readCode(Uint8ClampedArray.from(data), width, height)?.data).toBe(href)
    await close()
  }, 90_000)

  test('prints each on one sheet of A4: picture, all values and results, limits, and the code of its link', async () => {
    const { page, close } = await openCalculator('/calculators/ride-height/')
    const pages: Record<string, number> = {}
    for (const id of calculatorIds) {
      await page.goto(`${site.origin}/calculators/${id}/`)
      await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
      await page.getByRole('button', { name: 'QR code' }).click()
      await page.locator('.qr svg').waitFor()
      await page.emulateMedia({ media: 'print' })
      const form = page.locator('form[data-calculator]')
      for (const each of ['.draw svg', '.limits li', '.qr svg']) expect(await form.locator(each).first().isVisible(), `${id}: ${each}`).toBe(true)
      // what is folded on screen is not on paper
      const unseen = await form
        .locator('output, .field input[type=text]:not(.link), .limits li')
        .evaluateAll((all) => all.filter((each) => each.closest('.paste') === null && each.getBoundingClientRect().height === 0).map((each) => each.outerHTML))
      expect(unseen, id).toEqual([])
      expect(await page.locator('header.site-head').isVisible(), id).toBe(false)
      const pdf = await page.pdf({ format: 'A4', margin: { top: '12mm', bottom: '12mm', left: '12mm', right: '12mm' } })
      pages[id] = pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0
      await page.emulateMedia({ media: 'screen' })
    }
    expect(Object.entries(pages).filter(([, count]) => count !== 1)).toEqual([])
    await close()
  }, 180_000)
})
