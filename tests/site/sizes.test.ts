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

/** The budget of the plan: the machine and every definition, before a figure. */
const MACHINE_BUDGET = 45_000

test('the calculator machine and all definitions fit in 45 kB gzip, and each calculator has a figure in a chunk of its own', async () => {
  const modules = new Modules(folder)
  const lazy = await lazyFiles(folder, named('Island'), modules)
  expect([...lazy.keys()].sort()).toEqual([...calculatorIds].sort())
  const figures = [...lazy.values()].map((own) => own.filter(isFigure))
  expect(figures.every((own) => own.length === 1)).toBe(true)
  expect(new Set(figures.flat()).size).toBe(calculatorIds.length)
  const machine = await modules.closure([named('Island'), named('client'), ...[...lazy.values()].flat().filter((file) => !isFigure(file))])
  const size = gzipped(machine)
  console.log(`the machine and all definitions: ${(size / 1000).toFixed(1)} kB gzip in ${machine.size} files`)
  expect(size).toBeLessThanOrEqual(MACHINE_BUDGET)
  for (const id of calculatorIds) {
    const own = await modules.closure([named('Island'), named('client'), ...lazy.get(id)!])
    console.log(`${id}: ${(gzipped(own) / 1000).toFixed(1)} kB gzip with its figure`)
  }
})
