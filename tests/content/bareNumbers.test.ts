import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describe, expect, test } from 'vitest'
import { defaultsOf } from '../../src/machine/evaluate.ts'
import { isCalculatorId, loadCalculator } from '../../src/calculators/index.ts'

/* A figure in prose that the core can compute comes from <Value>. What may stand bare: what an example assumes (the values that the chapter gives to its
   calculators, and their defaults), and what is listed in bare-numbers.yaml with its reason. */

const NUMBER = /(?<![\w.,])(\d+(?:[.,]\d+)?)\s?(mm²\/s|mm²|mm|N\/mm|N·s\/m|kgf\/mm|lbf?\/in|kN|N|kg|cm³|cm²|bar|psi|kPa|MPa|GPa|°C|°F|°|%|m\/s²|m\/s|km\/h|ml|Hz|g\b)/g
const allowed = parse(readFileSync('tests/content/bare-numbers.yaml', 'utf8')) as Record<string, { number: string; why: string }[]>

/** The numbers that a chapter's calculators start from. */
function assumed(ids: readonly string[]): number[] {
  const definitions = ids.filter(isCalculatorId).map(loadCalculator)
  return definitions.flatMap((definition) => Object.values(defaultsOf(definition)).flatMap((value) => (typeof value === 'object' ? value.flat() : typeof value === 'number' ? [value] : [])))
}

function prose(id: string): { text: string; given: Set<number>; calculators: string[] } {
  const whole = readFileSync(`content/chapters/${id}.mdx`, 'utf8')
  const source = whole.replace(/^---\n[\s\S]*?\n---\n/, '')
  const { calculators } = parse(/^---\n([\s\S]*?)\n---\n/.exec(whole)![1]!) as { calculators: string[] }
  const given = new Set([...source.matchAll(/\{\{([\s\S]*?)\}\}/g)].flatMap(([, inside]) => [...inside!.matchAll(/-?\d+(?:\.\d+)?/g)].map((match) => Math.abs(Number(match[0])))))
  const text = source
    .replace(/<Derivation\b[\s\S]*?<\/Derivation>/g, '')
    .replace(/\$\$[\s\S]*?\$\$|\$[^$\n]*\$/g, '')
    .replace(/<[A-Z][^<>]*?\/>|<\/?[A-Za-z][^<>]*?>/g, ' · ')
  return { text, given, calculators }
}

const chapters = readdirSync('content/chapters').map((file) => file.replace('.mdx', ''))

describe.each(chapters.map((id) => [id] as const))('chapter %s', (id) => {
  test('has no bare number with a unit that the core could compute', async () => {
    const { text, given, calculators } = prose(id)
    for (const value of assumed(calculators)) given.add(Math.abs(value))
    const reasons = new Set((allowed[id] ?? []).map(({ number }) => number))
    const bare = [...text.matchAll(NUMBER)].filter(([whole, number]) => !given.has(Number(number!.replace(',', '.'))) && !reasons.has(whole)).map((match) => `${match[0]} in “…${text.slice(Math.max(0, match.index - 50), match.index + 30).replace(/\s+/g, ' ')}…”`)
    expect(bare).toEqual([])
  })
})

test('the list of allowed numbers names its chapters and reasons, and holds nothing that is not there', () => {
  for (const [id, entries] of Object.entries(allowed)) {
    expect(chapters).toContain(id)
    const { text } = prose(id)
    for (const { number, why } of entries) {
      expect(text, `${id}: ${number}`).toContain(number)
      expect(why.length).toBeGreaterThan(8)
    }
  }
})
