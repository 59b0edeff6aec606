import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'
import { expect, test } from 'vitest'
import { calculatorIds } from '../../src/calculators/index.ts'
import { Bundle } from '../../src/build/bundle.ts'
import { laterFiles, workSource } from '../../src/build/preload.ts'

const bundle = await Bundle.read()
const files = readdirSync('dist/_astro')
const named = (start: string): string =>
  `_astro/${files.find((file) => file.startsWith(`${start}.`) && file.endsWith('.js'))}`
const gzipped = (all: Iterable<string>): number =>
  [...all].reduce(
    (sum, file) => sum + gzipSync(readFileSync(path.join('dist', file)), { level: 9 }).length,
    0,
  )
const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1)

/** What a page may load for its calculator before the figure: Preact, the card, the calculator's work and the physics that it calls [bytes, gzip]. Two and a half thousand of them try all that is not known together and tell it in ranges, and two and a half thousand are the stage with its undo; the search for a change and the choice of springs, which search among whole bikes, have the most. Less than a thousand make room for a reader's own bike, whose script comes only once there is one; about as much reads a link’s units and tells a link that was cut on its way. */
const PAGE = 59_500
/** What Preact, the card and all calculators' work may come to, without the physics [bytes, gzip]. */
const ALL = 50_000

test('a page loads at most 59.5 kB gzip for its calculator before the figure, and each figure is a chunk of its own', () => {
  const figures = calculatorIds.map((id) => laterFiles(bundle, id).figure)
  expect(new Set(figures).size).toBe(calculatorIds.length)
  const card = [named('Island'), named('client')]
  const sizes = calculatorIds.map((id) => {
    const { work, figure } = laterFiles(bundle, id)
    const before = gzipped(bundle.closure([...card, work]))
    return { id, before, whole: gzipped(bundle.closure([...card, work, figure])) }
  })
  console.log(
    sizes
      .map(
        ({ id, before, whole }) =>
          `${id}: ${kilobytes(before)} kB, with its figure ${kilobytes(whole)} kB`,
      )
      .join('\n'),
  )
  expect(sizes.filter(({ before }) => before > PAGE)).toEqual([])
})

/** One bundle of what browsers run of all calculators, figures apart; `external` stays out of it. */
async function bundled(external: readonly string[]): Promise<number> {
  const works = calculatorIds.map(
    (id, index) => `export * as work${index} from './${workSource(id)}'`,
  )
  const { outputFiles } = await build({
    stdin: {
      contents: [
        "export { default } from './components/calculator/Island.tsx'",
        "export { hydrate } from 'preact'",
        ...works,
      ].join('\n'),
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
    // the named ones are fetched later: the handles with a figure that has some, the others once a reader has a bike, asks to go on, types a unit
    // or makes a link
    external: [
      'uqr',
      './answer.ts',
      '*/OwnBikePanel.tsx',
      '*/GoOn.tsx',
      '*/Handles.tsx',
      '*/asWritten.ts',
      '*/machine/writeLink.ts',
      ...external,
    ],
  })
  return gzipSync(outputFiles[0]!.contents, { level: 9 }).length
}

test('the card and all 24 calculators come to at most 50 kB gzip before physics and figures', async () => {
  const [without, whole] = [await bundled(['*/core/index.ts']), await bundled([])]
  console.log(
    `card and all calculators ${kilobytes(without)} kB, with all their physics ${kilobytes(whole)} kB, which no page loads at once`,
  )
  expect(without).toBeLessThan(ALL)
  // the physics is in the second bundle, so that the first did leave it out
  expect(whole - without).toBeGreaterThan(10_000)
})

/** What a script comes to as browsers get it [bytes, gzip], without what it imports later. */
async function scriptSize(entry: string): Promise<number> {
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    target: 'es2022',
    define: { 'import.meta.env.BASE_URL': '"/"' },
    external: ['./offer.ts'],
  })
  return gzipSync(outputFiles[0]!.contents, { level: 9 }).length
}

/** What a first visit to any page may load more so that pages can be kept offline [bytes, gzip]: the script, the style of the bar, and lines of the head. The worker itself comes once the page is at rest. */
const OFFLINE = 1000
/** What the worker and its list of the whole site may come to, once an edition [bytes, gzip]. */
const WORKER = 40_000

test('what keeps pages offline adds at most 1 kB gzip to a first visit; the worker comes later', async () => {
  const style = readFileSync('src/styles/page.css', 'utf8')
  const bar = style.slice(style.indexOf('.edition-bar {'))
  const gzip = (text: string): number => gzipSync(text, { level: 9 }).length
  const html = readFileSync('dist/glossary/index.html', 'utf8')
  const lines =
    /<link rel="(apple-touch-icon|manifest)"[^>]*>|<meta name="(theme-color|edition)"[^>]*>/g
  expect(html.match(lines)).toHaveLength(5)
  const parts = {
    script: await scriptSize('src/offline/register.ts'),
    style: gzip(style) - gzip(style.replace(bar, '')),
    head: gzip(html) - gzip(html.replace(lines, '')),
  }
  const worker = gzipSync(readFileSync('dist/sw.js'), { level: 9 }).length
  console.log(`offline: ${JSON.stringify(parts)} bytes at a first visit, worker ${worker}`)
  expect(parts.script + parts.style + parts.head).toBeLessThan(OFFLINE)
  expect(worker).toBeLessThan(WORKER)
})

test('a page without a calculator names no part of one', () => {
  const pages = readdirSync('dist', { recursive: true }).map(String)
  const without = pages.filter(
    (page) =>
      page.endsWith('.html') &&
      !/<astro-island/.test(readFileSync(path.join('dist', page), 'utf8')),
  )
  expect(without.length).toBeGreaterThan(100)
  const parts = [
    named('Island'),
    named('client'),
    ...files.filter((file) => /^(solve|remarks)\./.test(file)).map((file) => `_astro/${file}`),
  ]
  for (const page of without) {
    const html = readFileSync(path.join('dist', page), 'utf8')
    expect(
      parts.filter((part) => html.includes(part)),
      page,
    ).toEqual([])
  }
})
