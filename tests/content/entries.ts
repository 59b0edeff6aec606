import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { parse } from 'yaml'

/** What the tests of content read of a procedure. */
export interface ProcedureText {
  id: string
  title: string
  order: number
  next?: string
  skip?: string
  skipTo?: string
  readings?: { id: string; label: string; quantity: string; unit?: string; range?: [number, number]; to?: { calculator: string; input: string } }[]
  before?: string[]
  stop?: string[]
  tools: string[]
  steps: { id: string; do: string; detail?: string; hazards: string[]; cautions: string[]; readings: string[]; picture?: string }[]
  related?: { chapters?: string[]; calculators?: string[] }
  sources?: string[]
}

export interface Entry {
  id: string
  data: Record<string, unknown>
  body: string
}

/** The entries of a folder of MDX or YAML files, the file's name being the id. */
export function entries(folder: string): Entry[] {
  return readdirSync(path.join('content', folder))
    .filter((name) => /\.(mdx|yaml)$/.test(name))
    .map((name) => {
      const text = readFileSync(path.join('content', folder, name), 'utf8')
      const [, front = '', body = ''] = name.endsWith('.yaml') ? [null, text, ''] : (/^---\n([\s\S]*?)\n---\n?([\s\S]*)$/.exec(text) ?? [])
      return { id: name.replace(/\.\w+$/, ''), data: parse(front) as Record<string, unknown>, body }
    })
}

/** The entries of one YAML file that lists them. */
export function listed(file: string): Record<string, unknown>[] {
  return parse(readFileSync(path.join('content', file), 'utf8')) as Record<string, unknown>[]
}

export const procedures = (): ProcedureText[] =>
  entries('procedures')
    .map(({ id, data }) => ({ id, ...data }) as unknown as ProcedureText)
    .sort((a, b) => a.order - b.order)
