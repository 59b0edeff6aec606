import { readdir, readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { init, parse } from 'es-module-lexer'

/* An island hydrates after its script, that script's imports, its renderer, its calculator's work and its figure have come: three round trips one
   after the other. Naming them all in the page's head makes that one. What a calculator remarks comes later, by itself. */

const LAZY = /["'`]?([\w./-]+)["'`]?:\(\)=>[^,]*?import\([`"']\.\/([^`"']+)[`"']\)/g
const idOf = (key: string): string => key.replace(/^.*\//, '').replace(/\.work\.ts$/, '')

/** The built modules of a folder and what they import. */
export class Modules {
  readonly #folder: string
  readonly #imports = new Map<string, string[]>()
  constructor(folder: string) {
    this.#folder = folder
  }

  async #importsOf(file: string): Promise<string[]> {
    const known = this.#imports.get(file)
    if (known) return known
    const [imports] = parse(await readFile(path.join(this.#folder, file), 'utf8'))
    const found = imports.flatMap((each) =>
      (each.type === 'static' || each.type === 'reexport-star') && each.specifier ? [path.basename(each.specifier)] : [],
    )
    this.#imports.set(file, found)
    return found
  }

  /** The files, and all that they import. */
  async closure(files: Iterable<string>): Promise<Set<string>> {
    const all = new Set<string>()
    const waiting = [...files]
    for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
      if (all.has(file)) continue
      all.add(file)
      waiting.push(...(await this.#importsOf(file)))
    }
    return all
  }
}

/** Files that the island and its imports load later, by calculator id: its work and its figure. */
export async function lazyFiles(folder: string, island: string, modules: Modules): Promise<Map<string, string[]>> {
  const files = new Map<string, string[]>()
  for (const module of await modules.closure([island])) {
    const script = await readFile(path.join(folder, module), 'utf8')
    for (const [, key, file] of script.matchAll(LAZY)) {
      const id = idOf(key!)
      if (!id.endsWith('.remarks.ts')) files.set(id, [...(files.get(id) ?? []), file!])
    }
  }
  return files
}

/** Names in each page's head the modules that its calculators need. Returns how many pages got some. */
export async function preloadIslands(root: string, folder = '_astro'): Promise<number> {
  await init
  const modules = new Modules(path.join(root, folder))
  const lazy = new Map<string, Map<string, string[]>>()
  let changed = 0
  for (const page of (await readdir(root, { recursive: true })).filter((file) => file.endsWith('.html'))) {
    const html = await readFile(path.join(root, page), 'utf8')
    const wanted = new Set<string>()
    let prefix = ''
    for (const [, componentUrl, rendererUrl, id] of html.matchAll(
      /<astro-island[^>]*? component-url="([^"]+)"[^>]*? renderer-url="([^"]+)"[^>]*?props="\{&quot;id&quot;:\[0,&quot;([\w-]+)&quot;\]/g,
    )) {
      const component = path.basename(componentUrl!)
      prefix = componentUrl!.slice(0, -component.length)
      if (!lazy.has(component)) lazy.set(component, await lazyFiles(path.join(root, folder), component, modules))
      const own = lazy.get(component)!.get(id!)
      if (own?.length !== 2)
        throw new Error(`${page}: the island's script does not name the modules of “${id}”; src/build/preload.ts no longer fits the bundler's output`)
      for (const file of await modules.closure([component, path.basename(rendererUrl!), ...own])) wanted.add(file)
    }
    if (wanted.size === 0) continue
    const links = [...wanted].map((file) => `<link rel="modulepreload" href="${prefix}${file}">`).join('')
    await writeFile(path.join(root, page), html.replace('</head>', `${links}</head>`))
    changed++
  }
  return changed
}
