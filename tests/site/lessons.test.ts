import { readdirSync, readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { parse } from 'yaml'
import { FORMS, formOf, keyOf } from '../../src/lesson/classTest.ts'
import type { FormNumber } from '../../src/lesson/classTest.ts'
import type { TestQuestion } from '../../src/lesson/schema.ts'
import { openSite } from './browser.ts'
import type { Site } from './browser.ts'

let site: Site
let page: Page
beforeAll(async () => {
  site = await openSite()
  page = await site.browser.newPage({ viewport: { width: 1280, height: 800 } })
})
afterAll(() => site.close())

const questions = parse(readFileSync('content/class-test.yaml', 'utf8')) as TestQuestion[]
const rightLetters = (number: FormNumber): string[] => {
  const form = formOf(questions, number)
  return form.map(({ question }) => keyOf(form, questions, question).letter)
}
const sheetText = (id: string): Promise<string> =>
  page.locator(`[data-sheet="${id}"]`).evaluate((sheet) => (sheet as HTMLElement).innerText)
const rowsOf = (id: string): Promise<number> =>
  page.locator(`[data-sheet="${id}"] [data-rows] tbody tr`).count()

describe('the half day’s page', () => {
  beforeAll(() => page.goto(`${site.origin}/lessons/half-day/`))

  test('makes lists and groups for the number of people, and keeps them where it can’t be used', async () => {
    const people = page.getByLabel('People')
    expect(await people.inputValue()).toBe('12')
    expect([await rowsOf('attendance'), await rowsOf('wall')]).toEqual([12, 12])
    await people.fill('7')
    expect([await rowsOf('attendance'), await rowsOf('wall')]).toEqual([7, 7])
    expect(await sheetText('plan')).toMatch(/For 7 people; in three groups: 3, 2, 2/)
    await people.fill('40')
    expect(await page.locator('[data-problem]').innerText()).toContain('“40” can’t be used')
    expect(await rowsOf('attendance')).toBe(7)
    await people.fill('12')
    expect(await page.locator('[data-problem]').innerText()).toBe('')
  })

  test('writes the class’s units alone, on every sheet', async () => {
    const readings = async (): Promise<string> =>
      `${await sheetText('rig-sag')} ${await sheetText('rig-press')}`
    const metric = await readings()
    expect(metric).toMatch(/hanging 150\smm/)
    expect(metric).not.toMatch(/\d\s(?:in|lbf?)\b/)
    await page.getByLabel('Units').selectOption('imperial')
    const imperial = await readings()
    expect(imperial).toMatch(/hanging 5\.9\d?\sin/)
    expect(imperial).not.toMatch(/hanging 150/)
    expect(await page.locator('a[data-later]').getAttribute('href')).toMatch(/units=imperial$/)
    expect(await page.locator('code[data-later]').textContent()).toMatch(/units=imperial$/)
    await page.getByLabel('Units').selectOption('metric')
    expect(await readings()).toBe(metric)
  })

  test('writes decimal commas throughout, and points again', async () => {
    const decimals = () =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.sheet-page')]
          .map((sheet) => sheet.innerText)
          .join('\n')
          .match(/\d\.\d/g),
      )
    const points = (await decimals())!.length
    expect(points).toBeGreaterThan(50)
    await page.getByLabel('Decimals').selectOption('comma')
    expect(await decimals()).toBeNull()
    expect(await sheetText('rig-press')).toMatch(/9,0 N\/mm/)
    await page.getByLabel('Decimals').selectOption('point')
    expect((await decimals())!.length).toBe(points)
  })

  test('leaves out a sheet that is not ticked', async () => {
    const box = page.getByRole('checkbox', { name: 'Letters to hold up' })
    await box.uncheck()
    expect(await page.locator('[data-sheet="letters"]').isVisible()).toBe(false)
    await box.check()
    expect(await page.locator('[data-sheet="letters"]').isVisible()).toBe(true)
  })

  test('prints the tests with nothing of their key on them', async () => {
    for (const number of FORMS) {
      const text = await sheetText(`test-${number}`)
      for (const { ask, because } of questions) {
        expect(text).toContain(ask)
        expect(text).not.toContain(because)
      }
    }
    const keys = await page
      .locator('[data-test-key] .key-letter b')
      .evaluateAll((all) => all.map((each) => each.textContent))
    const form = formOf(questions, 1)
    expect(keys.filter((_, at) => at % 2 === 0)).toEqual(
      questions.map((_, at) => keyOf(form, questions, at).letter.toUpperCase()),
    )
  })
})

const lessons = readdirSync('content/lessons').map((name) => name.replace('.mdx', ''))

test.each(lessons)('%s prints each sheet on one page, on A4 and on Letter', async (id) => {
  await page.goto(`${site.origin}/lessons/${id}/`)
  const sheets = await page.locator('[data-sheet]').count()
  for (const format of ['A4', 'Letter']) {
    const pdf = (await page.pdf({ format })).toString('latin1')
    expect(pdf.match(/\/Type \/Page\b/g)?.length, format).toBe(sheets)
  }
})

test('a learner’s screen gives a code, and the trainer’s page works the class’s gain out of codes', async () => {
  const codes: string[] = []
  for (const number of FORMS) {
    await page.goto(`${site.origin}/lessons/test/form-${number}/`)
    const letters = number === 1 ? ['a', 'b'] : rightLetters(2)
    for (const [at, letter] of letters.entries())
      await page.locator(`[name="answer-${at}"][value="${letter}"]`).check()
    codes.push(await page.locator('[data-test-code]').innerText())
  }
  expect(codes).toEqual(['1:AB--------', `2:${rightLetters(2).join('').toUpperCase()}`])
  await page.goto(`${site.origin}/lessons/test/`)
  const right = [rightLetters(1).join(''), rightLetters(2).join('')]
  await page
    .getByLabel('Letters')
    .fill(
      [`1; ----------; ${codes[1]!}`, `2; ${right.join('; ')}`, `3; ${codes.join('; ')}`].join(
        '\n',
      ),
    )
  await page.getByRole('button', { name: 'Work it out' }).click()
  expect(await page.locator('[data-gain-says]').innerText()).toContain('10.0 after')
  expect(await page.locator('[data-gain-items] tr').count()).toBe(questions.length)
  await page.getByLabel('Letters').fill('Ann; ABC; ABC')
  await page.getByRole('button', { name: 'Work it out' }).click()
  expect(await page.locator('[data-readings-problems]').innerText()).toContain('3 letters')
  expect(await page.locator('[data-gain-result]').isVisible()).toBe(false)
})
