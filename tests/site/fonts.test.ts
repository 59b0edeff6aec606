import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { create } from 'fontkitten'
import { parseHTML } from 'linkedom'
import { describe, expect, test } from 'vitest'
import { builtPages, builtText } from './pages.ts'

/* Every character that a page shows is in a font that the site brings, so that no reader sees a box or a stranger among the letters. */

const assets = path.resolve('dist/_astro')
const fontNamed = (start: string): Buffer =>
  readFileSync(
    path.join(
      assets,
      readdirSync(assets).find((file) => file.startsWith(start) && file.endsWith('.woff2'))!,
    ),
  )
const charactersOf = (font: Buffer): ReadonlySet<number> =>
  new Set((create(font) as { characterSet: number[] }).characterSet)

/** Signs that scripts have only in patterns by which they read text: other hyphens, and halves of characters. */
const READ_ONLY = /[\u2010-\u2012\u2015\ud800-\udfff]/g

/** The characters that a face of the style sheet claims. */
function claimed(range: string): (code: number) => boolean {
  const ranges = range.split(',').map((each) => {
    const [from = '', to = from] = each.trim().replace('U+', '').split('-')
    return [Number.parseInt(from, 16), Number.parseInt(to, 16)] as const
  })
  return (code) => ranges.some(([from, to]) => code >= from && code <= to)
}

interface Use {
  text: Map<string, string>
  maths: Map<string, string>
}

/** Each character that is shown somewhere, with the first place that shows it. Source text and keys are set in the reader's own typewriter font. */
function inUse(): Use {
  const use: Use = { text: new Map(), maths: new Map() }
  const add = (to: Map<string, string>, text: string, where: string): void => {
    for (const character of text)
      if (!/\s/.test(character) && !to.has(character)) to.set(character, where)
  }
  for (const page of builtPages()) {
    const { document } = parseHTML(builtText(page))
    for (const apart of document.querySelectorAll('annotation, script, style, code, pre, kbd'))
      apart.remove()
    for (const formula of document.querySelectorAll('math')) {
      add(use.maths, formula.textContent ?? '', page)
      formula.remove()
    }
    add(use.text, document.documentElement.textContent ?? '', page)
  }
  // what scripts and style sheets write; only signs beyond ASCII can be missing
  for (const file of readdirSync(assets).filter((each) => /\.(js|css)$/.test(each))) {
    const text = readFileSync(path.join(assets, file), 'utf8')
    const written = text.replaceAll(/\\u([0-9a-f]{4})/gi, (_, code: string) =>
      String.fromCharCode(Number.parseInt(code, 16)),
    )
    add(use.text, written.replaceAll(/[\x00-\x7f]/g, '').replaceAll(READ_ONLY, ''), file)
  }
  return use
}

const missing = (use: Map<string, string>, has: (code: number) => boolean): string[] =>
  [...use].flatMap(([character, where]) =>
    has(character.codePointAt(0)!)
      ? []
      : [`${character} U+${character.codePointAt(0)!.toString(16)} in ${where}`],
  )

describe('the shipped fonts', () => {
  const use = inUse()
  const [regular, bold, maths, signs] = [
    'atkinson-hyperlegible-next-latin-400',
    'atkinson-hyperlegible-next-latin-700',
    'stix-two-math',
    'signs',
  ].map((name) => charactersOf(fontNamed(name)))
  const styles = readFileSync('src/styles/base.css', 'utf8')
  const claims = claimed(/signs-subset[\s\S]*?unicode-range:\s*([^;]+);/.exec(styles)![1]!)

  test('the maths font has every character of the formulas', () => {
    expect(use.maths.size).toBeGreaterThan(60)
    expect(missing(use.maths, (code) => maths!.has(code))).toEqual([])
  })

  test('the text font and its signs have every character of the text, upright and bold', () => {
    expect(use.text.size).toBeGreaterThan(90)
    expect(
      missing(
        use.text,
        (code) => (regular!.has(code) && bold!.has(code)) || (claims(code) && signs!.has(code)),
      ),
    ).toEqual([])
  })
})
