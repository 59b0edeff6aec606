/** The same things in an order drawn from a stream of numbers from 0 up to 1 (Fisher and Yates, as Durstenfeld 1964 has it). */
export function shuffled<T>(things: readonly T[], random: () => number): T[] {
  const order = [...things]
  for (let last = order.length - 1; last > 0; last--) {
    const other = Math.floor(random() * (last + 1))
    ;[order[last], order[other]] = [order[other]!, order[last]!]
  }
  return order
}

/** One of several, drawn from the stream. */
export const drawn = <T>(things: readonly T[], random: () => number): T =>
  things[Math.floor(random() * things.length)]!
