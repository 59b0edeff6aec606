import { DOMParser } from 'linkedom'
import { expect, test } from 'vitest'
import { atomFeed, newestFirst } from '../../src/build/feed.ts'

const built = new Date('2030-05-06T00:00:00Z')
const editions = [
  { id: 'next', data: { title: 'Next', summary: 'New & <better>', changes: ['“One” & two'] } },
  {
    id: 'first',
    data: {
      title: 'First',
      date: new Date('2026-11-25'),
      summary: 'All',
      changes: ['It is there'],
    },
  },
]
const feed = new DOMParser().parseFromString(
  atomFeed(editions, 'https://example.org/a/', built),
  'text/xml',
)
const texts = (selector: string): string[] =>
  [...feed.querySelectorAll(selector)].map((element) => element.textContent ?? '')

// RFC 4287, sections 4.1.1 and 4.1.2: what a feed and an entry must have
test('the feed has what Atom asks of a feed and of an entry', () => {
  for (const part of ['feed > id', 'feed > title', 'feed > updated', 'feed > author > name'])
    expect(texts(part), part).toHaveLength(1)
  for (const part of ['id', 'title', 'updated', 'content'])
    expect(texts(`entry > ${part}`), part).toHaveLength(2)
  expect(new Set(texts('id')).size).toBe(3)
  expect(feed.querySelector('link[rel=self]')!.getAttribute('href')).toBe(
    'https://example.org/a/editions.xml',
  )
})

test('an edition without a date counts as changed when the site was built, and so does the feed', () => {
  expect(texts('entry > updated')).toEqual(['2030-05-06T00:00:00.000Z', '2026-11-25T00:00:00.000Z'])
  expect(texts('feed > updated')).toEqual(['2030-05-06T00:00:00.000Z'])
})

test('words are text inside the markup that the content carries', () => {
  const raw = atomFeed(editions, '/', built)
  expect(raw).toContain('&lt;p&gt;New &amp;amp; &amp;lt;better&amp;gt;&lt;/p&gt;')
  expect(raw).toContain('href="/editions/#first"')
})

test('editions are put in order by their dates, with the one still being written first', () => {
  const older = { id: 'older', data: { ...editions[1]!.data, date: new Date('2020-01-01') } }
  expect(newestFirst([older, ...editions.toReversed()]).map(({ id }) => id)).toEqual([
    'next',
    'first',
    'older',
  ])
})
