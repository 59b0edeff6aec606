import { describe, expect, test } from 'vitest'
import { stepHash } from '../../src/record/stepHash.ts'

describe('stepHash(step)', () => {
  test('stepHash of equal words is equal, whatever the line breaks', () => {
    expect(stepHash({ do: 'Wipe the  tube\nclean.', cautions: [] })).toBe(
      stepHash({ do: 'Wipe the tube clean. ', cautions: [] }),
    )
  })

  test.each([
    ['another word', { do: 'Wipe the tube dry.', cautions: [] }],
    ['another caution', { do: 'Wipe the tube clean.', cautions: ['waste-oil'] }],
    ['a detail', { do: 'Wipe the tube clean.', detail: 'With a cloth.', cautions: [] }],
  ])('stepHash tells %s', (_, step) => {
    expect(stepHash(step)).not.toBe(stepHash({ do: 'Wipe the tube clean.', cautions: [] }))
  })

  test('stepHash is FNV-1a: the published hash of "a" is af63dc4c8601ec8c', () => {
    // Fowler, Noll and Vo's test vectors, IETF draft-eastlake-fnv, appendix C; from memory. The step's two line breaks are hashed after the "a", one byte each.
    const mask = 0xffffffffffffffffn
    let hash = 0xaf63dc4c8601ec8cn
    for (const byte of [10n, 10n]) hash = ((hash ^ byte) * 0x100000001b3n) & mask
    expect(stepHash({ do: 'a', cautions: [] })).toBe(hash.toString(36))
  })
})
