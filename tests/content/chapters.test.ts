import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describe, expect, test } from 'vitest'
import { readability, runningSentences, sentencesOf } from './readability.ts'

const IDS = [
  'before-you-start', 'inside-the-fork', 'spring-rate', 'preload-versus-rate', 'sag', 'rate-from-sag', 'choosing-a-spring', 'spacers-and-adjusters', 'progressive-springs', 'ride-height',
  'rake-and-trail', 'wheel-loads', 'braking-dive', 'air-and-oil-height', 'oil-viscosity', 'damping', 'rear-end', 'whole-bike', 'steering-modes',
]

interface FrontMatter {
  title: string
  order: number
  needs: string[]
  able: string[]
  wrong: string[]
  calculators: string[]
  record: string[]
  decides: string[]
  stop: string[]
  sources: string[]
  next: { text: string; procedure: string }
}

function read(id: string): { front: FrontMatter; body: string } {
  const [, front = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(`content/chapters/${id}.mdx`, 'utf8')) ?? []
  return { front: parse(front) as FrontMatter, body }
}

const count = (body: string, tag: string): number => [...body.matchAll(new RegExp(`<${tag}\\b`, 'g'))].length
const attributes = (body: string, tag: string, name: string): string[] => [...body.matchAll(new RegExp(`<${tag}\\b[^>]*?\\b${name}="([^"]*)"`, 'g'))].map((match) => match[1]!)

test('the chapters are the nineteen of the plan, in its order', () => {
  expect(readdirSync('content/chapters').map((file) => file.replace('.mdx', '')).sort()).toEqual([...IDS].sort())
  expect(IDS.map((id) => read(id).front.order)).toEqual(IDS.map((_, index) => index + 1))
})

describe.each(IDS.map((id, index) => [id, index + 1] as const))('chapter %s', (id, order) => {
  const { front, body } = existsSync(`content/chapters/${id}.mdx`) ? read(id) : { front: {} as FrontMatter, body: '' }

  test('has every part of the pattern', () => {
    expect(front.title).toMatch(/\?$/)
    for (const list of [front.able, front.wrong, front.calculators, front.record, front.decides, front.stop, front.sources]) expect(list.length).toBeGreaterThan(0)
    expect(front.next.text.length).toBeGreaterThan(20)
    for (const tag of ['Predict', 'Calculator', 'Derivation', 'Symbols', 'Words', 'Caution', 'Bench', 'Term']) expect(count(body, tag), `<${tag}>`).toBeGreaterThan(0)
    expect(count(body, 'SelfCheck')).toBe(3)
    for (const heading of ['What this leaves out', 'Check yourself', 'Measure it on a bike']) expect(body).toContain(`## ${heading}`)
    const places = ['<Predict', '<Calculator', '<Bench', '## '].map((mark) => body.indexOf(mark))
    expect(places[0], 'the prediction comes before the calculator').toBeLessThan(places[1]!)
    expect(places, 'scene, question, picture, then the bench and the sections').toEqual([...places].sort((a, b) => a - b))
    if (order >= 3) for (const tag of ['Worked', 'YourTurn']) expect(count(body, tag), `<${tag}>`).toBeGreaterThan(0)
  })

  test('asks one question from two chapters back', () => {
    expect(attributes(body, 'Recall', 'from')).toEqual(order >= 3 ? [IDS[order - 3]] : [])
  })

  test('answers each of its wrong ideas by name', () => {
    expect(attributes(body, 'Wrong', 'idea')).toEqual(front.wrong)
  })

  test('puts words under each formula, and gives every wrong answer its reason', () => {
    expect(count(body, 'Words')).toBeGreaterThanOrEqual([...body.matchAll(/^\$\$$/gm)].length / 2)
    const options = [...body.matchAll(/<Option\b[\s\S]*?<\/Option>/g)].map((match) => match[0])
    expect(options.filter((option) => !option.includes('<Why>'))).toEqual([])
    for (const question of body.matchAll(/<(Predict|SelfCheck|Recall)\b[\s\S]*?<\/\1>/g)) expect([...question[0].matchAll(/<(?:Option|Near) right\b/g)].length, question[0].slice(0, 60)).toBe(1)
    for (const turn of body.matchAll(/<YourTurn\b[^>]*unit=[\s\S]*?<\/YourTurn>/g)) {
      expect([...turn[0].matchAll(/<Near right\b/g)].length).toBe(1)
      expect(count(turn[0], 'Near'), 'a mistake answered by name').toBeGreaterThan(1)
    }
  })

  test('builds only on chapters before it, and links to its procedure', () => {
    for (const need of front.needs ?? []) expect(IDS.indexOf(need)).toBeLessThan(order - 1)
    expect(body.slice(body.indexOf('## Measure it on a bike'))).toContain('](/procedures/')
  })

  const built = (): string => readFileSync(`dist/chapters/${id}/index.html`, 'utf8')

  // A sentence of about 13 words on average, long and short ones mixed, is how a careful fitter explains; 9 words with a third of them six or fewer was a telegram.
  test('reads as it would be said: 11 to 16 words a sentence, mixed, a quarter short at most, grade 9 at most, 1,200 to 1,950 words', () => {
    const { sentenceLength, spread, short, grade } = readability(runningSentences(built()))
    const { words } = readability(sentencesOf(built()))
    expect(sentenceLength).toBeGreaterThanOrEqual(11)
    expect(sentenceLength).toBeLessThanOrEqual(16)
    expect(spread).toBeGreaterThan(5)
    expect(short).toBeLessThanOrEqual(0.25)
    expect(grade).toBeLessThanOrEqual(9)
    expect(words).toBeGreaterThanOrEqual(1200)
    expect(words).toBeLessThanOrEqual(1950)
  })

  test('has none of the words that say nothing', () => {
    expect(body.match(/\b(?:simply|just|obviously|dive into|unlock|it['’]s important to note|please|sorry)\b|!(?!\[)(?=\s|$)/gi)?.join() ?? '').toBe('')
  })
})
