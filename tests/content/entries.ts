import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { parse } from 'yaml'
import { procedure } from '../../src/record/procedureSchema.ts'
import type { ProcedureWritten } from '../../src/record/procedureSchema.ts'

/** A procedure as its schema reads it. */
export interface ProcedureText extends ProcedureWritten {
  id: string
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
    .map(({ id, data }) => ({ id, ...procedure.parse(data) }))
    .sort((a, b) => a.order - b.order)
