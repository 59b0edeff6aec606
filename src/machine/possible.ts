import type { Given } from './given.ts'
import type { QuantityInput } from './statement.ts'

/** An input that is not known, and the ends and middle of the range that stands in for it. */
export interface Unknown {
  id: string
  low: number
  middle: number
  high: number
}

type Level = 'low' | 'middle' | 'high'

/** Up to so many unknowns ends and middles are combined (81 states), so that a result with its extreme in between is met as well. */
const MOST_WITH_MIDDLES = 4
/** Up to so many unknowns every combination of ends is tried (256 states). */
const MOST_CORNERS = 8
/** States for what is past that. */
const SAMPLED = 256

/** The range of an input that is not known, in the definition's unit. */
export function unknownOf(
  id: string,
  { typical, range }: Pick<QuantityInput, 'typical' | 'range'>,
): Unknown {
  const [low, high] = typical ?? range
  return { id, low, middle: (low + high) / 2, high }
}

const stateOf = (unknowns: readonly Unknown[], levels: readonly Level[]): Given =>
  Object.fromEntries(
    unknowns.map((unknown, place) => [unknown.id, unknown[levels[place] ?? 'middle']]),
  )

/** Every combination of levels for so many unknowns, from each at the first level to each at the last. */
function combinations(count: number, levels: readonly Level[]): Level[][] {
  return Array.from({ length: levels.length ** count }, (_, index) =>
    Array.from(
      { length: count },
      (_, place) => levels[Math.floor(index / levels.length ** place) % levels.length]!,
    ),
  )
}

/** Each unknown alone at its ends, the others in the middle. */
const alone = (unknowns: readonly Unknown[]): Given[] =>
  unknowns.flatMap((_, place) =>
    (['low', 'high'] as const).map((end) =>
      stateOf(
        unknowns,
        unknowns.map((_, other) => (other === place ? end : 'middle')),
      ),
    ),
  )

/** The fractional parts of multiples of the roots of the first primes: a sequence that fills a space evenly (Weyl), the same every time. */
const PRIMES = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53]
const evenly = (index: number, place: number): number =>
  ((index + 1) * Math.sqrt(PRIMES[place % PRIMES.length]!)) % 1

/** For more unknowns than there can be corners of: the corners of the eight that move the lead most, with the rest in the middle and at ends spread evenly. */
function strongest(unknowns: readonly Unknown[], weight: (given: Given) => number): Given[] {
  const moves = unknowns.map((unknown, place) => {
    const [low, high] = alone([unknown])
    const middle = stateOf(unknowns, [])
    return { place, by: Math.abs(weight({ ...middle, ...high }) - weight({ ...middle, ...low })) }
  })
  moves.sort((a, b) => b.by - a.by || a.place - b.place)
  const first = moves.slice(0, MOST_CORNERS).map(({ place }) => unknowns[place]!)
  const rest = moves.slice(MOST_CORNERS).map(({ place }) => unknowns[place]!)
  const corners = combinations(first.length, ['low', 'high']).map((levels) =>
    stateOf(first, levels),
  )
  const resting = stateOf(rest, [])
  const spread = corners.slice(0, SAMPLED).map((corner, index) => ({
    ...corner,
    ...stateOf(
      rest,
      rest.map((_, place) => (evenly(index, place) < 0.5 ? 'low' : 'high')),
    ),
  }))
  return [...corners.map((corner) => ({ ...corner, ...resting })), ...spread, ...alone(unknowns)]
}

/**
 * The states that stand for all that unknown inputs leave open, the middle of each range first: all unknowns at once, never one at a time, so that
 * one unknown more does not make the answer surer. `weight` tells the lead result of a state where more are unknown than can be combined.
 */
export function possibleStates(
  unknowns: readonly Unknown[],
  weight: (given: Given) => number,
): Given[] {
  const middle = stateOf(unknowns, [])
  if (unknowns.length <= MOST_WITH_MIDDLES) {
    const grid = combinations(unknowns.length, ['low', 'middle', 'high']).map((levels) =>
      stateOf(unknowns, levels),
    )
    return [middle, ...grid.filter((_, place) => place !== grid.length >> 1)]
  }
  if (unknowns.length > MOST_CORNERS) return [middle, ...strongest(unknowns, weight)]
  return [
    middle,
    ...combinations(unknowns.length, ['low', 'high']).map((levels) => stateOf(unknowns, levels)),
    ...alone(unknowns),
  ]
}
