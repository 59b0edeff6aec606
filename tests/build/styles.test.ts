import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

/* Rules that nothing can match are found by their classes and data attributes: each must be a word of some page, component, script or text. */

const texts = (folder: string, kind: RegExp): string[] =>
  readdirSync(folder, { recursive: true })
    .map((file) => `${folder}/${String(file)}`)
    .filter((file) => kind.test(file))
    .map((file) => readFileSync(file, 'utf8'))

/** Every word that a class or an attribute's name can be made of; `data-a-b` is `aB` in a script's dataset. */
const words = new Set(
  [
    ...texts('components', /\.(astro|tsx|ts)$/),
    ...texts('src', /\.(astro|tsx|ts)$/),
    ...texts('content', /\.mdx$/),
  ].flatMap((text) => text.match(/[A-Za-z][\w-]*/g) ?? []),
)
const inScript = (name: string): string =>
  name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase())
const known = (name: string): boolean =>
  words.has(name) || words.has(`data-${name}`) || words.has(inScript(name))

/** Names that a program makes from parts, and the program. */
const MADE: Readonly<Record<string, string>> = {
  'mark-now': 'components/job/markDrawing.ts',
  'mark-before': 'components/job/markDrawing.ts',
  'mark-edge-now': 'components/job/markDrawing.ts',
  'in-metric': 'components/lesson/In.astro',
  'in-imperial': 'components/lesson/In.astro',
  'along-y': 'components/calculator/Hand.tsx',
}

test('every rule of the styles has something that it can match', () => {
  const styles = texts('src/styles', /\.css$/)
    .join('\n')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/url\([^)]*\)|'[^']*'/g, '')
  const selectors = [...styles.matchAll(/([^{};]+)\{/g)].map((match) => match[1]!)
  const named = new Set(
    selectors.flatMap((selector) =>
      [...selector.matchAll(/\.([A-Za-z][\w-]*)|\[data-([\w-]+)/g)].map(
        (match) => match[1] ?? match[2]!,
      ),
    ),
  )
  expect(named.size).toBeGreaterThan(300)
  expect([...named].filter((name) => !known(name) && !(name in MADE))).toEqual([])
  expect(Object.keys(MADE).filter((name) => !named.has(name))).toEqual([])
})
