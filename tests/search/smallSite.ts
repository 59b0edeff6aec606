import type { TextIndex } from '../../src/search/find.ts'
import { prepareLexicon } from '../../src/search/lexicon.ts'
import type { Entry, Lexicon } from '../../src/search/lexicon.ts'
import { wordsOf } from '../../src/search/words.ts'
import { stem } from '../../src/search/stem.ts'

/* A site of eight pages, and an index over their texts that does what the real one does as far as it matters here: all words of one search must stand in a page. */

interface Page extends Entry {
  text: string
}

const pages: readonly Page[] = [
  {
    id: 'a',
    url: 'chapters/preload/',
    kind: 'chapter',
    title: 'If I wind in preload, what changes?',
    names: ['Preload and rate'],
    text: 'Preload lifts the bike. The fork spring keeps its rate. Preload again, preload.',
  },
  {
    id: 'b',
    url: 'procedures/support-the-front/',
    kind: 'procedure',
    title: 'Support the front',
    names: ['paddock stand'],
    text: 'Lift with the jack and let a stand hold the fork.',
  },
  {
    id: 'c',
    url: 'cautions/bike-can-fall/',
    kind: 'caution',
    signal: 'WARNING',
    title: 'Bike can fall',
    names: ['jack', 'topple'],
    text: 'A falling bike can crush you.',
  },
  {
    id: 'd',
    url: 'glossary/#yoke',
    kind: 'glossary',
    title: 'Yoke',
    names: ['triple clamp', 'triple tree'],
    text: 'The clamp that holds both fork tubes.',
  },
  {
    id: 'e',
    url: 'glossary/#preload',
    kind: 'glossary',
    title: 'Preload',
    names: ['pre-load'],
    text: 'Compression of the spring at full extension, in mm.',
  },
  {
    id: 'f',
    url: 'symptoms/#dives',
    kind: 'symptom',
    title: 'The front dives a lot when you brake',
    names: ['nose dive'],
    text: 'Weight on the front as you brake.',
  },
  {
    id: 'g',
    url: 'chapters/sag/',
    kind: 'chapter',
    title: 'Measure the front sag and know how sure you are',
    names: [],
    text: 'Sag sag sag. Measure the front sag.',
  },
  {
    id: 'h',
    url: 'procedures/measure-front-sag/',
    kind: 'procedure',
    title: 'Measure the front sag',
    names: [],
    text: 'Read the tube twice.',
  },
]

export const lexicon: Lexicon = prepareLexicon({
  stop: ['a', 'the', 'why', 'does', 'my', 'when', 'i', "what's", 'should', 'know', 'how'],
  light: ['bike', 'can', 'front'],
  english: ['sand'],
  synonyms: [
    ['yoke', 'triple clamp', 'triple tree'],
    ['preload', 'pre-load', 'initial compression'],
    ['N/mm', 'kg/mm', 'lb/in'],
  ],
  words:
    'preload sag front fork spring brake jack stand bike dives measure yoke should tube clamp swing arm weight rate suspension',
  entries: pages.map(({ text: _, ...entry }) => entry),
})

const rootsOf = (text: string): string[] => wordsOf(text).map(stem)

export const index: TextIndex = {
  async search(words) {
    const wanted = rootsOf(words ?? '')
    const scored = pages.map((page) => {
      const roots = rootsOf(page.text)
      const counts = wanted.map((root) => roots.filter((other) => other === root).length)
      return {
        page,
        score:
          words === null
            ? 1
            : counts.some((count) => count === 0)
              ? 0
              : counts.reduce((sum, count) => sum + count, 0),
      }
    })
    const results = scored
      .filter(({ score }) => score > 0)
      .map(({ page, score }) => ({
        id: page.id,
        score,
        data: async () => ({ content: page.text, anchors: [] }),
      }))
    return { results: results.sort((a, b) => b.score - a.score) }
  },
}
