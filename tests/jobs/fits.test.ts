import { describe, expect, test } from 'vitest'
import { fitOf, jointWithin } from '../../src/jobs/fits.ts'
import { reasonsFor } from '../../src/jobs/reasons.ts'

describe('as worked out', () => {
  test('adds two ± in squares', () => {
    // 3-4-5, JCGM 100, 5.1.2
    expect(jointWithin({ value: 0, within: 3 }, { value: 0, within: 4 })).toBeCloseTo(5, 12)
  })
  test('agrees inside the joint ±, and says which way it misses outside', () => {
    expect(fitOf({ value: 38, within: 3 }, { value: 33, within: 4 })).toBe('fits')
    expect(fitOf({ value: 38.1, within: 3 }, { value: 33, within: 4 })).toBe('more')
    expect(fitOf({ value: 27.9, within: 3 }, { value: 33, within: 4 })).toBe('less')
  })
})

describe('the reasons for a miss', () => {
  test('come in the order of what they explain', () => {
    const found = reasonsFor({ predicted: 33, band: 9, spread: 1, rate: 9 })
    expect(found.map(({ explains }) => explains)).toEqual(
      found.map(({ explains }) => explains).toSorted((a, b) => b - a),
    )
    // half of a band of 9 mm; a fork rests anywhere within it
    expect(found[0]).toMatchObject({ cause: 'friction', explains: 4.5, fromSheet: true })
    expect(found.at(-1)!.cause).toBe('tyre')
  })
  test('put the adjuster first where it was turned otherwise than worked out', () => {
    const [first] = reasonsFor({
      predicted: 33,
      band: 4,
      rate: 9,
      turnsSet: 9,
      turnsWanted: 4,
      perTurn: 1.25,
    })
    expect(first).toMatchObject({ cause: 'adjuster', explains: 6.25, fromSheet: true })
  })
  test('put the spacer first where it was cut otherwise than worked out', () => {
    const [first] = reasonsFor({
      predicted: 33,
      band: 4,
      rate: 9,
      spacerLeft: 112,
      spacerRight: 114,
      spacerWanted: 105,
    })
    expect(first).toMatchObject({ cause: 'spacer', explains: 8, fromSheet: true })
  })
  test('have one step of rate at the sag’s share of it', () => {
    // 0.5 N/mm of 10 N/mm are 5 % of a sag of 40 mm
    expect(
      reasonsFor({ predicted: 40, rate: 10 }).find(({ cause }) => cause === 'label')!.explains,
    ).toBeCloseTo(2, 12)
  })
})
