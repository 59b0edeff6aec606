import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'
import { expect, test } from 'vitest'
import { calculatorIds } from '../../src/calculators/index.ts'
import { lazyFiles, Modules } from '../../src/build/preload.ts'

const folder = path.resolve('dist/_astro')
const files = readdirSync(folder)
const named = (start: string): string => files.find((file) => file.startsWith(`${start}.`) && file.endsWith('.js'))!
const gzipped = (all: Iterable<string>): number => [...all].reduce((sum, file) => sum + gzipSync(readFileSync(path.join(folder, file)), { level: 9 }).length, 0)
const isFigure = (file: string): boolean => /^[A-Z]/.test(file)
const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1)

/** What a page may load for its calculator before the figure: Preact, the card, the calculator's work and the physics that it calls [bytes, gzip]. */
const PAGE = 42_000
/** What Preact, the card and all calculators' work may come to, without the physics [bytes, gzip]. */
const ALL = 45_000

test('a page loads at most 42 kB gzip for its calculator before the figure, and each figure is a chunk of its own', async () => {
  const modules = new Modules(folder)
  const lazy = await lazyFiles(folder, named('Island'), modules)
  expect([...lazy.keys()].sort()).toEqual([...calculatorIds].sort())
  const figures = [...lazy.values()].map((own) => own.filter(isFigure))
  expect(figures.every((own) => own.length === 1)).toBe(true)
  expect(new Set(figures.flat()).size).toBe(calculatorIds.length)
  const sizes = await Promise.all(
    calculatorIds.map(async (id) => {
      const own = lazy.get(id)!
      const before = gzipped(await modules.closure([named('Island'), named('client'), ...own.filter((file) => !isFigure(file))]))
      const whole = gzipped(await modules.closure([named('Island'), named('client'), ...own]))
      return { id, before, whole }
    }),
  )
  console.log(sizes.map(({ id, before, whole }) => `${id}: ${kilobytes(before)} kB, with its figure ${kilobytes(whole)} kB`).join('\n'))
  expect(sizes.filter(({ before }) => before > PAGE)).toEqual([])
})

/** One bundle of what browsers run of all calculators, figures apart; `external` stays out of it. */
async function bundled(external: readonly string[]): Promise<number> {
  const works = calculatorIds.map((id, index) => `export * as work${index} from './src/calculators/${id}.work.ts'`)
  const { outputFiles } = await build({
    stdin: {
      contents: ["export { default } from './components/calculator/Island.tsx'", "export { hydrate } from 'preact'", ...works].join('\n'),
      resolveDir: process.cwd(),
    },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    target: 'es2022',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    define: { 'import.meta.env.SSR': 'false' },
    external: ['*/figures/index.ts', 'uqr', ...external],
  })
  return gzipSync(outputFiles[0]!.contents, { level: 9 }).length
}

test('the card and all 21 calculators come to at most 45 kB gzip before physics and figures', async () => {
  const [without, whole] = [await bundled(['*/core/index.ts']), await bundled([])]
  console.log(`card and all calculators ${kilobytes(without)} kB, with all their physics ${kilobytes(whole)} kB, which no page loads at once`)
  expect(without).toBeLessThan(ALL)
  // the physics is in the second bundle, so that the first did leave it out
  expect(whole - without).toBeGreaterThan(10_000)
})

test('a page without a calculator names no part of one', () => {
  const pages = readdirSync('dist', { recursive: true }).map(String)
  const without = pages.filter((page) => page.endsWith('.html') && !/<astro-island/.test(readFileSync(path.join('dist', page), 'utf8')))
  expect(without.length).toBeGreaterThan(100)
  const parts = [named('Island'), named('client'), ...files.filter((file) => /\.(work|remarks)\./.test(file))]
  for (const page of without) {
    const html = readFileSync(path.join('dist', page), 'utf8')
    expect(
      parts.filter((part) => html.includes(part)),
      page,
    ).toEqual([])
  }
})
