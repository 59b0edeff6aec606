import { readFile } from 'node:fs/promises'
import path from 'node:path'

/** The line on which a core file defines a function; a name that is not there stops the build. */
export async function lineOf(file: string, name: string): Promise<number> {
  const text = await readFile(path.join(process.cwd(), 'src/core', `${file}.ts`), 'utf8').catch(
    () => {
      throw new Error(`<Derivation file="${file}">: there is no src/core/${file}.ts`)
    },
  )
  const line = text
    .split('\n')
    .findIndex((each) => new RegExp(`^export (?:function|const) ${name}\\b`).test(each))
  if (line === -1)
    throw new Error(
      `<Derivation of="${name}" file="${file}">: src/core/${file}.ts does not export it`,
    )
  return line + 1
}
