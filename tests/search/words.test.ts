import { describe, expect, it } from 'vitest'
import { typedWords, wordsOf } from '../../src/search/words.ts'

const typed = (query: string): string[] => typedWords(query).map(({ word }) => word)

describe('wordsOf', () => {
  it('wordsOf gives small letters without accents, apostrophes and marks', () => {
    expect(wordsOf("The maker’s “Café”, rider's: end.")).toEqual([
      'the',
      'maker',
      'cafe',
      'rider',
      'end',
    ])
  })
  it('wordsOf joins a word across its hyphen or stroke, as the index does', () => {
    expect(wordsOf('Pre-load in N/mm, 9.5')).toEqual(['preload', 'in', 'nmm', '95'])
  })
  it('wordsOf of nothing but marks is empty', () => {
    expect(wordsOf(' — … ?')).toEqual([])
  })
})

describe('typedWords', () => {
  it('typedWords keeps the parts of a hyphenated word beside the whole', () => {
    expect(typedWords('top-out')).toEqual([{ word: 'topout', parts: ['top', 'out'] }])
  })
  it('typedWords takes a number from the unit written against it', () => {
    expect(typed('9N/mm')).toEqual(['9', 'nmm'])
    expect(typed('10mm')).toEqual(['10', 'mm'])
    expect(typed('180lbs')).toEqual(['180', 'lbs'])
  })
  it('typedWords leaves an oil grade whole', () => {
    expect(typed('10w oil')).toEqual(['10w', 'oil'])
  })
  it('typedWords reads a marking on a tyre wall as a tyre size', () => {
    for (const marking of ['120/70-17', '120/70 R17', '120/70ZR17', '120/70 17'])
      expect(typed(marking)).toEqual(['tyre', 'size'])
  })
  it('typedWords of an empty field is empty', () => {
    expect(typedWords('  ?! ')).toEqual([])
  })
})
