import { describe, expect, it } from 'vitest'
import type { Query } from '../../src/search/query.ts'
import { weighQuery } from '../../src/search/weigh.ts'

const way = (
  word: string,
  nearness: number,
): Query['concepts'][number]['alternatives'][number] => ({ words: [word], roots: [word], nearness })
const query: Query = {
  concepts: [
    { alternatives: [way('insurance', 1), way('licensed', 0.8)], weight: 1 },
    { alternatives: [way('bike', 1)], weight: 0.25 },
  ],
  corrections: [],
  number: false,
}
const everywhere = new Map(Array.from({ length: 50 }, (_, index) => [`page-${index}`, 1]))
const weigh = (insurance: Map<string, number>): ReturnType<typeof weighQuery> =>
  weighQuery(query, [[insurance, everywhere], [everywhere]], 50)

describe('weighQuery', () => {
  it('weighQuery lets a word that few texts have count for more, by its weight', () => {
    const { rarity } = weigh(new Map([['page-1', 1]]))
    // ln(1 + 50/2) = 3.26 and a quarter of ln(1 + 50/51) = 0.17, from the definition
    expect(Math.abs(rarity[0]! - Math.log(26))).toBeLessThan(1e-12)
    expect(Math.abs(rarity[1]! - 0.25 * Math.log(1 + 50 / 51))).toBeLessThan(1e-12)
  })
  it('weighQuery moves another word further off where it is commoner than the word as typed', () => {
    const { query: weighed, inText } = weigh(new Map([['page-1', 1]]))
    const [asTyped, other] = weighed.concepts[0]!.alternatives
    expect(asTyped!.nearness).toBe(1)
    expect(other!.nearness).toBeLessThan(0.2)
    expect(inText[0]!.get('page-1')).toBe(1)
    expect(inText[0]!.get('page-2')).toBe(other!.nearness)
  })
  it('weighQuery takes the rarity of the other words where no text has the word as typed', () => {
    const { query: weighed } = weigh(new Map())
    expect(weighed.concepts[0]!.alternatives[1]!.nearness).toBe(0.8)
  })
  it('weighQuery counts a text that has a word in passing for a part', () => {
    expect(weigh(new Map([['page-1', 0.2]])).rarity[0]!).toBeGreaterThan(
      weigh(new Map([['page-1', 1]])).rarity[0]!,
    )
  })
})
