import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apart } from '../../src/drawing/apart.ts'

const ROOM = 4
const wanted = fc.array(
  fc.record({
    at: fc.double({ min: -50, max: 400, noNaN: true }),
    size: fc.double({ min: 1, max: 60, noNaN: true }),
  }),
  {
    minLength: 1,
    maxLength: 5,
  },
)
// five labels of 60 with room between them fit into 400
const [LOW, HIGH] = [0, 400]
/** Sums of a handful of numbers up to 400. */
const NEAR = 1e-9

test('apart leaves room between all labels and keeps them between the ends, in their order', () => {
  fc.assert(
    fc.property(wanted, (labels) => {
      const places = apart(labels, LOW, HIGH, ROOM)
      const order = labels.map((_, index) => index).sort((a, b) => labels[a]!.at - labels[b]!.at)
      let edge = LOW - ROOM
      for (const index of order) {
        expect(places[index]! - labels[index]!.size / 2).toBeGreaterThanOrEqual(edge + ROOM - NEAR)
        edge = places[index]! + labels[index]!.size / 2
      }
      expect(edge).toBeLessThanOrEqual(HIGH + NEAR)
    }),
  )
})

test('apart leaves alone what is apart already', () => {
  expect(
    apart(
      [
        { at: 100, size: 40 },
        { at: 40, size: 60 },
        { at: 300, size: 20 },
      ],
      LOW,
      HIGH,
      ROOM,
    ),
  ).toEqual([100, 40, 300])
})
