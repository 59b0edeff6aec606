import jstat from 'jstat'
import { parseHTML } from 'linkedom'
import { describe, expect, test } from 'vitest'
import { drawnOrder } from '../../src/build/drawOptions.ts'
import { builtPages, builtText } from './pages.ts'

/* Where the right options stand in the whole book: nobody should pass by taking the third, or the last. */

interface Asked {
  where: string
  kind: 'prediction' | 'recall' | 'self-check'
  /** for each option, whether it is right */
  options: boolean[]
  /** for each option, how long its words are */
  lengths: number[]
}

const asked: Asked[] = builtPages()
  .filter((page) => /^\/chapters\/.+/.test(page))
  .flatMap((page) => {
    const { document } = parseHTML(builtText(page))
    return [...document.querySelectorAll('[data-question]:not([data-question="number"])')].map(
      (question): Asked => {
        const kind =
          question.getAttribute('data-question') === 'predict'
            ? 'prediction'
            : question.hasAttribute('data-recall')
              ? 'recall'
              : 'self-check'
        const options = [...question.querySelectorAll('[data-option]')].map(
          (option) => option.getAttribute('data-right') === 'true',
        )
        const lengths = [...question.querySelectorAll('[data-option] .answer')].map((answer) => {
          answer.querySelector('.why')?.remove()
          return answer.textContent.trim().length
        })
        const where = `${page}#${question.getAttribute('data-question-id')}`
        return { where, kind, options, lengths }
      },
    )
  })

/** Chance of places at least as uneven as these if each option stood anywhere with equal chance (Pearson's chi-square; from memory). */
function chance(questions: readonly Asked[]): number {
  const most = Math.max(...questions.map(({ options }) => options.length))
  const places = Array.from({ length: most }, (_, place) => place)
  const found = places.map((place) => questions.filter(({ options }) => options[place]).length)
  const expected = places.map((place) =>
    questions.reduce(
      (sum, { options }) => sum + (place < options.length ? 1 / options.length : 0),
      0,
    ),
  )
  const chiSquare = places.reduce(
    (sum, place) => sum + (found[place]! - expected[place]!) ** 2 / expected[place]!,
    0,
  )
  return 1 - jstat.chisquare.cdf(chiSquare, most - 1)
}

/** Chance of as many right options at one end of the lengths, or more, if length told nothing (binomial with the mean chance of the questions; from memory). */
function chanceOfLength(questions: readonly Asked[], end: 'longest' | 'shortest'): number {
  const pick = end === 'longest' ? Math.max : Math.min
  const hits = questions.filter(
    ({ options, lengths }) => lengths[options.indexOf(true)] === pick(...lengths),
  ).length
  const share =
    questions.reduce((sum, { options }) => sum + 1 / options.length, 0) / questions.length
  return hits === 0 ? 1 : 1 - jstat.binomial.cdf(hits - 1, questions.length, share)
}

describe('the options of questions', () => {
  test('each question has one right option among two to five', () => {
    expect(
      asked.filter(
        ({ options }) =>
          options.length < 2 || options.length > 5 || options.filter(Boolean).length !== 1,
      ),
    ).toEqual([])
  })

  // one in twenty of all orders by chance is more uneven than this; when it fails, change the draw in src/build/drawOptions.ts
  test.each(['prediction', 'recall', 'self-check'] as const)(
    'the right one of a %s stands anywhere',
    (kind) => {
      const questions = asked.filter((each) => each.kind === kind)
      expect(questions.length).toBeGreaterThanOrEqual(8)
      expect(chance(questions)).toBeGreaterThan(0.05)
    },
  )

  // one book in twenty written by chance is more uneven than this at one of the ends
  test.each(['longest', 'shortest'] as const)(
    'the right one is not known by being the %s',
    (end) => {
      expect(chanceOfLength(asked, end)).toBeGreaterThan(0.05)
    },
  )

  test('the length test finds a book whose right options are the shortest in two of three', () => {
    const short = Array.from({ length: 80 }, (_, at): Asked => ({
      where: '',
      kind: 'self-check',
      options: [true, false, false],
      lengths: at % 3 === 0 ? [30, 20, 40] : [10, 20, 40],
    }))
    expect(chanceOfLength(short, 'shortest')).toBeLessThan(1e-4)
    expect(chanceOfLength(short, 'longest')).toBeGreaterThan(0.5)
  })

  test('the slider of a number does not start at the answer', () => {
    const given = builtPages()
      .filter((page) => /^\/chapters\/.+/.test(page))
      .flatMap((page) =>
        [...parseHTML(builtText(page)).document.querySelectorAll('[data-question="number"]')].map(
          (question) => {
            const right = question.querySelector('[data-right="true"]')!
            const [from, to, value, within] = [
              question.getAttribute('data-from'),
              question.getAttribute('data-to'),
              right.getAttribute('data-near'),
              right.getAttribute('data-within'),
            ].map(Number)
            return { page, away: Math.abs((from! + to!) / 2 - value!), within: within! }
          },
        ),
      )
    expect(given.length).toBeGreaterThanOrEqual(8)
    expect(given.filter(({ away, within }) => away <= 1.5 * within)).toEqual([])
  })

  test('no right answer hides behind a hedge', () => {
    const hedged = builtPages()
      .filter((page) => /^\/chapters\/.+/.test(page))
      .flatMap((page) =>
        [
          ...parseHTML(builtText(page)).document.querySelectorAll(
            '[data-option][data-right="true"] .answer',
          ),
        ].map((answer) => `${page}: ${answer.textContent.trim()}`),
      )
      .filter((text) =>
        /: (?:Perhaps|It depends|You can.t tell|It can.t be|Nothing yet)/i.test(text),
      )
    expect(hedged).toEqual([])
  })

  test('the places test finds the old order: third in 16 of 20', () => {
    const old = Array.from({ length: 20 }, (_, at): Asked => ({
      where: '',
      kind: 'prediction',
      lengths: [],
      options: [false, at >= 16, at < 16],
    }))
    expect(chance(old)).toBeLessThan(1e-4)
  })
})

describe('drawnOrder(question, count, last)', () => {
  test('drawnOrder is the same at every build, and holds every option once', () => {
    expect(drawnOrder('sag#c1', 4)).toEqual(drawnOrder('sag#c1', 4))
    expect(drawnOrder('sag#c1', 4).sort()).toEqual([0, 1, 2, 3])
  })
  test('drawnOrder leaves at the end what makes sense only there', () => {
    for (let question = 0; question < 20; question++)
      expect(drawnOrder(`q#${question}`, 4, [1]).at(-1)).toBe(1)
  })
})
