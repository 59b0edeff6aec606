import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describe, expect, test } from 'vitest'
import { bikes } from '../calculators/bikes.ts'
import { loadCalculator } from '../../src/calculators/index.ts'
import { computeValue } from '../../src/build/prose/value.ts'
import type { ValueRequest } from '../../src/build/prose/value.ts'
import { defaultsOf } from '../../src/machine/evaluate.ts'

/* The chapters tell one job on one bike, so a quantity of it has one value wherever it is computed, and a chapter's calculators
   open with that bike as it is then. */

interface Result extends ValueRequest {
  calculator: string
}
interface Fact extends Result {
  id: string
  chapter: string
  same?: Result[]
}

const facts = parse(readFileSync('content/story.yaml', 'utf8')) as Fact[]
const shown = ({ calculator, ...request }: Result): string => computeValue(loadCalculator(calculator), request, bikes).metric
const chapter = (id: string): string => readFileSync(`content/chapters/${id}.mdx`, 'utf8')
const chapters = readdirSync('content/chapters').map((file) => file.replace('.mdx', ''))

describe.each(facts.map((fact) => [fact.id, fact] as const))('the story’s %s', (_id, fact) => {
  test('is told in a chapter that is there', () => {
    expect(chapters).toContain(fact.chapter)
  })
  // the same to the last digit shown: what a reader sees side by side in two chapters
  test('has one value wherever it is computed', () => {
    expect(shown(fact)).toMatch(/\d/)
    for (const other of fact.same ?? []) expect(`${other.calculator} ${shown({ ...other, ...(fact.digits !== undefined && { digits: fact.digits }) })}`).toBe(`${other.calculator} ${shown(fact)}`)
  })
})

/** The bike of the story as calculators take it, in the units of their fields. */
const BIKE: Record<string, Record<string, unknown>> = {
  'preload-versus-rate': { rate: 9, travel: 120, gas: 'sealed', airHeight: 130 },
  sag: { extended: 150, travel: 120 },
  'fork-stack': { tubeDepth: 478, capReach: 24, bike: 'middleweight-roadster' },
  'choose-rate': { bike: 'middleweight-roadster', riderSag: 35.2 },
  'ride-height': { bike: 'middleweight-roadster', rider: 80 },
  'wheel-loads': { bike: 'middleweight-roadster' },
  'braking-dive': { bike: 'middleweight-roadster', rider: 80 },
  stance: { bike: 'middleweight-roadster', rider: 80 },
  'rate-from-sag': { extended: 150, staticReading: 131.3, riderReading: 114.8, staticLoad: 100, riderLoad: 137.8, gas: 'sealed' },
}

test('each calculator in a chapter opens with the roadster', () => {
  const strange = chapters.flatMap((id) =>
    [...chapter(id).matchAll(/<Calculator id="([^"]+)"[^>]*?given=\{(\{[^}]*\})\}/g)].flatMap(([, calculator, given]) => {
      const expected = BIKE[calculator!]
      if (!expected) return []
      const own = parse(given!.replaceAll("'", '"').replace(/(\w+):/g, '"$1":')) as Record<string, unknown>
      const opens = { ...(defaultsOf(loadCalculator(calculator!)) as Record<string, unknown>), ...own }
      return Object.entries(expected)
        .filter(([input, value]) => opens[input] !== value)
        .map(([input, value]) => `${id}: ${calculator} opens with ${input} ${String(opens[input])}, not ${String(value)}`)
    }),
  )
  expect(strange).toEqual([])
})
