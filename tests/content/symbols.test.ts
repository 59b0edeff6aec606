import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { expect, test } from 'vitest'

/* One list of symbols for the whole book: a letter means one thing, and no formula has a letter that means nothing. */

const symbols = parse(readFileSync('content/symbols.yaml', 'utf8')) as { id: string; what: string }[]
const known = new Set(symbols.map(({ id }) => id))
const chapters = readdirSync('content/chapters').map((file) => ({ id: file.replace('.mdx', ''), text: readFileSync(`content/chapters/${file}`, 'utf8') }))

/** The letters that a chapter's lists of symbols name, in TeX; some have a unit of their own beside them. */
const listed = (text: string): string[] =>
  [...text.matchAll(/<Symbols of=\{(\[[\s\S]*?\])\} \/>/g)].flatMap((list) => (JSON.parse(list[1]!.replaceAll("'", '"')) as (string | [string, string])[]).map((row) => (typeof row === 'string' ? row : row[0])))

/** Letters of formulas with their subscripts; commands of TeX and words in formulas left out. */
const TOKEN = /\\text\{[^}]*\}|\\(?:begin|end)\{\w+\}|\\(?:varepsilon|varphi|delta|ell|nu|zeta)(?:_\{(?:[^{}]|\{[^{}]*\})*\}|_\\?[A-Za-z0-9]+)?|\\[A-Za-z]+(?:\s[a-z](?![a-z]))?|[A-Za-z](?:_\{(?:[^{}]|\{[^{}]*\})*\}|_\\?[A-Za-z0-9]+|\^\{\\prime\})?/g
const lettersOf = (text: string): string[] =>
  [...text.matchAll(/\$\$\n([\s\S]*?)\n\$\$/g)].flatMap((formula) => [...formula[1]!.matchAll(TOKEN)].map((match) => match[0])).filter((token) => !/^\\(?!varepsilon|varphi|delta|ell|nu|zeta|Delta\s)/.test(token))

test('each symbol of the list has one meaning, and each meaning one symbol', () => {
  expect(known.size).toBe(symbols.length)
  const meanings = symbols.map(({ what }) => what)
  expect(meanings.filter((what, at) => meanings.indexOf(what) !== at)).toEqual([])
})

test('chapters list only symbols of the book, and every symbol is listed in one', () => {
  const used = chapters.flatMap(({ text }) => listed(text))
  expect(used.filter((tex) => !known.has(tex))).toEqual([])
  expect([...known].filter((tex) => !used.includes(tex))).toEqual([])
})

test('no formula has a letter that the book does not explain', () => {
  // a subscript in words says of itself which value it is; d and s_h are read together as ds_h
  const explained = (token: string): boolean => known.has(token) || known.has(token.replace(/^\\Delta\s(\w)$/, '\\Delta $1')) || /_\{\\text/.test(token) || token === 'd' || token === 'i'
  expect(chapters.flatMap(({ id, text }) => lettersOf(text).filter((token) => !explained(token)).map((token) => `${id}: ${token}`))).toEqual([])
})
