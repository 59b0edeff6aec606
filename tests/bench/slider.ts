/** From a slider's input event to the next frame, on the built site, at a processor four times slower: `npm run slider`. Prints median and p95 [ms] for each calculator; the aim is 17 and 32. */
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import { openSite } from '../site/browser.ts'

const MOVES = 120
const site = await openSite()
const context = await site.browser.newContext({ viewport: { width: 412, height: 823 } })
const page = await context.newPage()
const session = await context.newCDPSession(page)
let worst = { median: 0, p95: 0 }
for (const id of calculatorIds) {
  const definition = await loadCalculator(id)
  await page.goto(`${site.origin}/calculators/${id}/`)
  await page.waitForFunction(() => document.querySelectorAll('astro-island[ssr]').length === 0)
  if ((await page.locator('form[data-calculator] input[type="range"]').count()) === 0) {
    console.log(`${id.padEnd(20)} no slider: ${Object.keys(definition.inputs).join(', ')}`)
    continue
  }
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  const times = await page.evaluate(async (moves) => {
    const slider = document.querySelector<HTMLInputElement>('form[data-calculator] input[type="range"]')!
    const [low, high] = [Number(slider.min), Number(slider.max)]
    const all: number[] = []
    for (let move = 0; move < moves; move++) {
      await new Promise(requestAnimationFrame)
      const value = low + (high - low) * (0.5 + 0.4 * Math.sin(move))
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!.call(slider, String(value))
      const start = performance.now()
      slider.dispatchEvent(new Event('input', { bubbles: true }))
      await new Promise<void>((done) =>
        requestAnimationFrame(() => {
          const channel = new MessageChannel()
          channel.port1.onmessage = () => done()
          channel.port2.postMessage(0)
        }),
      )
      all.push(performance.now() - start)
    }
    return all.slice(10)
  }, MOVES)
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
  times.sort((a, b) => a - b)
  const [median, p95] = [times[Math.floor(times.length / 2)]!, times[Math.floor(times.length * 0.95)]!]
  worst = { median: Math.max(worst.median, median), p95: Math.max(worst.p95, p95) }
  console.log(`${id.padEnd(20)} median ${median.toFixed(1)} ms, p95 ${p95.toFixed(1)} ms`)
}
console.log(`worst: median ${worst.median.toFixed(1)} ms, p95 ${worst.p95.toFixed(1)} ms`)
await site.close()
