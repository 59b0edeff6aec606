import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { looksLikeSlip, nearestWord, slips } from '../../src/search/spelling.ts'

const vocabulary = ['preload', 'sag', 'fork', 'stanchion', 'damping', 'brake', 'viscosity', 'form']
const letters = fc.string({ unit: fc.constantFrom(...'abcde'), maxLength: 7 })

describe('slips', () => {
  it.each([
    ['preload', 'preload', 0],
    ['preloud', 'preload', 1],
    ['prload', 'preload', 1],
    ['prreload', 'preload', 1],
    ['perload', 'preload', 1],
    ['perloud', 'preload', 2],
  ])('slips from %s to %s are %i', (a, b, count) => {
    expect(slips(a, b, 3)).toBe(count)
  })
  it('slips stops counting one above the limit', () => {
    expect(slips('abcdefg', 'tuvwxyz', 2)).toBe(3)
    expect(slips('a', 'abcdefg', 1)).toBe(2)
  })
  it('slips counts the same in both directions, and nothing for a word against itself', () => {
    fc.assert(
      fc.property(letters, letters, (a, b) => {
        expect(slips(a, b, 8)).toBe(slips(b, a, 8))
        expect(slips(a, a, 8)).toBe(0)
        expect(slips(a, b, 8)).toBeGreaterThanOrEqual(Math.abs(a.length - b.length))
      }),
    )
  })
})

describe('nearestWord', () => {
  it('nearestWord finds the word behind one slip', () => {
    expect(nearestWord('preloda', vocabulary)).toBe('preload')
    expect(nearestWord('viscocity', vocabulary)).toBe('viscosity')
  })
  it('nearestWord finds the word behind two slips only if it is long', () => {
    expect(nearestWord('stantion', vocabulary)).toBe('stanchion')
    expect(nearestWord('barek', vocabulary)).toBeUndefined()
  })
  it('nearestWord prefers the same first letter, then the more used word', () => {
    expect(nearestWord('fokr', ['work', 'pork', 'fork'])).toBe('fork')
    expect(nearestWord('forj', vocabulary)).toBe('fork')
  })
  it('nearestWord leaves words of three letters or fewer, and words with figures, alone', () => {
    expect(nearestWord('sga', vocabulary)).toBeUndefined()
    expect(nearestWord('10ww', ['10w'])).toBeUndefined()
  })
})

describe('looksLikeSlip', () => {
  it.each([
    ['preloda', 'preload', 'two letters swapped'],
    ['brske', 'brake', 'a key beside the right one'],
    ['sprong', 'spring', 'a vowel for a vowel'],
    ['damoing', 'damping', 'a key beside the right one'],
    ['shoud', 'should', 'a letter left out'],
    ['forkk', 'fork', 'a letter twice'],
    ['vscosity', 'viscosity', 'a long word'],
  ])('looksLikeSlip takes %s for %s: %s', (word, meant) => {
    expect(looksLikeSlip(word, meant)).toBe(true)
  })
  it.each([
    ['track', 'crack'],
    ['vague', 'value'],
    ['glue', 'blue'],
    ['bridge', 'ridge'],
    ['rain', 'rail'],
  ])('looksLikeSlip leaves %s beside %s', (word, meant) => {
    expect(looksLikeSlip(word, meant)).toBe(false)
  })
})
