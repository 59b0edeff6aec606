import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { calculatorIds } from '../calculators/index.ts'
import type { Bundle } from './bundle.ts'
import { laterFiles } from './preload.ts'

/* What a page needs to work without a network, found in what was built. */

const NAMED = /_astro\/[\w.~@-]+\.(?:js|css|woff2)/g
/** What a script or a style names in words rather than by an import: styles of later parts, fonts, workers. */
const BESIDE = /(?:_astro\/)?[\w.~@-]+\.(?:css|woff2)|_astro\/worker-[\w-]+\.js/g
/** A page's data name the calculators that it works with, and the islands on it theirs. */
const CALCULATOR = /(?:"calculator":"|props="\{&quot;id&quot;:\[0,&quot;)([\w-]+)/g
const OF_CALCULATOR = /^src\/calculators\/([\w-]+)\/(?!index)/

/** Modules of a calculator's that come once its numbers change. */
const REMARKS = (id: string): string => `src/calculators/${id}/remarks.ts`

export class Needs {
  readonly #root: string
  readonly #bundle: Bundle
  readonly #beside = new Map<string, Promise<string[]>>()

  constructor(root: string, bundle: Bundle) {
    this.#root = root
    this.#bundle = bundle
  }

  /** What one script or style names; nothing of what was not built. */
  #besideOf(file: string): Promise<string[]> {
    const known = this.#beside.get(file)
    if (known) return known
    const found = readFile(path.join(this.#root, file), 'utf8').then((text) =>
      [...text.matchAll(BESIDE)]
        .map(([name]) => `_astro/${path.basename(name)}`)
        .filter((each) => existsSync(path.join(this.#root, each))),
    )
    this.#beside.set(file, found)
    return found
  }

  /** The files that a page [its text] needs: what it names, what that imports, and its calculators’ parts. */
  async of(html: string): Promise<string[]> {
    const own = [...html.matchAll(NAMED)].map(([name]) => name)
    const used = new Set([...html.matchAll(CALCULATOR)].map(([, id]) => id!))
    const parts = calculatorIds
      .filter((id) => used.has(id))
      .flatMap((id) => {
        const { work, figure } = laterFiles(this.#bundle, id)
        return [work, figure, this.#bundle.fileOf(REMARKS(id))]
      })
    const later = (source: string): boolean => {
      const id = OF_CALCULATOR.exec(source)?.[1]
      return id === undefined ? !source.startsWith('src/drawing/stills/') : used.has(id)
    }
    const all = this.#bundle.closure([...own, ...parts], later)
    for (const file of all)
      if (/\.(js|css)$/.test(file)) for (const each of await this.#besideOf(file)) all.add(each)
    return [...all].sort()
  }
}
