import { describe, expect, test } from 'vitest'
import { minutesOf } from '../../src/lesson/plan.ts'
import type { Stretch } from '../../src/lesson/schema.ts'
import { stillNames } from '../../src/drawing/stills.ts'
import { entries, listed } from './entries.ts'

const lessons = entries('lessons')
const handouts = entries('handouts')
const keys = entries('handouts/key')
const idsOf = (all: readonly { id: string }[]): string[] => all.map(({ id }) => id).sort()

describe.each(lessons.map((lesson) => [lesson.id, lesson] as const))('lesson %s', (_id, { data, body }) => {
  const plan = data['plan'] as Stretch[]

  test('takes as long as its plan adds up to, with whole minutes in each stretch', () => {
    expect(minutesOf(plan)).toBe(data['minutes'])
    expect(plan.every(({ minutes }) => Number.isInteger(minutes) && minutes > 0)).toBe(true)
  })

  test('has a break where it is longer than an hour, and safety first', () => {
    const titles = plan.map(({ title }) => title.toLowerCase())
    if (Number(data['minutes']) > 60) expect(titles.some((title) => title.includes('break'))).toBe(true)
    if (body.includes('<Figure') || body.includes('for="station"'))
      expect((data['cautions'] as string[]).length).toBeGreaterThan(1)
  })

  test('names handouts that exist', () => {
    expect((data['handouts'] as string[]).filter((id) => !idsOf(handouts).includes(id))).toEqual([])
  })

  test('draws pictures that exist', () => {
    const drawn = [...body.matchAll(/<Figure of="([^"]+)"/g)].map((match) => match[1]!)
    expect(drawn.filter((name) => !stillNames.includes(name))).toEqual([])
  })
})

test('the half day is what it says: three stations of 30 minutes with two changes of 5, a break of 20, 210 in all', () => {
  const plan = lessons.find(({ id }) => id === 'half-day')!.data['plan'] as Stretch[]
  expect(minutesOf(plan)).toBe(210)
  expect(plan.find(({ title }) => title === 'Three stations')!.minutes).toBe(3 * 30 + 2 * 5)
  expect(plan.find(({ title }) => title === 'Break')!.minutes).toBe(20)
})

test('each station card warns before its first step, and says who may do what and when to stop', () => {
  const { body } = lessons.find(({ id }) => id === 'half-day')!
  const cards = body.split('<Sheet ').filter((sheet) => sheet.startsWith('id="station-'))
  expect(cards.length).toBe(3)
  for (const card of cards) {
    expect(card.indexOf('<Danger')).toBeGreaterThan(0)
    expect(card.indexOf('<Danger')).toBeLessThan(card.indexOf('\n1. '))
    for (const part of ['**Say it first.**', '**Who may do what.**', '**What goes wrong.**', '**Stop**', '*Critical:'])
      expect(card, part).toContain(part)
  }
})

test('there are twelve handouts, each with a key of its own, none with its answer on the sheet', () => {
  expect(handouts.length).toBe(12)
  expect(idsOf(keys)).toEqual(idsOf(handouts))
  for (const { id, body } of handouts) {
    expect(body, id).not.toMatch(/answer:|right:|correct/i)
    expect(body, id).toMatch(/<Blank|<Lines|<Grid/)
  }
})

test('the test before and after asks ten questions with one right answer each, on wrong ideas that chapters name', () => {
  const questions = listed('class-test.yaml') as { id: string; options: { text: string; right?: boolean; idea?: string }[] }[]
  const named = new Set(entries('chapters').flatMap(({ data }) => data['wrong'] as string[]))
  expect(questions.length).toBe(10)
  for (const { id, options } of questions) {
    expect(options.filter(({ right }) => right === true).length, id).toBe(1)
    expect(new Set(options.map(({ text }) => text)).size, id).toBe(4)
    expect(options.flatMap(({ idea = [] }) => idea).filter((idea) => !named.has(idea)), id).toEqual([])
  }
  expect(new Set(questions.flatMap(({ options }) => options.flatMap(({ idea = [] }) => idea))).size).toBeGreaterThanOrEqual(7)
})

test('chapters to read before a lesson and topics of its later questions exist', () => {
  for (const { id, data } of lessons) {
    const { reading = [], later } = data as { reading?: string[]; later?: { topics: string[] } }
    expect(reading.filter((chapter) => !idsOf(entries('chapters')).includes(chapter)), id).toEqual([])
    expect((later?.topics ?? []).filter((topic) => !idsOf(entries('calculators')).includes(topic)), id).toEqual([])
  }
})
