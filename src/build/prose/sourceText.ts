import type { CoreFile } from './coreIndex.ts'

/** A piece of a line of code: text, or a name with the address that defines it (below the site's base). */
export interface CodePiece {
  text: string
  to?: string
}

const IMPORT = /^(?:import|export) (?:type )?\{([^}]*)\} from '\.\/(\w+)\.ts'/
const PIECES = /\/\/.*|'(?:\\.|[^'\\])*'|`(?:\\.|[^`\\])*`|[A-Za-z_$][\w$]*|[^'`/A-Za-z_$]+|\//g

/** What the names in a file stand for: what it imports and what it exports, each with its address. */
export function namesIn(file: CoreFile, files: readonly CoreFile[]): Map<string, string> {
  const names = new Map(
    [...file.exports].map(([name, line]) => [name, `source/${file.name}/#L${line}`]),
  )
  for (const line of file.lines) {
    const [, list = '', from = ''] = IMPORT.exec(line) ?? []
    const source = files.find((each) => each.name === from)
    for (const name of list.split(',').map((part) => part.trim().replace(/^type /, ''))) {
      const at = source?.exports.get(name)
      if (at !== undefined) names.set(name, `source/${from}/#L${at}`)
    }
  }
  return names
}

const isComment = (line: string): boolean => /^\s*(?:\/\*\*?|\*)/.test(line)

/** Cuts a line into text and linked names. Comments and texts keep their words unlinked, except the path of an import. */
export function codePieces(line: string, names: ReadonlyMap<string, string>): CodePiece[] {
  if (isComment(line)) return [{ text: line }]
  return (line.match(PIECES) ?? []).map((text) => {
    const file = /^'\.\/(\w+)\.ts'$/.exec(text)?.[1]
    const to = file === undefined ? names.get(text) : `source/${file}/`
    return to === undefined ? { text } : { text, to }
  })
}
