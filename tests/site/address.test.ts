import { expect, test } from 'vitest'
import { builtPages, builtText } from './pages.ts'

/* The site as it is built for all tests, without SITE_URL: nothing that is printed, scanned or copied to another site leads to the machine that built it. */

test('no page of a build without a public address carries a code or an address of that machine', () => {
  const codes = /class="qr-code"|&lt;iframe|localhost|127\.0\.0\.1/
  expect(builtPages().filter((page) => codes.test(builtText(page)))).toEqual([])
})

test('a calculator’s page says what its code to embed needs, and who provides it', () => {
  const pages = builtPages().filter((page) => /^\/calculators\/.+\/$/.test(page))
  expect(pages.length).toBeGreaterThan(15)
  for (const page of pages)
    expect(builtText(page), page).toMatch(
      /Put this calculator on another site<\/summary>\s*<p>[^<]*public address[^<]*SITE_URL/,
    )
})
