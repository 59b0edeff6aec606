import { describe, expect, it } from 'vitest'
import { find } from '../../src/search/find.ts'
import type { Kind } from '../../src/search/lexicon.ts'
import { index, lexicon } from './smallSite.ts'

const urls = async (text: string, kinds: Kind[] = []): Promise<string[]> =>
  (await find(text, index, lexicon, new Set(kinds))).ranked.map(({ entry }) => entry.url)

describe('find', () => {
  it('find puts the procedure above the chapter for the words of its title', async () => {
    expect((await urls('measure the front sag')).slice(0, 2)).toEqual([
      'procedures/measure-front-sag/',
      'chapters/sag/',
    ])
  })
  it('find puts a caution that is known by a word above a page that has it in its text', async () => {
    expect((await urls('jack')).slice(0, 2)).toEqual([
      'cautions/bike-can-fall/',
      'procedures/support-the-front/',
    ])
  })
  it('find reaches an entry by a name that its text lacks', async () => {
    expect((await urls('triple tree'))[0]).toBe('glossary/#yoke')
  })
  it('find puts the title that says nothing else first', async () => {
    expect((await urls('preload'))[0]).toBe('glossary/#preload')
  })
  it('find answers a whole question by the words that are rare', async () => {
    expect((await urls('why does my front dive when I brake'))[0]).toBe('symptoms/#dives')
  })
  it('find answers a question with one letter wrong', async () => {
    const { ranked, query } = await find('preloud', index, lexicon)
    expect(ranked[0]?.entry.url).toBe('glossary/#preload')
    expect(query.corrections).toHaveLength(1)
  })
  it('find gives only the kinds asked for', async () => {
    expect(await urls('preload', ['chapter'])).toEqual(['chapters/preload/'])
  })
  it('find does not ask the index for a word that no page has, for which it would give pages with its beginning', async () => {
    const asked: (string | null)[] = []
    const watched = {
      search: async (words: string | null) => {
        asked.push(words)
        return index.search(words === 'jackets' ? 'jack' : words)
      },
    }
    expect((await find('jackets', watched, lexicon)).ranked).toEqual([])
    expect(asked).toEqual([])
    expect((await find('jack', watched, lexicon)).ranked).not.toEqual([])
  })
  it('find gives nothing for words that no page has', async () => {
    expect(await urls('xylophone')).toEqual([])
  })
  it('find loads the text of what it found, even where only a name was found', async () => {
    const { load } = await find('triple tree', index, lexicon)
    expect((await load('d'))?.content).toContain('both fork tubes')
    expect(await load('no such')).toBeUndefined()
  })
})
