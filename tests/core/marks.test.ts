import { expect, test } from 'vitest'
import { compareMarks } from '../../src/core/index.ts'
import { near } from './near.ts'

test('compareMarks(…) is after less before, a share of the travel, and within the band when friction alone could have made it', () => {
  const { change, share, withinBand } = compareMarks({
    before: 0.039,
    after: 0.034,
    frictionBand: 0.006,
    travel: 0.12,
  })
  near(change, -0.005, 1e-15)
  near(share, -0.005 / 0.12, 1e-12)
  expect(withinBand).toBe(true)
  expect(compareMarks({ before: 0.039, after: 0.03, frictionBand: 0.006 })).toMatchObject({
    withinBand: false,
  })
  expect(compareMarks({ before: 0.039, after: 0.03, frictionBand: 0.006 })).not.toHaveProperty(
    'share',
  )
  expect(compareMarks({ before: 0.25, after: 0.5, frictionBand: 0.25 }).withinBand).toBe(true)
})

test('compareMarks(…) refuses what makes no sense', () => {
  const good = { before: 0.04, after: 0.03, frictionBand: 0.006 }
  const bad: [object, string][] = [
    [{ before: -1 }, 'before'],
    [{ after: NaN }, 'after'],
    [{ frictionBand: -0.001 }, 'frictionBand'],
    [{ travel: 0.005 }, 'travel'],
  ]
  for (const [change, parameter] of bad) {
    expect(() => compareMarks({ ...good, ...change }), parameter).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  }
})
