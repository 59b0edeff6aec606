import fc from 'fast-check'

const STEPS = 1e6

/** Numbers spread evenly from one end to the other, both included: drawn as a double, one that may be 0 would nearly always lie next to it. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((step) => min + ((max - min) * step) / STEPS)

const point = fc.tuple(
  fc.double({ min: -100, max: 100, noNaN: true }),
  fc.double({ min: -100, max: 100, noNaN: true }),
)

/** Three to twenty points that do not all stand at one place along x. */
export const cloud = fc
  .array(point, { minLength: 3, maxLength: 20 })
  .filter((points) => Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x)) > 1)
