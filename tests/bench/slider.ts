/**
 * From an input of a slider or of a handle on the drawing to the frame that shows it, on the built site, at a processor four times slower: `npm run slider`,
 * or with ids to try only these. An input is given at the start of each frame, as browsers deliver a drag; the time ends when the next frame starts, which is
 * when the one with the change is on screen. Prints median and p95 [ms] on a phone and on a wide screen, those of the less disturbed of two rounds, since
 * what else the machine does only adds; and what script, style and layout took of the page's own thread for each input [ms], which a busy machine disturbs
 * less, with the load of the machine. Exits with 1 when one is over its aim.
 */
import { loadavg } from 'node:os'
import type { CDPSession, Locator, Page } from 'playwright-core'
import { calculatorIds } from '../../src/calculators/index.ts'
import { openSite } from '../site/browser.ts'

const AIM = { median: 17, p95: 25 }
const MOVES = 40
const ROUNDS = 2
/** The first moves are left out: the browser still compiles. */
const WARM_UP = 10
const VIEWS = { phone: { width: 412, height: 823 }, wide: { width: 1280, height: 900 } }

interface Times {
  median: number
  p95: number
  script: number
  style: number
  layout: number
}

/** Moves a field to and fro about its start, and times each move [ms]. Values that the calculator refuses would draw nothing: it stays near the start. */
const move = (field: Locator): Promise<number[]> =>
  field.evaluate(async (input: HTMLInputElement, moves) => {
    input.closest('details')?.setAttribute('open', '')
    if (!input.closest('.hand')) input.scrollIntoView({ block: 'center' })
    const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!
    const start = Number(input.value)
    const isRange = input.type === 'range'
    const [low, high] = isRange ? [Number(input.min), Number(input.max)] : [0, 2 * start]
    const reach = Math.max(isRange ? Number(input.step) * 5 : 0, (high - low) * 0.05)
    const times: number[] = []
    await new Promise(requestAnimationFrame)
    for (let at = 0; at < moves; at++) {
      setValue.call(input, String(Math.min(high, Math.max(low, start + reach * Math.sin(at)))))
      const given = performance.now()
      input.dispatchEvent(new Event('input', { bubbles: true }))
      await new Promise(requestAnimationFrame)
      times.push(performance.now() - given)
    }
    setValue.call(input, String(start))
    input.dispatchEvent(new Event('input', { bubbles: true }))
    return times
  }, MOVES + WARM_UP)

async function spent(session: CDPSession): Promise<Record<string, number>> {
  const { metrics } = await session.send('Performance.getMetrics')
  return Object.fromEntries(metrics.map(({ name, value }) => [name, value * 1000]))
}

async function timesOf(field: Locator, session: CDPSession): Promise<Times> {
  const rounds: Times[] = []
  for (let round = 0; round < ROUNDS; round++) {
    const from = await spent(session)
    const times = (await move(field)).slice(WARM_UP).sort((a, b) => a - b)
    const to = await spent(session)
    const each = (name: string): number => (to[name]! - from[name]!) / (MOVES + WARM_UP)
    rounds.push({
      median: times[Math.floor(times.length * 0.5)]!,
      p95: times[Math.floor(times.length * 0.95)]!,
      script: each('ScriptDuration'),
      style: each('RecalcStyleDuration'),
      layout: each('LayoutDuration'),
    })
  }
  return rounds.sort((a, b) => a.median + a.p95 - b.median - b.p95)[0]!
}

let [tried, over] = [0, 0]
async function tell(name: string, field: Locator, session: CDPSession): Promise<void> {
  const { median, p95, script, style, layout } = await timesOf(field, session)
  const late = median > AIM.median || p95 > AIM.p95
  tried++
  if (late) over++
  console.log(
    `${late ? '!' : ' '} ${name.padEnd(52)} median ${median.toFixed(1)}, p95 ${p95.toFixed(1)}; script ${script.toFixed(1)}, style ${style.toFixed(1)}, layout ${layout.toFixed(1)} ms`,
  )
}

/** Every slider of a card, or, where it has none, a number's box; then each handle, in the view that has it. */
async function calculator(page: Page, name: string, session: CDPSession): Promise<void> {
  const form = page.locator('form[data-calculator]')
  const sliders = form.locator('[data-field] input[type="range"]')
  const count = await sliders.count()
  for (let place = 0; place < count; place++) {
    const slider = sliders.nth(place)
    const id = await slider.evaluate(
      (each) => each.closest<HTMLElement>('[data-field]')!.dataset['field'],
    )
    await tell(`${name} ${id}`, slider, session)
  }
  if (count === 0)
    await tell(`${name} box`, form.locator('input[inputmode="decimal"]').first(), session)
  const tabs = form.locator('.tabs .tab:not(.words)')
  const views = Math.max(1, await tabs.count())
  const done = new Set<string>()
  for (let view = 0; view < views; view++) {
    if (await tabs.nth(view).isVisible()) await tabs.nth(view).click()
    for (const hand of await form.locator('.hand').all()) {
      const id = (await hand.getAttribute('data-handle'))!
      if (done.has(id)) continue
      done.add(id)
      await tell(`${name} ${id}, handle`, hand.locator('input'), session)
    }
  }
}

const site = await openSite()
const wanted = process.argv.slice(2)
for (const [view, viewport] of Object.entries(VIEWS)) {
  const context = await site.browser.newContext({ viewport })
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  await session.send('Performance.enable', { timeDomain: 'threadTicks' })
  for (const id of calculatorIds.filter((each) => wanted.length === 0 || wanted.includes(each))) {
    await page.goto(`${site.origin}/calculators/${id}/`)
    await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
    await calculator(page, `${view} ${id}`, session)
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
  }
  console.log(
    `load of the machine ${loadavg()
      .map((each) => each.toFixed(1))
      .join(', ')}`,
  )
  await context.close()
}
console.log(`${over} of ${tried} over ${AIM.median} ms at the median or ${AIM.p95} ms at p95`)
await site.close()
process.exitCode = over > 0 ? 1 : 0
