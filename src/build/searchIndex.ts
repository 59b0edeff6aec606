import { mkdir, readFile, readdir, writeFile } from 'node:fs/promises'
import { dirname, join, sep } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { close, createIndex } from 'pagefind'
import type { IndexFile, PagefindIndex } from 'pagefind'
import type { LexiconSource } from '../search/entries.ts'
import type { SourceEntry } from '../search/lexicon.ts'
import type { Entry, Kind, LexiconFile } from '../search/lexicon.ts'
import { stem } from '../search/stem.ts'
import { wordsOf } from '../search/words.ts'

/** The index's own interfaces, its worker and its second engine are never loaded by this site. */
const UNUSED = /^pagefind-(?!entry)|^wasm\.unknown|\.css$/
/** What is on a page and no part of its text: controls, drawings, formulas as symbols, the way to other pages, tables of checks. */
const NOT_TEXT = [
  'svg',
  'math',
  'nav',
  'button',
  'select',
  'output',
  'dialog',
  'noscript',
  '[hidden]',
  '.kicker',
  '.on-paper',
  '.progress',
  '.checks-of',
  '.embed-code',
]
/** Elements after whose end a word ends too, which the index does not see. */
const ENDS_A_WORD =
  /<\/(dt|dd|td|th|caption|figcaption|summary|label|legend|output|div|b)>(?=[^\s.,;:?!)])/g
const SIGNATURE = 'pagefind_dcd'

interface Fragment {
  url: string
  content: string
  meta: Record<string, string>
  filters: Record<string, string[]>
}

/** A message of the index's own, or nothing. */
function refuse(errors: readonly string[]): void {
  if (errors.length > 0) throw new Error(`the search index was not built: ${errors.join('; ')}`)
}

function fragmentOf({ path, content }: IndexFile): [id: string, fragment: Fragment] {
  const bytes = content[0] === 0x1f ? gunzipSync(content) : content
  const text = Buffer.from(bytes).toString('utf8')
  return [/([^/]+)\.pf_fragment$/.exec(path)?.[1] ?? '', JSON.parse(text.slice(SIGNATURE.length))]
}

/** Adds every page that asks to be searched, except those that are in the index part by part. */
async function addPages(
  index: PagefindIndex,
  site: string,
  inParts: ReadonlySet<string>,
): Promise<void> {
  const pages = (await readdir(site, { recursive: true }))
    .filter((file) => file.endsWith('.html'))
    .sort()
  for (const sourcePath of pages) {
    const content = await readFile(join(site, sourcePath), 'utf8')
    if (
      !content.includes('data-pagefind-body') ||
      inParts.has(sourcePath.replaceAll(sep, '/').replace(/index\.html$/, ''))
    )
      continue
    refuse(
      (await index.addHTMLFile({ sourcePath, content: content.replace(ENDS_A_WORD, '$& ') }))
        .errors,
    )
  }
}

async function addRecords(index: PagefindIndex, entries: readonly SourceEntry[]): Promise<void> {
  for (const { url, kind, title, text } of entries) {
    if (text === undefined) continue
    refuse(
      (
        await index.addCustomRecord({
          url: `/${url}`,
          content: text,
          language: 'en',
          meta: { title },
          filters: { kind: [kind] },
        })
      ).errors,
    )
  }
}

/** Words of three letters or more, without figures, the most used first; of the forms of one word only the most used. */
export function wordsByUse(texts: readonly string[]): string[] {
  const uses = new Map<string, number>()
  for (const word of texts.flatMap(wordsOf))
    if (/^[a-z]{3,}$/.test(word)) uses.set(word, (uses.get(word) ?? 0) + 1)
  const sorted = [...uses].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([word]) => word)
  const forms = new Map(sorted.toReversed().map((word) => [stem(word), word]))
  return sorted.filter((word) => forms.get(stem(word)) === word)
}

function lexiconFile(
  source: LexiconSource,
  fragments: readonly (readonly [string, Fragment])[],
): LexiconFile {
  const known = new Map(source.entries.map(({ text: _, ...entry }) => [entry.url, entry]))
  const entries = fragments.map(([id, fragment]): Entry => {
    const url = fragment.url.replace(/^\//, '')
    const slug = url.split('/').at(-2) ?? ''
    const unlisted = {
      url,
      kind: (fragment.filters['kind']?.[0] ?? 'chapter') as Kind,
      title: fragment.meta['title'] ?? url,
      names: [slug.replaceAll('-', ' ')],
    }
    return { id, ...(known.get(url) ?? unlisted) }
  })
  const texts = [
    ...fragments.map(([, { content }]) => content),
    ...source.entries.flatMap(({ title, names }) => [title, ...names]),
  ]
  return {
    stop: source.stop,
    light: source.light,
    english: source.english,
    synonyms: source.synonyms,
    words: wordsByUse(texts).join(' '),
    entries: entries.sort((a, b) => (a.url < b.url ? -1 : 1)),
  }
}

/**
 * Builds the search index of a finished site [its folder]: every page whose `main` has `data-pagefind-body`, and a record for each glossary entry and
 * symptom. Writes `pagefind/` and completes `search/vocabulary.json`, which the endpoint of that name has begun. Returns how many things can be found.
 */
export async function buildSearchIndex(site: string): Promise<number> {
  const vocabulary = join(site, 'search', 'vocabulary.json')
  const source: LexiconSource = JSON.parse(await readFile(vocabulary, 'utf8'))
  const { index, errors } = await createIndex({ forceLanguage: 'en', excludeSelectors: NOT_TEXT })
  refuse(errors)
  if (!index) throw new Error('the search index was not made')
  await addPages(
    index,
    site,
    new Set(source.entries.filter(({ text }) => text !== undefined).map(({ url }) => url)),
  )
  await addRecords(index, source.entries)
  const { files, errors: fileErrors } = await index.getFiles()
  refuse(fileErrors)
  for (const { path, content } of files.filter(({ path }) => !UNUSED.test(path))) {
    const target = join(site, 'pagefind', path)
    await mkdir(dirname(target), { recursive: true })
    await writeFile(target, content)
  }
  await close()
  const fragments = files.filter(({ path }) => path.endsWith('.pf_fragment')).map(fragmentOf)
  await writeFile(vocabulary, JSON.stringify(lexiconFile(source, fragments)))
  return fragments.length
}
