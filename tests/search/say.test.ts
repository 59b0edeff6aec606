import { describe, expect, it } from 'vitest'
import { readKinds } from '../../src/search/kinds.ts'
import { sayCorrections, sayCount } from '../../src/search/say.ts'

describe('sayCount', () => {
  it('sayCount tells none, one and several apart', () => {
    expect(sayCount(0, 'jack')).toBe('Nothing found for “jack”.')
    expect(sayCount(1, 'jack')).toBe('1 result for “jack”.')
    expect(sayCount(12, 'jack')).toBe('12 results for “jack”.')
  })
})

describe('sayCorrections', () => {
  it('sayCorrections says what was searched for and what was written', () => {
    expect(sayCorrections([{ wrote: 'preloda', searched: 'preload' }])).toBe(
      'Searched for preload; you wrote preloda.',
    )
  })
  it('sayCorrections is silent where nothing was corrected', () => {
    expect(sayCorrections([])).toBe('')
  })
})

describe('readKinds', () => {
  it('readKinds leaves out names that are no kinds', () => {
    expect([...readKinds(['caution', 'nonsense', ''])]).toEqual(['caution'])
  })
})
