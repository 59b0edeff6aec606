/* The plainest ways to find a place, for laws that are only known by their values. */

/** Between two places, the one up to which `isBefore` holds, by halving. */
export function halve(
  isBefore: (at: number) => boolean,
  [low, high]: readonly [number, number],
  rounds = 60,
): number {
  let [before, after] = [low, high]
  for (let i = 0; i < rounds; i++) {
    const middle = (before + after) / 2
    if (isBefore(middle)) before = middle
    else after = middle
  }
  return (before + after) / 2
}

/** Where a law comes within `close` of 0, by secants from two places. */
export function secant(
  of: (at: number) => number,
  [from, to]: readonly [number, number],
  close: number,
): number {
  let [a, b] = [from, to]
  let [ofA, ofB] = [of(a), of(b)]
  for (let i = 0; i < 20 && Math.abs(ofB) > close && ofB !== ofA; i++) {
    const next = b - (ofB * (b - a)) / (ofB - ofA)
    ;[a, ofA] = [b, ofB]
    ;[b, ofB] = [next, of(next)]
  }
  return b
}
