import fc from 'fast-check'

const STEPS = 1e6

/** Numbers spread evenly from one end to the other, both included: drawn as a double, one that may be 0 would nearly always lie next to it. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS)
