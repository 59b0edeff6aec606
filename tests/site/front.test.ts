import { parseHTML } from 'linkedom'
import { describe, expect, test } from 'vitest'
import { boxesIn } from '../../src/build/prose/boxesIn.ts'
import { entries } from '../content/entries.ts'
import { builtText } from './pages.ts'

/* The front page's links hold what they say. */

const documentAt = (address: string): Document => parseHTML(builtText(address)).document
const linkNamed = (text: RegExp): string =>
  [...documentAt('/').querySelectorAll('main a')]
    .find((link) => text.test(link.textContent ?? ''))!
    .getAttribute('href')!
const ideas = entries('chapters').flatMap(({ id, body }) =>
  [...body.matchAll(/<Wrong idea="([^"]+)"/g)].map((found) => ({ chapter: id, idea: found[1]! })),
)

describe('“Wrong ideas”', () => {
  const list = documentAt(linkNamed(/^Wrong ideas/))

  test('leads to every wrong idea of the chapters, each with its answer', () => {
    expect(ideas.length).toBeGreaterThan(30)
    const listed = [...list.querySelectorAll('[data-wrong]')].map(
      (box) => box.querySelector('b')!.textContent,
    )
    // quotation marks and apostrophes are set while building
    const plain = (text: string): string => text.replaceAll(/[’'“”"]/g, '').replace(/\.$/, '')
    expect(listed.map((text) => plain(text)).sort()).toEqual(
      ideas.map(({ idea }) => plain(idea)).sort(),
    )
    for (const box of list.querySelectorAll('[data-wrong]'))
      expect(
        box.textContent.length - box.querySelector('.idea')!.textContent.length,
      ).toBeGreaterThan(80)
  })

  test('gives each an address of its own, at which the chapter has it', () => {
    const addresses = [...list.querySelectorAll('[data-wrong] .anchor')].map((link) =>
      link.getAttribute('href')!,
    )
    expect(new Set(addresses).size).toBe(ideas.length)
    for (const address of addresses) {
      const [page, id] = address.split('#')
      expect(documentAt(page!).getElementById(id!)?.hasAttribute('data-wrong'), address).toBe(true)
    }
  })
})

test('“Formulas and their checks” leads to every formula of the derivations, and from there to where it is derived', () => {
  const list = documentAt(linkNamed(/^Formulas/))
  const derived = entries('chapters').reduce(
    (sum, { id }) =>
      sum + documentAt(`/chapters/${id}/`).querySelectorAll('.derivation .formula').length,
    0,
  )
  expect(derived).toBeGreaterThan(60)
  expect(list.querySelectorAll('.formula math').length).toBe(derived)
  for (const link of list.querySelectorAll('.formulas .links a')) {
    const [page, id] = link.getAttribute('href')!.split('#')
    expect(documentAt(page!).getElementById(id!), link.getAttribute('href')!).not.toBeNull()
  }
})

test('the search page offers no kind of which there is nothing', () => {
  const { entries: found } = JSON.parse(builtText('/search/vocabulary.json')) as {
    entries: { kind: string }[]
  }
  const offered = [...documentAt('/search/').querySelectorAll('#search-kind option')]
    .map((option) => option.getAttribute('value')!)
    .filter(Boolean)
  expect(offered.sort()).toEqual([...new Set(found.map(({ kind }) => kind))].sort())
})

test('boxesIn(html, mark) takes each box whole, with the boxes in it', () => {
  expect(
    boxesIn(
      '<p>a</p><div class="b" data-x><div>c</div>d</div><div>e</div><section data-x>f<div>g</div></section>',
      'data-x',
    ),
  ).toEqual([
    '<div class="b" data-x><div>c</div>d</div>',
    '<section data-x>f<div>g</div></section>',
  ])
})
