import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import { brotliCompressSync, constants } from 'node:zlib'

/** Bytes on the wire, compressed as a good host compresses. */
const compressed = (content: Buffer): number =>
  brotliCompressSync(content, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }).length

/** The kind of a page: the first part of its address. */
function kindOf(page: string): string {
  const [first, second] = page.split(path.sep)
  return second === undefined || first === 'index.html'
    ? 'single pages'
    : second === 'index.html'
      ? 'overviews'
      : first!
}

/** A page's first load: the page, its styles, and the scripts that it names. */
async function weigh(
  root: string,
  page: string,
  seen: Map<string, number>,
): Promise<{ html: number; css: number; script: number }> {
  const html = await readFile(path.join(root, page), 'utf8')
  const named = new Set(
    [...html.matchAll(/(?:href|src|component-url|renderer-url)="([^"]+\.(?:css|js))"/g)].map(
      (match) => match[1]!.replace(/^.*?(?=_astro\/)/, ''),
    ),
  )
  const total = { html: compressed(Buffer.from(html)), css: 0, script: 0 }
  for (const file of named) {
    if (!seen.has(file))
      seen.set(file, await readFile(path.join(root, file)).then(compressed, () => 0))
    total[file.endsWith('.css') ? 'css' : 'script'] += seen.get(file)!
  }
  return total
}

const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1).padStart(7)
const median = (numbers: number[]): number =>
  numbers.sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0

/** One line for each kind of page: how many there are, and what the median one weighs in brotli kilobytes. */
export async function reportSizes(root: string): Promise<string[]> {
  const pages = (await readdir(root, { recursive: true })).filter((file) => file.endsWith('.html'))
  const seen = new Map<string, number>()
  const kinds = new Map<string, { html: number; css: number; script: number }[]>()
  for (const page of pages) {
    const weight = await weigh(root, page, seen)
    kinds.set(kindOf(page), [...(kinds.get(kindOf(page)) ?? []), weight])
  }
  const lines = [...kinds].map(([kind, weights]) => {
    const of = (part: 'html' | 'css' | 'script'): string =>
      kilobytes(median(weights.map((weight) => weight[part])))
    return `${kind.padEnd(14)} ${String(weights.length).padStart(4)} pages  html${of('html')}  css${of('css')}  script${of('script')}`
  })
  return ['Median first load, kB in brotli, fonts apart:', ...lines]
}
