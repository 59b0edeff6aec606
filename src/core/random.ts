/**
 * A repeatable stream of numbers from 0 up to 1, 1 left out, from a whole seed: the same seed gives the same numbers on every machine.
 * Source: xoshiro128** with splitmix seeds, Blackman and Vigna, ACM Transactions on Mathematical Software 47 (2021) 36 (from memory).
 */
export function randomStream(seed: number): () => number {
  const state = Uint32Array.from({ length: 4 }, (_, k) =>
    mixed((seed + Math.imul(k + 1, 0x9e3779b9)) >>> 0),
  )
  // All 0 would stay 0.
  if (state.every((word) => word === 0)) state[0] = 1
  // 53 bits, as many as a number between a half and 1 holds.
  return () => ((next(state) >>> 5) * 67108864 + (next(state) >>> 6)) / 9007199254740992
}

function mixed(word: number): number {
  let z = word
  z = Math.imul(z ^ (z >>> 16), 0x85ebca6b)
  z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35)
  return (z ^ (z >>> 16)) >>> 0
}

const rotated = (word: number, by: number): number => ((word << by) | (word >>> (32 - by))) >>> 0

function next(state: Uint32Array): number {
  const result = Math.imul(rotated(Math.imul(state[1]!, 5) >>> 0, 7), 9) >>> 0
  const shifted = state[1]! << 9
  state[2]! ^= state[0]!
  state[3]! ^= state[1]!
  state[1]! ^= state[2]!
  state[0]! ^= state[3]!
  state[2]! ^= shifted
  state[3] = rotated(state[3]!, 11)
  return result
}

/** A stream of numbers of normal distribution, mean 0 and standard deviation 1, from a stream between 0 and 1. Source: Box and Muller 1958 (from memory). */
export function normalStream(uniform: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform())
}
