import { describe, expect, it } from 'vitest'
import { wordsByUse } from '../../src/build/searchIndex.ts'
import { entriesOf } from '../../src/search/entries.ts'

const nothing = {
  chapters: [],
  cautions: [],
  procedures: [],
  calculators: [],
  lessons: [],
  jobs: [],
  glossary: [],
  symptoms: [],
}

describe('entriesOf', () => {
  it('entriesOf gives glossary entries and symptoms an address and a text of their own', () => {
    const entries = entriesOf({
      ...nothing,
      glossary: [
        {
          id: 'yoke',
          data: { term: 'Yoke', also: ['triple clamp'], short: 'It holds both tubes.' },
        },
      ],
      symptoms: [
        {
          id: 'dives',
          data: {
            feel: 'It dives',
            also: [],
            causes: [{ cause: 'Soft springs', measure: 'Measure sag', shows: 'Much sag' }],
            stop: 'If it knocks, stop.',
          },
        },
      ],
    })
    expect(entries[0]).toEqual({
      url: 'glossary/#yoke',
      kind: 'glossary',
      title: 'Yoke',
      names: ['triple clamp'],
      text: 'Yoke. It holds both tubes. Also: triple clamp.',
    })
    expect(entries[1]).toMatchObject({
      url: 'symptoms/dives/',
      text: 'It dives. Soft springs. Measure sag. Much sag. If it knocks, stop.',
    })
  })
  it('entriesOf knows a chapter by its short name, its words and the wrong ideas that it answers, and leaves its text to the page', () => {
    const [entry] = entriesOf({
      ...nothing,
      chapters: [
        {
          id: 'sag',
          data: {
            title: 'Where does it settle?',
            name: 'Sag',
            words: ['sink'],
            wrong: ['Sag is exact'],
          },
        },
      ],
    })
    expect(entry).toEqual({
      url: 'chapters/sag/',
      kind: 'chapter',
      title: 'Where does it settle?',
      names: ['Sag', 'sink', 'Sag is exact'],
    })
  })
  it('entriesOf takes the id for a name where the title lacks its words', () => {
    const names = (id: string, title: string): readonly string[] =>
      entriesOf({ ...nothing, procedures: [{ id, data: { title, words: ['jack'] } }] })[0]!.names
    expect(names('support-the-front', 'Support the front')).toEqual(['jack'])
    expect(names('steering-modes', 'What is trail for?')).toEqual(['steering modes', 'jack'])
  })
  it('entriesOf carries the signal word of a caution', () => {
    const [entry] = entriesOf({
      ...nothing,
      cautions: [{ id: 'x', data: { title: 'Bike can fall', words: [], signal: 'WARNING' } }],
    })
    expect(entry?.signal).toBe('WARNING')
  })
})

describe('wordsByUse', () => {
  it('wordsByUse puts the most used word first and leaves short words and figures out', () => {
    expect(wordsByUse(['The fork, a fork on 120 mm', 'the fork'])).toEqual(['fork', 'the'])
  })
  it('wordsByUse keeps one form of a word, the most used', () => {
    expect(wordsByUse(['springs springs spring yoke'])).toEqual(['springs', 'yoke'])
  })
})
