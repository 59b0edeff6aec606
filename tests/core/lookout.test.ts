import { describe, expect, test } from 'vitest'
import type { Watch } from '../../src/core/end.ts'
import type { Stepper } from '../../src/core/integrate.ts'
import { eventLocator } from '../../src/core/lookout.ts'
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

describe('eventLocator', () => {
  test('eventLocator finds the share of a step at which a quantity rises or falls through 0, and names it', () => {
    const up = eventLocator([level(0.3)], step(0, (share) => share)) // prettier-ignore
    const found = up.next(0, 1)
    expectWithin(found?.share ?? NaN, 0.3, 1e-15)
    expect(found?.kind).toBe('bottoms')
    const down = eventLocator([level(0.3)], step(1, (share) => 1 - share)) // prettier-ignore
    const fell = down.next(0, 1)
    expectWithin(fell?.share ?? NaN, 0.7, 1e-15)
    expect(fell?.kind).toBe('leavesBottomStop')
  })

  test('eventLocator asks a quantity at the time inside the step', () => {
    const clock = eventLocator([level(0, { value: (time) => time - 5.5 })], step(0, () => 0)) // prettier-ignore
    expectWithin(clock.next(5, 2)?.share ?? NaN, 0.25, 1e-15)
  })

  test('eventLocator sees a quantity that has gone across by the middle of a step and come back by its end', () => {
    const there = eventLocator([level(0.75)], step(0, (share) => 4 * share * (1 - share))) // prettier-ignore
    expectWithin(there.next(0, 1)?.share ?? NaN, 0.25, 1e-15)
  })

  test('eventLocator tells the first of several, and the next in its turn', () => {
    const both = eventLocator([level(0.6), level(0.2, { rising: 'lands' })], step(0, (share) => share)) // prettier-ignore
    expect(both.next(0, 1)?.kind).toBe('lands')
    const second = both.next(0, 1)
    expect(second?.kind).toBe('bottoms')
    expectWithin(second?.share ?? NaN, 0.6, 1e-15)
  })

  test('eventLocator tells the first of several whatever their order, and of two at once the one listed first', () => {
    const ordered = eventLocator(
      [level(0.2, { rising: 'lands' }), level(0.6)],
      step(0, (share) => share),
    )
    expect(ordered.next(0, 1)?.kind).toBe('lands')
    const tied = eventLocator(
      [level(0.4, { rising: 'lands' }), level(0.4)],
      step(0, (share) => share),
    )
    expect(tied.next(0, 1)?.kind).toBe('lands')
    expect(
      eventLocator(
        [level(2), level(3)],
        step(0, (share) => share),
      ).next(0, 1),
    ).toBeNull()
  })

  test('eventLocator tells of the way back once it has told of the way there', () => {
    let path = (share: number): number => share
    const it = eventLocator([level(0.5)], step(0, (share) => path(share))) // prettier-ignore
    expect(it.next(0, 1)?.kind).toBe('bottoms')
    path = (share) => 1 - share
    expect(it.next(1, 1)?.kind).toBe('leavesBottomStop')
  })

  test('eventLocator finds nothing where nothing crosses, nor within the band, its edge included', () => {
    expect(eventLocator([], step(0, () => 0)).next(0, 1)).toBeNull() // prettier-ignore
    expect(eventLocator([level(2)], step(0, (share) => share)).next(0, 1)).toBeNull() // prettier-ignore
    // from −1 to the upper edge of the band
    const touching = eventLocator([level(1)], step(0, (share) => (1 + 1 / 1024) * share)) // prettier-ignore
    expect(touching.next(0, 1)).toBeNull()
  })

  test('eventLocator gives a quantity that starts at 0 no side, until it has settled on one', () => {
    const start = step(0.5 + 1 / 1024, (share) => 0.5 - share)
    const it = eventLocator([level(0.5)], start)
    expect(it.next(0, 1)).toBeNull()
    it.passed(1, Float64Array.of(0.5 - 1 / 1024, 0, 0, 0))
    expect(it.next(1, 1)).toBeNull()
    const turned = eventLocator([level(0.5)], step(0.5, (share) => 1 - share)) // prettier-ignore
    turned.passed(0, Float64Array.of(1, 0, 0, 0))
    expect(turned.next(0, 1)?.kind).toBe('leavesBottomStop')
    // settling does not change a side that is taken
    const taken = eventLocator([level(0.5)], step(0, (share) => share)) // prettier-ignore
    taken.passed(0, Float64Array.of(1, 0, 0, 0))
    expect(taken.next(0, 1)?.kind).toBe('bottoms')
  })

  test('eventLocator tells at once of a quantity that begins on the other side than it is meant to: a road that drops away', () => {
    const falling = eventLocator([level(0, { startSide: 1, falling: 'leavesRoad' })], step(-1, () => -1)) // prettier-ignore
    expect(falling.next(0, 1)).toEqual({ share: 0, kind: 'leavesRoad' })
    const nearer = eventLocator(
      [level(0, { startSide: 1, falling: 'leavesRoad' })],
      step(-2, (share) => share - 2),
    )
    expect(nearer.next(0, 1)).toEqual({ share: 0, kind: 'leavesRoad' })
  })
})
