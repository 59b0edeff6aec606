import { parseHTML } from 'linkedom'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Locator, Page } from 'playwright-core'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { accessible } from './accessible.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { alive, changeSomething, openCalculator, outputsOf, pictureOf } from './calculatorPage.ts'
import type { Opened } from './calculatorPage.ts'
import { builtText } from './pages.ts'
import { publish } from './published.ts'

/* Every calculator's own page. One page of the browser is loaded twice for each: plainly, and by the link that a change leaves. */

const WIDE = { width: 1280, height: 720 }
const PHONE = { width: 360, height: 740 }

let site: Site
let opened: Opened
beforeAll(async () => {
  site = await openSite()
  opened = await openCalculator(site, '/calculators/sag/', { viewport: WIDE }, publish)
})
afterAll(() => site.close())

/** Sheets of A4 that a page prints. */
async function sheetsOf(page: Page): Promise<number> {
  const pdf = await page.pdf({
    format: 'A4',
    margin: { top: '12mm', bottom: '12mm', left: '12mm', right: '12mm' },
  })
  return pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0
}

/** What should be seen on paper and has no height there; a field left blank, where nothing was asked for, has nothing to tell. */
function unseen(form: Locator): Promise<string[]> {
  return form
    .locator('output, .field input[type=text]:not(.link), .limits li')
    .evaluateAll((all) =>
      all
        .filter(
          (each) =>
            each.closest('.paste') === null &&
            !each.matches(':placeholder-shown') &&
            each.getBoundingClientRect().height === 0,
        )
        .map((each) => each.outerHTML),
    )
}

/** Targets below 44 px. */
function smallTargets(form: Locator): Promise<string[]> {
  return form
    .locator('button, input:not([type=hidden]):not([type=radio]), select, summary, .segments label')
    .evaluateAll((all) =>
      all
        .filter((each) => each.checkVisibility())
        .flatMap((each) => {
          // a tick box is pressed by its label too
          const target =
            (each as HTMLInputElement).type === 'checkbox' ? (each.closest('label') ?? each) : each
          const { height } = target.getBoundingClientRect()
          return height < 43.5
            ? [`${each.tagName} ${each.textContent?.slice(0, 30)} ${height.toFixed(1)}`]
            : []
        }),
    )
}

/** Lettering below 12 px. */
function tinyLettering(form: Locator): Promise<string[]> {
  return form.locator('.draw svg text').evaluateAll((all) =>
    all
      .filter((each) => each.checkVisibility() && each.textContent?.trim())
      .flatMap((each) => {
        const svg = (each as SVGTextElement).ownerSVGElement!
        const scale =
          Math.abs((each as SVGTextElement).getScreenCTM()!.d) ||
          svg.getBoundingClientRect().width / svg.viewBox.baseVal.width
        const size = Number.parseFloat(getComputedStyle(each).fontSize) * scale
        return size < 11.9 ? [`“${each.textContent}” ${size.toFixed(1)} px`] : []
      }),
  )
}

/** Names of buttons and folds that are empty or used twice. */
async function unclearNames(page: Page): Promise<string[]> {
  const names = (await accessible(page))
    .filter(({ role }) => role === 'button' || role === 'DisclosureTriangle')
    .map(({ name }) => name)
  expect(names.length).toBeGreaterThan(8)
  return names.filter((name, index) => name === '' || names.indexOf(name) !== index)
}

describe.each(calculatorIds.map((id) => [id] as const))('%s', (id) => {
  beforeAll(async () => {
    await opened.page.goto(`${site.origin}/calculators/${id}/`)
    await alive(opened.page)
  })

  test('without JavaScript its page has its picture, results, reading and limits', () => {
    const { document } = parseHTML(builtText(`/calculators/${id}/`))
    const form = document.querySelector('form[data-calculator]')!
    expect(form.querySelectorAll('svg').length).toBeGreaterThan(0)
    expect(form.querySelector('output')!.textContent).toMatch(/\S/)
    expect(form.querySelector('.remark.reading')!.textContent).toMatch(/[.:]$/)
    expect(form.querySelectorAll('.limits li').length).toBeGreaterThan(1)
  })

  test('prints on one sheet of A4: picture, all values and results, limits, and the code of its link', async () => {
    const { page, form } = opened
    // the browser announces a print, and the card draws its code
    await page.waitForFunction(() => {
      dispatchEvent(new Event('beforeprint'))
      return document.querySelector('.paper-code svg') !== null
    })
    await page.emulateMedia({ media: 'print' })
    for (const each of ['.draw svg', '.limits li', '.paper-code svg'])
      expect(await form.locator(each).first().isVisible(), each).toBe(true)
    // what is folded on screen is not on paper
    expect(await unseen(form)).toEqual([])
    expect(await page.locator('header.site-head').isVisible()).toBe(false)
    const sheets = await sheetsOf(page)
    await page.emulateMedia({ media: 'screen' })
    expect(sheets).toBe(1)
  })

  test('at 360 px its targets are at least 44 px high and its lettering at least 12 px', async () => {
    const { page, form } = opened
    await page.setViewportSize(PHONE)
    // a stage sizes its lettering after its place has changed
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))))
    const [small, tiny] = [await smallTargets(form), await tinyLettering(form)]
    await page.setViewportSize(WIDE)
    expect(small).toEqual([])
    expect(tiny).toEqual([])
  })

  test('an input changed by its button changes result, picture and link, and the link brings it back', async () => {
    const { page, form } = opened
    const [before, drawn] = [await outputsOf(form), await pictureOf(form)]
    const [name, value] = await changeSomething(loadCalculator(id), form)
    // the address follows once the values stand still: then results and picture are those of the last change
    await page.waitForFunction(
      ([key, wanted]) =>
        new URLSearchParams(location.search).get(key)?.split(/[:;]/).includes(wanted),
      [name, value] as const,
    )
    const after = await outputsOf(form)
    expect(after).not.toBe(before)
    expect(await pictureOf(form)).not.toBe(drawn)
    const link = page.url()
    await page.goto('about:blank')
    await page.goto(link)
    await page.waitForFunction(
      (wanted) =>
        [...document.querySelectorAll('form[data-calculator] output')]
          .map((output) => `${(output as HTMLOutputElement).name}=${output.textContent}`)
          .join('\n') === wanted,
      after,
    )
  })

  test('no two of its buttons are called the same', async () => {
    const { page, form } = opened
    await form.getByRole('button', { name: /Hold as/ }).click()
    await form
      .locator('details')
      .evaluateAll((all) => all.forEach((each) => ((each as HTMLDetailsElement).open = true)))
    expect(await unclearNames(page)).toEqual([])
  })
})

test('without JavaScript a calculator’s picture, results and reading are in sight', async () => {
  const context = await site.browser.newContext({ javaScriptEnabled: false })
  const page = await context.newPage()
  await page.goto(`${site.origin}/calculators/sag/`)
  for (const part of ['svg', 'output', '.remark.reading'])
    expect(await page.locator(`form[data-calculator] ${part}`).first().isVisible(), part).toBe(true)
  await context.close()
})
