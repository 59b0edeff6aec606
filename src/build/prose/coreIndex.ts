import { readdir, readFile } from 'node:fs/promises'
import path from 'node:path'

const folder = path.join(process.cwd(), 'src/core')

/** A file of the core: its name without the ending, its lines, and what it exports with the line [from 1] of each. */
export interface CoreFile {
  name: string
  lines: readonly string[]
  exports: ReadonlyMap<string, number>
}

const EXPORTED = /^export (?:(?:async )?function|const|class|interface|type) (\w+)/

async function readCoreFile(file: string): Promise<CoreFile> {
  const lines = (await readFile(path.join(folder, file), 'utf8')).replace(/\n$/, '').split('\n')
  const found = lines.flatMap((line, index): [string, number][] => {
    const name = EXPORTED.exec(line)?.[1]
    return name === undefined ? [] : [[name, index + 1]]
  })
  return { name: file.replace(/\.ts$/, ''), lines, exports: new Map(found) }
}

let all: Promise<CoreFile[]> | null = null

/** Every file of the core, by name; read once a build. */
export function coreFiles(): Promise<CoreFile[]> {
  all ??= readdir(folder).then((files) =>
    Promise.all(
      files
        .filter((file) => file.endsWith('.ts'))
        .sort()
        .map(readCoreFile),
    ),
  )
  return all
}

/** Address of the line that defines a name of the core, below the site's base: "source/spring/#L104". A name that no file exports stops the build. */
export async function coreAddress(name: string): Promise<string> {
  const file = (await coreFiles()).find((each) => each.exports.has(name))
  if (file === undefined) throw new Error(`no file of src/core exports “${name}”`)
  return `source/${file.name}/#L${file.exports.get(name)}`
}
