import { expect, test } from 'vitest'
import { sagFromMarks } from '../../src/core/index.ts'
import { near } from './near.ts'

test('sagFromMarks(…) is extended less the mean of both settled readings, and the band is their difference', () => {
  const { sag, frictionBand, share } = sagFromMarks({
    extended: 0.15,
    settledDown: 0.108,
    settledUp: 0.114,
    travel: 0.12,
  })
  near(sag, 0.039, 1e-15)
  near(frictionBand, 0.006, 1e-15)
  near(share, 0.325, 1e-12)
})

test('sagFromMarks(…) has no share without a travel', () => {
  expect(sagFromMarks({ extended: 0.15, settledDown: 0.11, settledUp: 0.11 })).not.toHaveProperty(
    'share',
  )
})

test('sagFromMarks(…) takes readings that agree, and a bike that does not sag', () => {
  expect(
    sagFromMarks({ extended: 0.15, settledDown: 0.15, settledUp: 0.15, travel: 0.12 }),
  ).toEqual({ sag: 0, frictionBand: 0, share: 0 })
})

test('sagFromMarks(…) allows a sag of the whole travel', () => {
  expect(
    sagFromMarks({ extended: 0.25, settledDown: 0.125, settledUp: 0.125, travel: 0.125 }),
  ).toEqual({ sag: 0.125, frictionBand: 0, share: 1 })
})

test('sagFromMarks(…) refuses readings in the wrong order and a sag above the travel', () => {
  const good = { extended: 0.15, settledDown: 0.108, settledUp: 0.114 }
  const bad: [object, string][] = [
    [{ settledDown: 0.116 }, 'settledUp'],
    [{ settledUp: 0.16 }, 'extended'],
    [{ extended: 0.112 }, 'extended'],
    [{ settledDown: -0.01 }, 'settledDown'],
    [{ settledUp: NaN }, 'settledUp'],
    [{ extended: Infinity }, 'extended'],
    [{ travel: 0.03 }, 'travel'],
    [{ travel: 0 }, 'travel'],
  ]
  for (const [change, parameter] of bad) {
    expect(() => sagFromMarks({ ...good, ...change }), parameter).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  }
})
