import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'
import { fitLettering, LETTERING } from '../../src/drawing/fitLettering.ts'
import { calculatorFigures, stillFigures } from './figureStates.ts'
import type { Drawn, StagedDrawing } from './figureStates.ts'
import { faultsOfLettering } from './textLayout.ts'

/** Least height of lettering [CSS px]: 12 on screen; on paper 9, which is 6.75 points. */
const ON_SCREEN = 12
const PRINTED = 9
/** Screens: a phone, where the stage is lowest, and a desk. */
const PHONE = { width: 360, height: 740 }
const DESK = { width: 1280, height: 800 }
/** Width of an A4 page between margins of 12 mm, at 96 px an inch. */
const A4 = { width: 703, height: 900 }

let site: Site
/** Pages are opened once; drawings are changed in place, and so is the screen. */
const pages = new Map<string, Page>()
let drawings: readonly StagedDrawing[]
beforeAll(async () => {
  site = await openSite()
  drawings = await calculatorFigures()
})
afterAll(() => site.close())

/** What is wrong with lettering, and how a stage sizes it: given to a page once, and called there for one drawing after the other. */
const MEASURES = `globalThis.measures = { faultsOfLettering: ${String(faultsOfLettering)}, fitLettering: ${String(fitLettering)} }`
declare const measures: {
  faultsOfLettering: typeof faultsOfLettering
  fitLettering: typeof fitLettering
}

/** A page of the site with its styles and fonts and without its scripts. */
async function pageAt(address: string): Promise<Page> {
  const known = pages.get(address)
  if (known) return known
  const page = await site.browser.newPage({ viewport: PHONE })
  await page.route('**/*.js', (route) => route.abort())
  await page.goto(site.origin + address, { waitUntil: 'load' })
  await page.evaluate(MEASURES)
  await page.evaluate(() =>
    Promise.all(
      [400, 700].map((weight) =>
        document.fonts.load(`${weight} 16px "Atkinson Hyperlegible Next"`),
      ),
    ),
  )
  pages.set(address, page)
  return page
}

/** Lays each view of the calculators' drawings out in a stage, and tells what is wrong with its lettering. On a desk all views of a figure stand in the stage at once. */
async function faultsInStage(screen: typeof PHONE): Promise<string[]> {
  const page = await pageAt('/calculators/trail/')
  await page.setViewportSize(screen)
  const desk = screen === DESK
  return page.evaluate(
    ({ all, least, letters, together }) => {
      const stage = document.querySelector<HTMLElement>('.draw')!
      return all.flatMap(({ name, markup, views }) => {
        stage.dataset['views'] = String(views.length)
        stage.innerHTML = markup
        const fronts = together ? [null] : views
        return fronts.flatMap((front) => {
          for (const view of stage.querySelectorAll<HTMLElement>('.view'))
            view.classList.toggle('front', front === null || view.dataset['view'] === front)
          // a stage sizes the lettering by the drawing's place, by the same function
          measures.fitLettering(stage, letters)
          return measures
            .faultsOfLettering(stage, least)
            .map((fault) => `${name}, ${front ?? 'all'}: ${fault}`)
        })
      })
    },
    {
      all: drawings,
      least: ON_SCREEN,
      letters: LETTERING,
      together: desk,
    },
  )
}

/** Lays stills out where a page has its own. */
async function faultsInStills(
  stills: readonly Drawn[],
  address: string,
  screen: typeof PHONE,
  print = false,
): Promise<string[]> {
  const page = await pageAt(address)
  await page.setViewportSize(screen)
  await page.emulateMedia({ media: print ? 'print' : 'screen' })
  return page.evaluate(
    ({ stills, least }) => {
      const still = document.querySelector('.still')!
      return stills.flatMap(({ name, markup }) => {
        still.innerHTML = markup
        return measures.faultsOfLettering(still, least).map((fault) => `${name}: ${fault}`)
      })
    },
    { stills, least: print ? PRINTED : ON_SCREEN },
  )
}

const screens = [PHONE, DESK] as const

describe('lettering in drawings', () => {
  test.each(screens)(
    'of calculators is at least 12 px high, apart and inside the frame at $width px: as it opens, at its least and at its most',
    async (screen) => {
      expect(await faultsInStage(screen)).toEqual([])
    },
    // some seconds alone; a machine that runs much else besides takes longer
    120_000,
  )
  test.each(screens)(
    'of stills is at least 12 px high, apart and inside the frame at $width px, in a procedure and in a chapter',
    async (screen) => {
      const stills = await stillFigures()
      for (const address of ['/procedures/support-the-front/', '/chapters/inside-the-fork/'])
        expect(await faultsInStills(stills, address, screen), address).toEqual([])
    },
  )
  test('of stills is apart and inside the frame on a printed procedure', async () => {
    const stills = (await stillFigures()).map(({ name, markup }) => ({
      name,
      markup: `${markup}<p class="caption">A caption beside it.</p>`,
    }))
    expect(await faultsInStills(stills, '/procedures/support-the-front/', A4, true)).toEqual([])
  })
})
