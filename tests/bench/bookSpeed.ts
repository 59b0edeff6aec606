/**
 * How fast a thousand jobs come into the bench book, on the built site: `npm run book-speed`. Timed [ms] is from the press of the button to the word that all
 * is read back, with 20 readings a job, in one of several fresh browsers that other work disturbed least. Exits with 1 when it takes a second or more.
 */
import { fileText } from '../../src/record/recordFile.ts'
import { newBike, newJob } from '../../src/record/records.ts'
import type { JobRecord } from '../../src/record/records.ts'
import { openSite } from '../site/browser.ts'

const AIM = 1000
const TIMES = 5
const DAY = '2026-03-12'

const reading = { at: DAY, boxes: [{ typed: '150', unit: 'mm', value: 150 }] }
const bike = newBike('b1', { name: 'Roadster', like: 'middleweight-roadster', made: DAY })
const jobs = Array.from({ length: 1000 }, (_, n): JobRecord => {
  const readings = Object.fromEntries(Array.from({ length: 20 }, (_, at) => [`r${at}`, reading]))
  const part = { id: 'measure-front-sag', procedure: 'measure-front-sag', ticks: {}, readings }
  return { ...newJob(`j${n}`, { bike: 'b1', kind: 'loose', opened: DAY }), parts: [part] }
})
const buffer = Buffer.from(fileText({ bikes: [bike], jobs }, 'e', DAY))

const site = await openSite()
const times: number[] = []
for (let time = 0; time < TIMES; time++) {
  const context = await site.browser.newContext()
  const page = await context.newPage()
  await page.goto(`${site.origin}/record/`)
  await page.locator('[data-book-ready="true"]').waitFor()
  const file = { name: 'many.json', mimeType: 'application/json', buffer }
  await page.locator('[data-file]').setInputFiles(file)
  await page.locator('[data-import-take="mine"]').waitFor()
  times.push(
    await page.evaluate(async () => {
      const start = performance.now()
      const note = document.querySelector('[data-note]')!
      const read = new Promise<void>((done) => {
        new MutationObserver(() => note.textContent?.includes('1001 records') && done()).observe(
          note,
          { childList: true, characterData: true, subtree: true },
        )
      })
      document.querySelector<HTMLButtonElement>('[data-import-take="mine"]')!.click()
      await read
      return performance.now() - start
    }),
  )
  await context.close()
}
await site.close()
const least = Math.min(...times)
const all = times.map((each) => each.toFixed(0)).join(', ')
console.log(`1,000 jobs with 20 readings each: ${least.toFixed(0)} ms at the least (${all})`)
if (least >= AIM) process.exitCode = 1
