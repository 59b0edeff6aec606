/**
 * From a slider's input to the frame that shows it, on the built site, at a processor four times slower: `npm run slider`, or with ids to try only these.
 * An input is given at the start of each frame, as browsers deliver a drag; the time ends when the next frame starts, which is when the one with the
 * change is on screen. Prints median and p95 [ms] on a phone and on a wide screen, the slider in view: those of the least disturbed of three rounds, since
 * what else the machine does only adds. Exits with 1 when one is over its aim.
 */
import type { Page } from 'playwright-core'
import { calculatorIds } from '../../src/calculators/index.ts'
import { openSite } from '../site/browser.ts'

const AIM = { median: 17, p95: 32 }
const MOVES = 120
const ROUNDS = 3
/** The first moves are left out: the browser still compiles. */
const WARM_UP = 10
const VIEWS = { phone: { width: 412, height: 823 }, wide: { width: 1280, height: 900 } }
/** A slider; the two calculators that have none are moved by a number's box. */
const FIELDS = ['input[type="range"]', 'input[inputmode="decimal"]'].map(
  (field) => `form[data-calculator] ${field}`,
)

/** Moves the first field to and fro about its start, and times each move [ms]. Values that the calculator refuses would draw nothing: it stays near the start. */
const moveSlider = (page: Page): Promise<number[]> =>
  page.evaluate(
    async ({ fields, moves }) => {
      const slider = fields
        .map((field) => document.querySelector<HTMLInputElement>(field))
        .find((field) => field !== null)!
      slider.scrollIntoView({ block: 'center' })
      const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!
      const start = Number(slider.value)
      const isRange = slider.type === 'range'
      const [low, high] = isRange ? [Number(slider.min), Number(slider.max)] : [0, 2 * start]
      const reach = Math.max(isRange ? Number(slider.step) * 5 : 0, (high - low) * 0.05)
      const times: number[] = []
      await new Promise(requestAnimationFrame)
      for (let move = 0; move < moves; move++) {
        setValue.call(slider, String(Math.min(high, Math.max(low, start + reach * Math.sin(move)))))
        const given = performance.now()
        slider.dispatchEvent(new Event('input', { bubbles: true }))
        await new Promise(requestAnimationFrame)
        times.push(performance.now() - given)
      }
      return times
    },
    { fields: FIELDS, moves: MOVES + WARM_UP },
  )

const site = await openSite()
const wanted = process.argv.slice(2)
let over = 0
for (const [view, viewport] of Object.entries(VIEWS)) {
  const context = await site.browser.newContext({ viewport })
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  for (const id of calculatorIds.filter((each) => wanted.length === 0 || wanted.includes(each))) {
    await page.goto(`${site.origin}/calculators/${id}/`)
    await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
    const rounds: { median: number; p95: number }[] = []
    for (let round = 0; round < ROUNDS; round++) {
      const times = (await moveSlider(page)).slice(WARM_UP).sort((a, b) => a - b)
      rounds.push({
        median: times[Math.floor(times.length * 0.5)]!,
        p95: times[Math.floor(times.length * 0.95)]!,
      })
    }
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
    const { median, p95 } = rounds.sort((a, b) => a.median + a.p95 - b.median - b.p95)[0]!
    const refused = await page.locator('form[data-calculator] .no-picture').count()
    if (median > AIM.median || p95 > AIM.p95) over++
    console.log(
      `${view} ${id.padEnd(20)} median ${median.toFixed(1)} ms, p95 ${p95.toFixed(1)} ms${refused > 0 ? ', refused at its end' : ''}`,
    )
  }
  await context.close()
}
console.log(`${over} over ${AIM.median} ms at the median or ${AIM.p95} ms at p95`)
await site.close()
process.exitCode = over > 0 ? 1 : 0
