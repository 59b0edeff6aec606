/** What stands along a line: where its middle wants to be, and how much room it takes. */
interface Wanted {
  at: number
  size: number
}

/**
 * Moves labels along one line, as little as it takes, until none touches its neighbour and all lie between two ends, in the order in which they
 * want to stand. Where there is no room for all they touch each other and overrun the far end.
 */
export function apart(wanted: readonly Wanted[], low: number, high: number, room = 4): number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => wanted[a]!.at - wanted[b]!.at)
  const places = new Array<number>(wanted.length).fill(0)
  let edge = low
  for (const index of order) {
    const { at, size } = wanted[index]!
    places[index] = Math.max(at, edge + size / 2)
    edge = places[index] + size / 2 + room
  }
  let limit = high
  for (const index of [...order].reverse()) {
    const { size } = wanted[index]!
    if (places[index]! + size / 2 > limit) places[index] = limit - size / 2
    limit = places[index]! - size / 2 - room
  }
  return places
}
