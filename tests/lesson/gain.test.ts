import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { formOf, keyOf, rightOf } from '../../src/lesson/classTest.ts'
import type { TestQuestion } from '../../src/lesson/schema.ts'
import { gainOf, meanDifference, widening } from '../../src/lesson/gain.ts'
import { codeOf, readAnswers } from '../../src/lesson/readAnswers.ts'
import { tellGain } from '../../src/lesson/tellGain.ts'

const questions = parse(readFileSync('content/class-test.yaml', 'utf8')) as TestQuestion[]
const forms = { 1: formOf(questions, 1), 2: formOf(questions, 2) }
const rights = questions.map(rightOf)
/** The letters of a form's right answers, in its order. */
const rightLetters = (number: 1 | 2): string =>
  forms[number].map(({ question }) => keyOf(forms[number], questions, question).letter).join('')

describe('formOf', () => {
  test('asks every question once with every option, in two orders that stay the same', () => {
    for (const form of Object.values(forms)) {
      expect(form.map(({ question }) => question).toSorted((a, b) => a - b)).toEqual(
        questions.map((_, at) => at),
      )
      for (const { options } of form)
        expect([...options].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3])
    }
    expect(forms[1].map(({ question }) => question)).toEqual([7, 1, 0, 4, 9, 6, 2, 3, 8, 5])
    expect(forms[2].map(({ question }) => question)).not.toEqual(
      forms[1].map(({ question }) => question),
    )
  })

  test('hides the right answers among all letters', () => {
    for (const number of [1, 2] as const)
      expect(new Set(rightLetters(number)).size, rightLetters(number)).toBeGreaterThanOrEqual(3)
  })
})

describe('readAnswers', () => {
  const read = (text: string) => readAnswers(text, forms)

  test('turns the letters of both forms, typed or as a code, into the same answers', () => {
    const code = codeOf(2, [...rightLetters(2)])
    const answers = read(
      `Ann; ${rightLetters(1).toUpperCase()}; ${code}\nBob\t1:----------\t${rightLetters(2)}`,
    )
    if (!('sittings' in answers)) throw new Error(answers.problems.join(' '))
    const [ann, bob] = answers.sittings
    expect([ann!.before, ann!.after]).toEqual([rights, rights])
    expect([bob!.before, bob!.after]).toEqual([rights.map(() => null), rights])
  })

  test.each([
    ['', 'Type or paste the letters first'],
    ['Ann; ABCDABCDAB', 'Line 1 needs a name'],
    ['Ann; ABCDABCDA; ABCDABCDAB', 'has 9 letters in place of 10'],
    ['Ann; ABCDABCDAE; ABCDABCDAB', '“e” in “ABCDABCDAE” is none of A to D'],
    ['Ann; 2:ABCDABCDAB; ABCDABCDAB', 'is of form 2, where form 1 belongs'],
  ])('says what is wrong with %j', (text, told) => {
    const answers = read(text)
    expect('problems' in answers ? answers.problems.join(' ') : 'nothing').toContain(told)
  })
})

describe('gainOf', () => {
  const none = rights.map((right) => (right + 1) % 4)
  const other = rights.map((right) => (right + 2) % 4)

  test('counts for each question who changed, and which way', () => {
    const { items, before, after } = gainOf(
      [
        { name: 'a', before: none, after: rights },
        { name: 'b', before: rights, after: none },
        { name: 'c', before: none, after: other },
        { name: 'd', before: rights, after: rights },
        { name: 'e', before: none, after: none },
      ],
      rights,
    )
    const each = { gained: 1, lost: 1, otherWrong: 1, stayedRight: 1, stayedWrong: 1 }
    expect(items).toEqual(rights.map(() => each))
    expect([before, after]).toEqual([4, 4])
  })

  test('gives the interval of a published table of Student’s t for twelve people', () => {
    // JCGM 100:2008, table G.2: t(95 %) = 2.20 at 11 degrees of freedom, printed to two places
    expect(Math.abs(widening(12) * Math.sqrt(12) - 2.2)).toBeLessThan(0.005)
    const { mean, deviation, plusMinus } = meanDifference([3, 4, 2, 5, 1, 3, 0, 4, 2, 3, -1, 4])
    // by hand: sum 30; squares about 2.5 add up to 35; 35/11 under the root
    expect(mean).toBe(2.5)
    expect(Math.abs(deviation! - Math.sqrt(35 / 11))).toBeLessThan(1e-12)
    expect(Math.abs(plusMinus! - 1.13)).toBeLessThan(0.01)
  })

  test('divides by nothing where everybody knew everything before, or where there is one person', () => {
    const knew = { name: 'a', before: rights, after: rights }
    const all = gainOf([knew, knew, knew], rights)
    expect([all.gain, all.plusMinus]).toEqual([0, 0])
    const told = tellGain(all).join(' ')
    expect(told).not.toMatch(/NaN|Infinity/)
    expect(told).toContain('Everybody changed by as much')
    const alone = gainOf([knew], rights)
    expect(alone.plusMinus).toBeNull()
    expect(tellGain(alone).join(' ')).toContain('One person alone gives no interval')
    expect(() => gainOf([], rights)).toThrow(RangeError)
  })
})
