import { readdirSync } from 'node:fs'
import { build } from 'esbuild'
import { parseHTML } from 'linkedom'
import { expect, test } from 'vitest'
import { builtText } from './pages.ts'

/** Everything that a page loads as a script, or a script later; the island's own loader is left out, since esbuild does not know how it names its modules. */
function scripts(): string[] {
  const under = (folder: string, names: RegExp): string[] =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => names.test(file))
      .map((file) => `./${folder}/${file}`)
  return [
    ...under('components/calculator', /^(Card\.tsx|codes\.ts|tellHeight\.ts)$/),
    ...under('components/procedure', /^sheet\.ts$/),
    ...under('components/record', /^start\.tsx$/),
    ...under('src/calculators', /\/(solve\.ts|remarks\.ts|Figure\.tsx)$/),
    ...under('src/offline', /^(register|offer|worker)\.ts$/),
    ...under('src/scripts', /\.ts$/),
    ...under('src/search', /^(box|page|suggest)\.ts$/),
  ]
}

/** The packages of which something is left in the bundle of all scripts. */
async function shipped(): Promise<string[]> {
  const { metafile } = await build({
    stdin: {
      contents: scripts()
        .map((file, index) => `export * as script${index} from '${file}'`)
        .join('\n'),
      resolveDir: process.cwd(),
    },
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    format: 'esm',
    target: 'es2022',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    outdir: 'unused',
  })
  const inputs = Object.values(metafile.outputs).flatMap(({ inputs }) => Object.entries(inputs))
  const packages = inputs
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .map(([file]) => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1])
  return [...new Set(packages.filter((name) => name !== undefined))].sort()
}

test('the list of programs that run in a browser names every package of which a browser gets something, and no other', async () => {
  const { document } = parseHTML(builtText('/licences/'))
  const named = [...document.querySelectorAll('[data-shipped] li')].flatMap(
    (item) => item.getAttribute('data-packages')?.split(' ') ?? [],
  )
  const bundled = await shipped()
  expect(bundled).toContain('preact')
  // what comes with the pages and not with this site's own scripts: the search's engine, and what starts a card
  expect([...named].sort()).toEqual([...bundled, 'astro', '@astrojs/preact', 'pagefind'].sort())
})
