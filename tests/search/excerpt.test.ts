import { describe, expect, it } from 'vitest'
import { passages } from '../../src/search/excerpt.ts'
import type { Passage } from '../../src/search/excerpt.ts'
import { readQuery } from '../../src/search/query.ts'
import { lexicon } from './smallSite.ts'

const intro = 'Support the front. The wheel hangs free and the bike stays where it is.'
const first =
  'Choose the floor. A hard floor holds a stand. Gravel lets it sink. Tarmac on a hot day does too, and so does grass after rain. Leave clear space on every side, so that you can step away from a bike that begins to lean.'
const second =
  'Lift it. Lift with the jack, and let a stand hold the fork. Then rock the bike by hand.'
const content = `${intro} ${first} ${second}`
const wordsIn = (text: string): number => text.split(' ').length
const page = {
  content,
  anchors: [
    { element: 'h2', id: 'floor', text: 'Choose the floor.', location: wordsIn(intro) },
    { element: 'h2', id: 'lift', text: 'Lift it.', location: wordsIn(intro) + wordsIn(first) },
    { element: 'div', id: 'box', text: 'Lift', location: wordsIn(intro) + wordsIn(first) },
  ],
}
const text = ({ pieces }: Passage): string => pieces.map((piece) => piece.text).join('')
const cut = (query: string): ReturnType<typeof passages> =>
  passages(page, 'Support the front', readQuery(query, lexicon))

describe('passages', () => {
  it('passages begins at the sentence that names most of the query', () => {
    expect(text(cut('jack stand').passage)).toMatch(
      /^Lift with the jack, and let a stand hold the fork\./,
    )
  })
  it('passages marks the words found, without the spaces and in every form', () => {
    const found = cut('jacks fork').passage.pieces.filter((piece) => piece.found)
    expect(found.map((piece) => piece.text)).toEqual(['jack,', 'fork.'])
  })
  it('passages leaves the title out and says the beginning where nothing is found', () => {
    const { passage, sections } = cut('xylophone')
    expect(text(passage)).toMatch(/^The wheel hangs free/)
    expect(passage.share).toBe(0)
    expect(sections).toEqual([])
  })
  it('passages names the heading under which the answer stands', () => {
    expect(cut('jack').sections.map(({ id, heading }) => [id, heading])).toEqual([
      ['lift', 'Lift it.'],
    ])
  })
  it('passages gives a text back whole, word for word, up to its end', () => {
    expect(content).toContain(text(cut('jack').passage).replace(' …', ''))
  })
  it('passages shows the number where the question asks for one, and not where it does not', () => {
    const sag = {
      content:
        'Sag is how far the bike sinks. It is measured both ways. Many things are said about it in the pits and in the shop, and few of them with a figure beside them at all. With the rider on, sag is 25 to 33 % of the travel.',
      anchors: [],
    }
    const said = (query: string): string =>
      text(passages(sag, 'Sag', readQuery(query, lexicon)).passage)
    expect(said('how much sag')).toMatch(/25 to 33 %/)
    expect(said('sag')).not.toMatch(/25 to 33 %/)
  })
  it('passages bears a page without words', () => {
    expect(
      passages({ content: '', anchors: [] }, 'Empty', readQuery('jack', lexicon)).passage.share,
    ).toBe(0)
  })
})
