/**
 * Whether the picture stays in sight while a control moves, on the built site: `npm run sight`, or with addresses to try only these.
 * Opens every calculator and every chapter's card at 360 × 740 and 1280 × 800, brings each control to where a thumb has it, takes it and moves it, and
 * tells for how many the whole figure and the strip are in sight and nothing covers the control. Then, at 200 % zoom, whether the stage has come unpinned.
 * Exits with 1 when a figure is out of sight for more than one control in twenty on the phone or for any on the wide screen, when a strip is out of sight or a control covered.
 */
import type { Page } from 'playwright-core'
import { calculatorIds } from '../../src/calculators/index.ts'
import { openSite } from '../site/browser.ts'
import { openCard, sightOf } from '../site/sight.ts'
import type { Sight } from '../site/sight.ts'
import { builtPages } from '../site/pages.ts'

const VIEWS = {
  phone: { width: 360, height: 740 },
  wide: { width: 1280, height: 800 },
  // 360 × 740 and 1280 × 800 at 200 %
  'phone, 200 %': { width: 180, height: 370 },
  'wide, 200 %': { width: 640, height: 400 },
}
const AIM: Record<string, number> = { phone: 0.95, wide: 1 }

const site = await openSite()
const wanted = process.argv.slice(2)
const addresses = [
  '/',
  ...calculatorIds.map((id) => `/calculators/${id}/`),
  ...builtPages().filter((address) => /^\/chapters\/./.test(address)),
  ...calculatorIds.map((id) => `/embed/${id}/`),
].filter((address) => wanted.length === 0 || wanted.some((part) => address.includes(part)))

async function look(page: Page, address: string): Promise<Sight[]> {
  await page.goto(site.origin + address)
  return (await openCard(page)) ? sightOf(page) : []
}

const share = (all: readonly Sight[], holds: (sight: Sight) => boolean): number =>
  all.length === 0 ? 1 : all.filter(holds).length / all.length

let failed = false
for (const [name, viewport] of Object.entries(VIEWS)) {
  const page = await site.browser.newPage({ viewport, hasTouch: viewport.width < 700 })
  const all: Sight[] = []
  for (const address of addresses) {
    const seen = await look(page, address)
    all.push(...seen)
    const [figures, strips, clear] = [
      seen.filter(({ figure }) => figure).length,
      seen.filter(({ strip }) => strip).length,
      seen.filter(({ covered }) => !covered).length,
    ]
    if (seen.length > 0)
      console.log(
        `${name}  ${address.padEnd(38)} ${seen.length} controls: figure whole ${figures}, strip ${strips}, uncovered ${clear}${seen[0]!.pinned ? '' : ', not pinned'}`,
      )
    for (const { control, figure, strip, covered } of seen)
      if (name in AIM && (!figure || !strip || covered))
        console.log(
          `      ${control}:${figure ? '' : ' figure cut'}${strip ? '' : ' strip cut'}${covered ? ' covered' : ''}`,
        )
  }
  const [figure, strip, clear] = [
    share(all, (sight) => sight.figure),
    share(all, (sight) => sight.strip),
    share(all, (sight) => !sight.covered),
  ]
  const percent = (part: number): string => `${(part * 100).toFixed(1)} %`
  console.log(
    `${name}: ${all.length} controls, figure wholly in sight for ${percent(figure)}, strip for ${percent(strip)}, uncovered ${percent(clear)}`,
  )
  if (name in AIM) failed ||= figure < AIM[name]! || strip < 1 || clear < 1
  else failed ||= all.some(({ pinned, covered }) => pinned || covered)
  await page.close()
}
await site.close()
process.exitCode = failed ? 1 : 0
