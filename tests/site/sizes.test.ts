import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { calculatorIds } from '../../src/calculators/index.ts'
import { lazyFiles, Modules } from '../../src/build/preload.ts'

const folder = path.resolve('dist/_astro')
const files = readdirSync(folder)
const named = (start: string): string => files.find((file) => file.startsWith(`${start}.`) && file.endsWith('.js'))!
const gzipped = (all: Iterable<string>): number => [...all].reduce((sum, file) => sum + gzipSync(readFileSync(path.join(folder, file)), { level: 9 }).length, 0)
const isFigure = (file: string): boolean => /^[A-Z]/.test(file)

/** What a page may load for its calculator before the figure: Preact, the card, the definition and the physics that it calls [bytes, gzip]. */
const BUDGET = 45_000

test('a page loads at most 45 kB gzip for its calculator before the figure, and each figure is a chunk of its own', async () => {
  const modules = new Modules(folder)
  const lazy = await lazyFiles(folder, named('Island'), modules)
  expect([...lazy.keys()].sort()).toEqual([...calculatorIds].sort())
  const figures = [...lazy.values()].map((own) => own.filter(isFigure))
  expect(figures.every((own) => own.length === 1)).toBe(true)
  expect(new Set(figures.flat()).size).toBe(calculatorIds.length)
  const definitions = [...lazy.values()].flat().filter((file) => !isFigure(file))
  const all = await modules.closure([named('Island'), named('client'), ...definitions])
  console.log(`card and all ${definitions.length} definitions with their physics, which no page loads at once: ${(gzipped(all) / 1000).toFixed(1)} kB`)
  const over: string[] = []
  for (const id of calculatorIds) {
    const own = lazy.get(id)!
    const before = gzipped(await modules.closure([named('Island'), named('client'), ...own.filter((file) => !isFigure(file))]))
    const whole = gzipped(await modules.closure([named('Island'), named('client'), ...own]))
    console.log(`${id}: ${(before / 1000).toFixed(1)} kB, with its figure ${(whole / 1000).toFixed(1)} kB`)
    if (before > BUDGET) over.push(`${id}: ${before} bytes`)
  }
  expect(over).toEqual([])
})
