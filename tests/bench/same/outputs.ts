import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { OutputValue } from '../../../src/machine/cells.ts'
import type { Given } from '../../../src/machine/given.ts'
import type { CardStatement } from '../../../src/machine/statement.ts'

/** What a checkout tells of a calculator. */
export type Described = Pick<CardStatement, 'id' | 'version' | 'earlier' | 'inputs' | 'outputs'>

/** A state to compute. */
export interface Asked {
  id: string
  given: Given
}

/** What came of it: the results [SI], or why there are none. */
export interface Told {
  output: Readonly<Record<string, OutputValue>> | null
  refused: string
}

/** Far above what 500 states of every calculator come to. */
const LONGEST = 2 ** 30

function run(folder: string, what: 'describe' | 'compute', input: unknown): unknown {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [fileURLToPath(new URL('checkout.ts', import.meta.url)), what],
    { cwd: folder, input: JSON.stringify(input), encoding: 'utf8', maxBuffer: LONGEST },
  )
  if (status !== 0) throw new Error(`${folder} could not be run:\n${stderr}`)
  return JSON.parse(stdout)
}

/** The calculators of a checkout, by its own code. */
export const describe = (folder: string): readonly Described[] =>
  run(folder, 'describe', null) as readonly Described[]

/** States computed by a checkout's own code, with its own invented bikes. */
export const compute = (folder: string, asked: readonly Asked[]): readonly Told[] =>
  run(folder, 'compute', asked) as readonly Told[]
