import type { Given } from './given.ts'

/** Halvings between two states: a verdict that holds over a 256th of the way is found. */
const HALVINGS = 8

const halfway = (one: Given, other: Given): Given =>
  Object.fromEntries(
    Object.entries(one).map(([id, value]) => [id, ((value as number) + (other[id] as number)) / 2]),
  )

/** Whether two states differ in one value alone. */
const areNeighbours = (one: Given, other: Given): boolean =>
  Object.keys(one).filter((id) => one[id] !== other[id]).length === 1

/**
 * Codes that a verdict has on the way between states where it differs, and nowhere at the states themselves: at an edge of a window one value leads from inside to outside.
 * `codeAt` tells the code of a state, `codes` those of `states`. Each new code is given with the code that it follows.
 */
function codesBetween(
  states: readonly Given[],
  codes: readonly (string | null)[],
  codeAt: (state: Given) => string | null,
): Map<string, string | null> {
  const known = new Set(codes)
  const found = new Map<string, string | null>()
  /** pairs of codes that were followed to where they meet, with nothing between */
  const touching = new Set<string>()
  const follow = (
    from: Given,
    first: string | null,
    to: Given,
    last: string | null,
    left: number,
  ) => {
    const pair = JSON.stringify([first, last].sort())
    if (first === last || touching.has(pair)) return
    if (left === 0) {
      touching.add(pair)
      return
    }
    const half = halfway(from, to)
    const code = codeAt(half)
    if (code !== null && !known.has(code)) {
      known.add(code)
      found.set(code, first)
    }
    follow(from, first, half, code, left - 1)
    follow(half, code, to, last, left - 1)
  }
  for (const [place, one] of states.entries())
    for (const [after, other] of states.slice(place + 1).entries()) {
      const [first = null, last = null] = [codes[place], codes[place + 1 + after]]
      if (first !== last && areNeighbours(one, other)) follow(one, first, other, last, HALVINGS)
    }
  return found
}

/** The codes that a verdict has at states and on the way between them, each new one after the code that it follows. */
export function withBetween(
  codes: readonly string[],
  ...asked: Parameters<typeof codesBetween>
): readonly string[] {
  const all = [...codes]
  for (const [code, after] of codesBetween(...asked))
    all.splice(after === null ? 0 : all.indexOf(after) + 1, 0, code)
  return all
}
