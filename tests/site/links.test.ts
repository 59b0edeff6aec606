import { parseHTML } from 'linkedom'
import { describe, expect, test } from 'vitest'
import { builtPages, builtText } from './pages.ts'

const pages = builtPages()
const documents = new Map(pages.map((page) => [page, parseHTML(builtText(page)).document]))
const idsOf = new Map(
  [...documents].map(([page, document]) => [
    page,
    new Set([...document.querySelectorAll('[id]')].map((element) => element.id)),
  ]),
)

describe('internal links of the built site', () => {
  test('every link and fragment leads somewhere', () => {
    const broken: string[] = []
    for (const [page, document] of documents) {
      for (const link of document.querySelectorAll('a[href]')) {
        const target = new URL(link.getAttribute('href')!, `http://site${page}`)
        if (target.host !== 'site') continue
        const ids = idsOf.get(target.pathname)
        if (ids === undefined) {
          if (!/\.(json|xml|svg)$/.test(target.pathname))
            broken.push(`${page} → ${target.pathname}`)
        } else if (target.hash && !ids.has(decodeURIComponent(target.hash.slice(1))))
          broken.push(`${page} → ${target.pathname}${target.hash}`)
      }
    }
    expect([...new Set(broken)]).toEqual([])
  })

  test('no id stands twice on a page', () => {
    const twice: string[] = []
    for (const [page, document] of documents) {
      const seen = new Set<string>()
      for (const element of document.querySelectorAll('[id]')) {
        if (seen.has(element.id)) twice.push(`${page}#${element.id}`)
        seen.add(element.id)
      }
    }
    expect(twice).toEqual([])
  })

  test('no page carries a style attribute or an inline event handler, which the policy blocks', () => {
    const found = [...documents].flatMap(([page, document]) =>
      [...document.querySelectorAll('*')]
        .filter((element) =>
          [...element.attributes].some(({ name }) => name === 'style' || /^on[a-z]+$/.test(name)),
        )
        .map((element) => `${page}: ${element.outerHTML.slice(0, 90)}`),
    )
    expect(found).toEqual([])
  })

  test('every page has one h1, a description, and the policy without unsafe-inline', () => {
    for (const [page, document] of documents) {
      expect(document.querySelectorAll('h1').length, page).toBe(1)
      expect(
        document.querySelector('meta[name="description"]')?.getAttribute('content')?.length ?? 0,
        page,
      ).toBeGreaterThan(20)
      const policy =
        document
          .querySelector('meta[http-equiv="content-security-policy" i]')
          ?.getAttribute('content') ?? ''
      expect(policy, page).toContain("default-src 'none'")
      expect(policy, page).not.toContain('unsafe-inline')
    }
  })
})
