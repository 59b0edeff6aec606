import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calls } from '../../src/checks/calls.ts'
import * as core from '../../src/core/index.ts'
import { parse } from 'yaml'
import { calledFrom } from './references.ts'

const root = new URL('../../', import.meta.url)
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8')
const filesIn = (folder: string): string[] =>
  readdirSync(new URL(folder, root)).map((name) => `${folder}${name}`)

/** Core functions that a check against the world outside asks for. */
const checked = new Set(
  filesIn('content/checks/')
    .flatMap((path) => (parse(read(path)) as { checks: { call: string }[] }).checks)
    .flatMap(({ call }) => calls[call]?.core ?? []),
)

/** Core functions that test files with laws for arbitrary arguments call. */
const lawful = new Set(
  filesIn('tests/core/')
    .filter((path) => path.endsWith('.test.ts') && /fc\.property\b/.test(read(path)))
    .flatMap((path) => [...calledFrom('src/core', path)]),
)

const isCovered = (name: string): boolean => checked.has(name) || lawful.has(name)

describe('every export of the core is shown right from outside', () => {
  test('Object.keys(core) holds no function without a published value or a law tested by property, by call', () => {
    const bare = Object.entries(core).flatMap(([name, value]) =>
      typeof value !== 'function' || isCovered(name) ? [] : [name],
    )
    expect(
      bare,
      'write a check in content/checks, or a property test in tests/core, for each of these',
    ).toEqual([])
  })

  test('calls[…].core names functions that the core has', () => {
    const known = filesIn('src/core/').map(read).join('\n')
    for (const name of checked)
      expect(known, name).toMatch(new RegExp(`^export (?:function|const) ${name}\\b`, 'm'))
  })
})
