import { describe, expect, it } from 'vitest'
import { readQuery } from '../../src/search/query.ts'
import { lexicon } from './smallSite.ts'

/** The first way of saying each concept. */
const said = (text: string): string[] =>
  readQuery(text, lexicon).concepts.map(({ alternatives }) => alternatives[0]!.words.join(' '))

describe('readQuery', () => {
  it('readQuery keeps the words of a question that carry meaning', () => {
    expect(said('Why does my fork dive when I brake?')).toEqual(['fork', 'dive', 'brake'])
  })
  it('readQuery keeps stop words where there is nothing else', () => {
    expect(said('how')).toEqual(['how'])
  })
  it('readQuery reads a phrase of the synonyms as one thing, with its other names further off', () => {
    const [concept, ...others] = readQuery('triple clamps', lexicon).concepts
    expect(others).toEqual([])
    expect(concept!.alternatives.map(({ words }) => words.join(' '))).toEqual([
      'triple clamps',
      'yoke',
      'triple tree',
    ])
    expect(
      concept!.alternatives.every(({ nearness }, index) =>
        index === 0 ? nearness === 1 : nearness < 1,
      ),
    ).toBe(true)
  })
  it('readQuery finds the synonyms of a single word', () => {
    expect(
      readQuery('yokes', lexicon).concepts[0]!.alternatives.map(({ words }) => words.join(' ')),
    ).toContain('triple clamp')
  })
  it.each(['pre-load', 'pre load', 'preload', 'PRELOAD'])(
    'readQuery reads “%s” as preload',
    (text) => {
      const { concepts, corrections } = readQuery(text, lexicon)
      expect(concepts).toHaveLength(1)
      expect(concepts[0]!.alternatives[0]!.words).toEqual(['preload'])
      expect(corrections).toEqual([])
    },
  )
  it('readQuery corrects one slip and says what was written', () => {
    const { concepts, corrections } = readQuery('preloda', lexicon)
    expect(concepts[0]!.alternatives[0]!.words).toEqual(['preload'])
    expect(corrections).toEqual([{ wrote: 'preloda', searched: 'preload' }])
  })
  it('readQuery says nothing of a slip in a stop word, which is not searched for', () => {
    const { concepts, corrections } = readQuery('shoud fork', lexicon)
    expect(concepts).toHaveLength(1)
    expect(corrections).toEqual([])
  })
  it('readQuery leaves a word of the language alone beside words that the site knows, and corrects a slip there', () => {
    for (const text of ['fork parm', 'spring lack'])
      expect(readQuery(text, lexicon).corrections, text).toEqual([])
    for (const [text, searched] of [
      ['parm', 'arm'],
      ['lack', 'jack'],
      ['fork preloda', 'preload'],
      ['fork brske', 'brake'],
    ] as const)
      expect(readQuery(text, lexicon).corrections.map((each) => each.searched)).toEqual([searched])
  })
  it('readQuery takes a word of the list of words for no slip, even alone', () => {
    expect(readQuery('sand', lexicon).corrections).toEqual([])
    expect(readQuery('sstand', lexicon).corrections).toHaveLength(1)
  })
  it('readQuery does not correct a form of a known word', () => {
    expect(readQuery('springs braked', lexicon).corrections).toEqual([])
  })
  it('readQuery takes a beginning for the word that it begins, without calling it a mistake', () => {
    const { concepts, corrections } = readQuery('suspen', lexicon)
    expect(concepts[0]!.alternatives[0]!.words).toEqual(['suspension'])
    expect(corrections).toEqual([])
  })
  it('readQuery takes two words apart that were run together', () => {
    expect(said('swingarm')).toEqual(['swing arm'])
  })
  it('readQuery lets a number count for little and a light word for a quarter', () => {
    const weights = readQuery('9 fork bike', lexicon).concepts.map(({ weight }) => weight)
    expect(weights[0]!).toBeLessThan(weights[2]!)
    expect(weights.slice(1)).toEqual([1, 0.25])
  })
  it('readQuery knows a unit by its other names', () => {
    expect(
      readQuery('0.9kg/mm', lexicon).concepts[1]!.alternatives.map(({ words }) => words.join(' ')),
    ).toEqual(['kgmm', 'kg mm', 'nmm', 'lbin'])
  })
  it('readQuery keeps a word that nothing explains', () => {
    expect(said('xylophone')).toEqual(['xylophone'])
  })
  it('readQuery of an empty field asks for nothing', () => {
    expect(readQuery('   ', lexicon)).toEqual({ concepts: [], corrections: [], number: false })
  })
})
