import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { procedures } from '../content/entries.ts'

/* Every procedure on both papers: what a step needs stands on the step's page. Text is looked up in the PDF itself. */

type Paper = 'A4' | 'Letter'

let site: Site
let page: Page
beforeAll(async () => {
  site = await openSite()
  page = await site.browser.newPage()
})
afterAll(() => site.close())

/** The words of each page, without spaces: a PDF breaks words where it likes. */
async function pagesOf(pdf: Uint8Array): Promise<string[]> {
  const task = getDocument({ data: pdf, useSystemFonts: true, verbosity: 0 })
  const document = await task.promise
  const pages: string[] = []
  for (let number = 1; number <= document.numPages; number++) {
    const content = await (await document.getPage(number)).getTextContent()
    pages.push(squeeze(content.items.map((item) => ('str' in item ? item.str : '')).join('')))
  }
  await task.destroy()
  return pages
}

const squeeze = (text: string): string => text.replaceAll(/[\s\u00ad]+/g, '')

interface Printed {
  step: string
  number: number
  /** pieces of text that must stand on one page, in the order in which they are printed */
  pieces: string[]
}

/** A procedure's steps as they stand on its page, and its pages on each paper. The page is loaded once. */
async function printed(
  page: Page,
  address: string,
): Promise<{ steps: Printed[]; papers: Record<Paper, string[]> }> {
  await page.emulateMedia({ media: 'screen' })
  await page.goto(site.origin + address, { waitUntil: 'load', timeout: 30_000 })
  await page.emulateMedia({ media: 'print' })
  const steps = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.step')].map((step, index) => ({
      step: step.id,
      number: index + 1,
      pieces: [
        ...step.querySelectorAll<HTMLElement>(
          '.caution p, .what, .detail:not(.back-to), .reading-label, .still .caption',
        ),
      ]
        .filter((element) => element.checkVisibility())
        .map(
          // a label's unit follows a mark that only the style sheet writes
          (element) =>
            (element.matches('.reading-label')
              ? element.firstChild?.textContent
              : element.textContent) ?? '',
        ),
    })),
  )
  const print = async (format: Paper): Promise<string[]> =>
    pagesOf(new Uint8Array(await page.pdf({ format, printBackground: false })))
  return {
    papers: { A4: await print('A4'), Letter: await print('Letter') },
    steps: steps.map((each) => ({
      ...each,
      pieces: each.pieces.map(squeeze).filter((piece) => piece !== ''),
    })),
  }
}

/** Steps of which no page holds every piece, cautions first. */
function torn(pages: readonly string[], steps: readonly Printed[]): string[] {
  return steps
    .filter(({ pieces }) => !pages.some((page) => holdsInOrder(page, pieces)))
    .map(({ step, number }) => `step ${number}, ${step}`)
}

function holdsInOrder(page: string, pieces: readonly string[]): boolean {
  let from = 0
  return pieces.every((piece) => {
    const at = page.indexOf(piece, from)
    from = at + piece.length
    return at >= 0
  })
}

test.each(procedures().map((procedure) => [procedure.id, procedure] as const))(
  '%s keeps every step whole and with its cautions on A4 and on Letter',
  async (id, procedure) => {
    const { steps, papers } = await printed(page, `/procedures/${id}/`)
    expect(steps.map(({ step }) => step)).toEqual(procedure.steps.map((step) => step.id))
    for (const [paper, pages] of Object.entries(papers)) {
      expect(torn(pages, steps), paper).toEqual([])
      expect(pages[0], paper).toMatch(/Editionof\d{4}-\d\d-\d\d\.Bike:Date:/)
      // a page with next to nothing on it wastes paper and hides a runaway break
      expect(
        pages.filter((text) => text.length < 200),
        paper,
      ).toEqual([])
      expect(pages[0], paper).toContain('Torquesandoilquantitiesareinthemaker’smanual')
    }
  },
)

test('torn finds a step whose caution stands on the page before', () => {
  expect(
    torn(
      ['WARNINGBikecanfall.', 'Raisethefront.'],
      [{ step: 'raise', number: 1, pieces: ['WARNINGBikecanfall.', 'Raisethefront.'] }],
    ),
  ).toEqual(['step 1, raise'])
})
