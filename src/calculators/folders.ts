import { existsSync, readdirSync } from 'node:fs'
import path from 'node:path'

// a path, and no URL relative to this module: a bundler takes such a URL for files of the site, and copies every source that it may name
const here = import.meta.dirname

/** The module of one file name in every folder here, keyed as a bundler's pattern would: `./<folder>/<file>`. */
export async function importFolders<T>(file: string): Promise<Record<string, T>> {
  const folders = readdirSync(here, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .filter((name) => existsSync(path.join(here, name, file)))
  const modules = folders.map(
    async (name) => [`./${name}/${file}`, (await import(`./${name}/${file}`)) as T] as const,
  )
  return Object.fromEntries(await Promise.all(modules))
}
