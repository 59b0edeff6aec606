import { describe, expect, test } from 'vitest'
import type { Watch } from '../../src/core/end.ts'
import type { Stepper } from '../../src/core/integrate.ts'
import { lookoutFor } from '../../src/core/lookout.ts'
import { expectWithin } from './tolerance.ts'

/** A stand-in for a step: the state that it starts from, and the first entry of the state at each share of it. */
function step(start: number, path: (share: number) => number): Stepper {
  const inside = (share: number, target: Float64Array): void => {
    target[0] = path(share)
  }
  return { y: Float64Array.of(start, 0, 0, 0), inside } as unknown as Stepper
}

const level = (at: number, kinds: Partial<Watch> = {}): Watch => ({
  value: (_, y) => y[0]! - at,
  band: 1 / 1024,
  rising: 'bottoms',
  falling: 'leavesBottomStop',
  ...kinds,
})

describe('lookoutFor', () => {
  test('lookoutFor finds the share of a step at which a quantity rises or falls through 0, and names it', () => {
    const up = lookoutFor([level(0.3)], step(0, (share) => share)) // prettier-ignore
    const found = up.first(0, 1)
    expectWithin(found?.share ?? NaN, 0.3, 1e-15)
    expect(found?.kind).toBe('bottoms')
    const down = lookoutFor([level(0.3)], step(1, (share) => 1 - share)) // prettier-ignore
    const fell = down.first(0, 1)
    expectWithin(fell?.share ?? NaN, 0.7, 1e-15)
    expect(fell?.kind).toBe('leavesBottomStop')
  })

  test('lookoutFor asks a quantity at the time inside the step', () => {
    const clock = lookoutFor([level(0, { value: (time) => time - 5.5 })], step(0, () => 0)) // prettier-ignore
    expectWithin(clock.first(5, 2)?.share ?? NaN, 0.25, 1e-15)
  })

  test('lookoutFor sees a quantity that has gone across by the middle of a step and come back by its end', () => {
    const there = lookoutFor([level(0.75)], step(0, (share) => 4 * share * (1 - share))) // prettier-ignore
    expectWithin(there.first(0, 1)?.share ?? NaN, 0.25, 1e-15)
  })

  test('lookoutFor tells the first of several, and the next in its turn', () => {
    const both = lookoutFor([level(0.6), level(0.2, { rising: 'lands' })], step(0, (share) => share)) // prettier-ignore
    expect(both.first(0, 1)?.kind).toBe('lands')
    const second = both.first(0, 1)
    expect(second?.kind).toBe('bottoms')
    expectWithin(second?.share ?? NaN, 0.6, 1e-15)
  })

  test('lookoutFor tells the first of several whatever their order, and of two at once the one listed first', () => {
    const ordered = lookoutFor(
      [level(0.2, { rising: 'lands' }), level(0.6)],
      step(0, (share) => share),
    )
    expect(ordered.first(0, 1)?.kind).toBe('lands')
    const tied = lookoutFor(
      [level(0.4, { rising: 'lands' }), level(0.4)],
      step(0, (share) => share),
    )
    expect(tied.first(0, 1)?.kind).toBe('lands')
    expect(
      lookoutFor(
        [level(2), level(3)],
        step(0, (share) => share),
      ).first(0, 1),
    ).toBeNull()
  })

  test('lookoutFor tells of the way back once it has told of the way there', () => {
    let path = (share: number): number => share
    const it = lookoutFor([level(0.5)], step(0, (share) => path(share))) // prettier-ignore
    expect(it.first(0, 1)?.kind).toBe('bottoms')
    path = (share) => 1 - share
    expect(it.first(1, 1)?.kind).toBe('leavesBottomStop')
  })

  test('lookoutFor finds nothing where nothing crosses, nor within the band, its edge included', () => {
    expect(lookoutFor([], step(0, () => 0)).first(0, 1)).toBeNull() // prettier-ignore
    expect(lookoutFor([level(2)], step(0, (share) => share)).first(0, 1)).toBeNull() // prettier-ignore
    // from −1 to the upper edge of the band
    const touching = lookoutFor([level(1)], step(0, (share) => (1 + 1 / 1024) * share)) // prettier-ignore
    expect(touching.first(0, 1)).toBeNull()
  })

  test('lookoutFor gives a quantity that starts at 0 no side, until it has settled on one', () => {
    const start = step(0.5 + 1 / 1024, (share) => 0.5 - share)
    const it = lookoutFor([level(0.5)], start)
    expect(it.first(0, 1)).toBeNull()
    it.settle(1, Float64Array.of(0.5 - 1 / 1024, 0, 0, 0))
    expect(it.first(1, 1)).toBeNull()
    const turned = lookoutFor([level(0.5)], step(0.5, (share) => 1 - share)) // prettier-ignore
    turned.settle(0, Float64Array.of(1, 0, 0, 0))
    expect(turned.first(0, 1)?.kind).toBe('leavesBottomStop')
    // settling does not change a side that is taken
    const taken = lookoutFor([level(0.5)], step(0, (share) => share)) // prettier-ignore
    taken.settle(0, Float64Array.of(1, 0, 0, 0))
    expect(taken.first(0, 1)?.kind).toBe('bottoms')
  })

  test('lookoutFor tells at once of a quantity that begins on the other side than it is meant to: a road that drops away', () => {
    const falling = lookoutFor([level(0, { startSide: 1, falling: 'leavesRoad' })], step(-1, () => -1)) // prettier-ignore
    expect(falling.first(0, 1)).toEqual({ share: 0, kind: 'leavesRoad' })
    const nearer = lookoutFor(
      [level(0, { startSide: 1, falling: 'leavesRoad' })],
      step(-2, (share) => share - 2),
    )
    expect(nearer.first(0, 1)).toEqual({ share: 0, kind: 'leavesRoad' })
  })
})
