import { describe, expect, test } from 'vitest'
import { addressNotice, basePath, publicAddress } from '../../src/build/address.ts'

describe('the public address', () => {
  test('is the site’s address with its base path and a slash at the end', () => {
    expect(publicAddress({ SITE_URL: 'https://example.org' })).toBe('https://example.org/')
    expect(publicAddress({ SITE_URL: ' https://example.org/ ' })).toBe('https://example.org/')
    expect(publicAddress({ SITE_URL: 'https://example.org', BASE_PATH: '/suspension' })).toBe(
      'https://example.org/suspension/',
    )
  })

  test('is not known unless it is given, whatever the base path', () => {
    expect(publicAddress({})).toBeNull()
    expect(publicAddress({ SITE_URL: ' ', BASE_PATH: '/suspension/' })).toBeNull()
  })

  test.each([
    ['example.org', /such as https/],
    ['ftp://example.org', /such as https/],
    ['https://example.org/suspension/', /BASE_PATH/],
    ['https://example.org/?a=1', /BASE_PATH/],
    ['http://localhost:4321', /only this machine/],
    ['http://site.localhost', /only this machine/],
    ['http://127.0.0.1:8080', /only this machine/],
    ['http://[::1]:8080', /only this machine/],
    ['http://0.0.0.0', /only this machine/],
  ])('is refused as %s, and the message says what to do', (SITE_URL, message) => {
    expect(() => publicAddress({ SITE_URL })).toThrow(message)
  })

  test('is told while building, and that codes are missing where there is none', () => {
    expect(addressNotice(null)).toMatch(/SITE_URL is not set/)
    expect(addressNotice('https://example.org/')).toContain('https://example.org/')
  })
})

test.each([
  [undefined, '/'],
  ['', '/'],
  ['/', '/'],
  ['suspension', '/suspension/'],
  ['/suspension', '/suspension/'],
  ['/a/b/', '/a/b/'],
])('the base path %s is used as %s', (BASE_PATH, wanted) => {
  expect(basePath({ BASE_PATH })).toBe(wanted)
})
