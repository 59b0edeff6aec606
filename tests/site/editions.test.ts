import { parseHTML, DOMParser } from 'linkedom'
import { expect, test } from 'vitest'
import { listed } from '../content/entries.ts'
import { builtText } from './pages.ts'

const editions = listed('editions.yaml')
const page = parseHTML(builtText('/editions/')).document
const feed = new DOMParser().parseFromString(builtText('/editions.xml'), 'text/xml')

test('the change log has the newest edition first, and only that one may be without a date', () => {
  expect(editions.length).toBeGreaterThan(1)
  const dates = editions.slice(1).map(({ date }) => String(date))
  for (const date of dates) expect(date).toMatch(/^\d{4}-\d\d-\d\d$/)
  expect(dates).toEqual(dates.toSorted().toReversed())
})

test('page and feed have every edition, and the footer leads to the page, the page to the feed', () => {
  const titles = editions.map(({ title }) => title)
  expect([...page.querySelectorAll('main h2')].map((each) => each.textContent)).toEqual(titles)
  expect([...feed.querySelectorAll('entry > title')].map((each) => each.textContent)).toEqual(
    titles,
  )
  for (const { changes } of editions)
    for (const change of changes as string[]) expect(page.body.textContent).toContain(change)
  expect(page.querySelector('footer a[href="/editions/"]')).not.toBeNull()
  expect(page.querySelector('link[rel=alternate]')!.getAttribute('href')).toBe('/editions.xml')
})
