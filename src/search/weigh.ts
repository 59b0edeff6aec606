import type { Alternative, Concept, Query } from './query.ts'

/** By entry id: how strongly the index finds some words in a text, from 0 to 1. */
export type TextScores = ReadonlyMap<string, number>

export interface Weighed {
  /** the query, its less telling alternatives moved further off */
  query: Query
  /** for each concept, how much it counts */
  rarity: readonly number[]
  /** for each concept, the best of its alternatives in each text */
  inText: readonly TextScores[]
}

/** A text that has some words once in passing counts as having them in part only. */
function rarityOf(text: TextScores, entries: number): number {
  const having = [...text.values()].reduce((sum, score) => sum + score, 0)
  return Math.log(1 + entries / (1 + having))
}

/** The rarity of a concept is that of the words as typed, or of the rarest other way to say it where no text has those. */
function rarityOfConcept(rarities: readonly number[], texts: readonly TextScores[]): number {
  if ((texts[0]?.size ?? 0) > 0) return rarities[0] ?? 0
  const known = rarities.filter((_, index) => (texts[index]?.size ?? 0) > 0)
  return Math.max(...(known.length > 0 ? known : rarities))
}

function weighConcept(
  { alternatives, weight }: Concept,
  texts: readonly TextScores[],
  entries: number,
): { concept: Concept; rarity: number; inText: TextScores } {
  const rarities = texts.map((text) => rarityOf(text, entries))
  const rarity = rarityOfConcept(rarities, texts)
  // “licensed” stands on every other page: as another word for “insurance” it must not count as if it were as rare
  const weighed = alternatives.map((each, index): Alternative => ({
    ...each,
    nearness: each.nearness * Math.min(1, (rarities[index] ?? rarity) / rarity),
  }))
  const inText = new Map<string, number>()
  for (const [index, text] of texts.entries()) {
    for (const [id, score] of text)
      inText.set(id, Math.max(inText.get(id) ?? 0, score * (weighed[index]?.nearness ?? 0)))
  }
  return { concept: { alternatives: weighed, weight }, rarity: weight * rarity, inText }
}

/** Weighs the words of a query by how few of the entries have them in their text, given the text scores of each alternative of each concept. */
export function weighQuery(
  { concepts, ...query }: Query,
  texts: readonly (readonly TextScores[])[],
  entries: number,
): Weighed {
  const weighed = concepts.map((concept, index) =>
    weighConcept(concept, texts[index] ?? [], entries),
  )
  return {
    query: { ...query, concepts: weighed.map(({ concept }) => concept) },
    rarity: weighed.map(({ rarity }) => rarity),
    inText: weighed.map(({ inText }) => inText),
  }
}
