import { createHash } from 'node:crypto'
import { readdir, readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { gzipSync } from 'node:zlib'
import { build } from 'vite'
import type { OfflineFiles } from '../offline/files.ts'
import type { Bundle } from './bundle.ts'
import { Needs } from './offlineNeeds.ts'

/* Lists what the service worker keeps, and bundles the worker with that list into one file. */

/** Files for other programs and for the host, which no page asks for. */
const NOT_KEPT =
  /^(_headers|sw\.js|checks\.json|editions\.xml|robots\.txt|sitemap.*)$|schema\.json$/
/** Names that change with what the files hold. */
const NAMED = /^(_astro\/|pagefind\/(index|fragment|filter)\/|pagefind\/.*\.pf_meta$)/
/** What is kept before any other page. */
const FIRST = ['offline/', '404.html']

const sha256 = (content: Buffer): Buffer => createHash('sha256').update(content).digest()

async function filesIn(root: string): Promise<string[]> {
  const entries = await readdir(root, { recursive: true, withFileTypes: true })
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)))
    .map((file) => file.replaceAll(path.sep, '/'))
    .filter((file) => !NOT_KEPT.test(file))
    .sort()
}

/** The mark of an edition: of all its files as they are. */
async function markOf(root: string, files: readonly string[]): Promise<string> {
  const all = createHash('sha256')
  for (const file of files) all.update(file).update(sha256(await readFile(path.join(root, file))))
  return all.digest('hex').slice(0, 10)
}

/** Writes the edition's mark into every page, which marks by it what it asks for. */
async function markPages(root: string, files: readonly string[], edition: string): Promise<void> {
  const mark = `<meta name="edition" content="${edition}">`
  for (const file of files.filter((each) => each.endsWith('.html'))) {
    const page = path.join(root, file)
    const html = (await readFile(page, 'utf8')).replace(/<meta name="edition"[^>]*>/, '')
    await writeFile(page, html.replace('</head>', `${mark}</head>`))
  }
}

/** The list of a finished site [its folder], whose pages are marked already. */
async function listFiles(
  root: string,
  bundle: Bundle,
  files: readonly string[],
  edition: string,
): Promise<OfflineFiles> {
  const named = files.filter((file) => NAMED.test(file))
  const places = new Map(named.map((file, place) => [file, place]))
  const needs = new Needs(root, bundle)
  const sets = new Map<string, number>()
  const addressed: [string, string, number][] = []
  let [wire, stored] = [0, 0]
  for (const file of files) {
    const content = await readFile(path.join(root, file))
    wire += gzipSync(content).length
    stored += content.length
    if (places.has(file)) continue
    let set = -1
    if (file.endsWith('.html')) {
      const wanted = (await needs.of(content.toString())).map((need) => places.get(need)!)
      const text = JSON.stringify(wanted)
      if (!sets.has(text)) sets.set(text, sets.size)
      set = sets.get(text)!
    }
    const address = file.replace(/(^|\/)index\.html$/, '$1')
    addressed.push([address, sha256(content).toString('base64'), set])
  }
  const all = [...sets.keys()].map((text) => JSON.parse(text) as number[])
  return { edition, wire, stored, named, addressed, sets: all, first: FIRST }
}

/** Bundles the worker with its list into `sw.js`. */
async function bundleWorker(root: string, list: OfflineFiles): Promise<void> {
  await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: { OFFLINE_FILES: JSON.stringify(list) },
    build: {
      outDir: root,
      emptyOutDir: false,
      rollupOptions: {
        input: path.resolve('src/offline/worker.ts'),
        output: { format: 'iife', entryFileNames: 'sw.js' },
      },
    },
  })
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`

/** Marks the pages of a finished site [its folder] with their edition and writes its service worker. Returns what that holds, in words. */
export async function writeOffline(root: string, bundle: Bundle): Promise<string> {
  const files = await filesIn(root)
  const edition = await markOf(root, files)
  await markPages(root, files, edition)
  const list = await listFiles(root, bundle, files, edition)
  await bundleWorker(root, list)
  const weighs = gzipSync(await readFile(path.join(root, 'sw.js'))).length
  return `edition ${edition}, ${files.length} files, ${megabytes(list.wire)} on the way, ${megabytes(list.stored)} kept; the worker ${(weighs / 1000).toFixed(1)} kB`
}
