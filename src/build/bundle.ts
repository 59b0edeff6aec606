import { mkdir, readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import type { Plugin } from 'vite'

/** A built module: its address below the site's base, the source that it stands for (below the project, or null), the built modules that it imports at once, and those that it imports later. */
export interface BuiltModule {
  file: string
  source: string | null
  imports: readonly string[]
  later: readonly string[]
}

const LIST = path.resolve('.cache/bundle.json')

/** Notes, while the bundler writes what browsers load, which source became which file. */
export function listBundle(): Plugin {
  return {
    name: 'list-bundle',
    applyToEnvironment: ({ name }) => name === 'client',
    async generateBundle(_, bundle) {
      const modules = Object.values(bundle).flatMap((output): BuiltModule[] => {
        if (output.type !== 'chunk') return []
        const { fileName: file, facadeModuleId, imports, dynamicImports: later } = output
        const source = facadeModuleId && path.relative(process.cwd(), facadeModuleId)
        return [{ file, source, imports, later }]
      })
      await mkdir(path.dirname(LIST), { recursive: true })
      await writeFile(LIST, JSON.stringify(modules, null, 1))
    },
  }
}

/** The built modules of the last build. */
export class Bundle {
  readonly #byFile: ReadonlyMap<string, BuiltModule>
  readonly #bySource: ReadonlyMap<string, BuiltModule>

  constructor(modules: readonly BuiltModule[]) {
    this.#byFile = new Map(modules.map((each) => [each.file, each]))
    this.#bySource = new Map(modules.map((each) => [each.source ?? '', each]))
  }

  static async read(): Promise<Bundle> {
    return new Bundle(JSON.parse(await readFile(LIST, 'utf8')) as BuiltModule[])
  }

  /** The file that a source (below the project) became; refuses one that is no module of its own. */
  fileOf(source: string): string {
    const module = this.#bySource.get(source)
    if (module === undefined) throw new Error(`no built module of its own for ${source}`)
    return module.file
  }

  /** The files, and all that they import at once; what they import later too, where `later` says so of its source. */
  closure(files: Iterable<string>, later: (source: string) => boolean = () => false): Set<string> {
    const all = new Set<string>()
    const waiting = [...files]
    for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
      if (all.has(file)) continue
      all.add(file)
      const module = this.#byFile.get(file)
      const wanted = module?.later.filter((each) => later(this.#byFile.get(each)?.source ?? ''))
      waiting.push(...(module?.imports ?? []), ...(wanted ?? []))
    }
    return all
  }
}
