import { execFileSync } from 'node:child_process'

/** What stands behind one core function that calculators use. */
export interface FunctionBehind {
  name: string
  calculators: readonly string[]
  /** ids of checks with a counted outside value that comes out of it */
  outside: readonly string[]
  /** whether the second method has its own way to the same number */
  second: boolean
  /** hand-worked cases whose values come out of it */
  byHand: number
}

/** Whether anything outside the core stands behind a function. */
export const isHeld = ({ outside, second, byHand }: FunctionBehind): boolean =>
  outside.length > 0 || second || byHand > 0

/** What stands behind one result of a calculator. */
export interface OutputBehind {
  id: string
  label: string
  kind: 'quantity' | 'choice' | 'table'
  /** hand-worked cases that hold it */
  worked: number
  second: boolean
}

/** Whether a result is numbers: a verdict follows from them, and tests hold its limits. */
export const isNumberOrTable = ({ kind }: OutputBehind): boolean => kind !== 'choice'

/** The list of the build. */
export interface Behind {
  functions: readonly FunctionBehind[]
  calculators: readonly { id: string; title: string; outputs: readonly OutputBehind[] }[]
}

let list: Behind | null = null

/** What stands behind the core and the calculators, by calls that were counted. Once a build, in a Node of its own, where the core's files are not bundled. */
export function behind(): Behind {
  list ??= JSON.parse(
    execFileSync(process.execPath, ['src/build/behindRun.ts'], {
      encoding: 'utf8',
      maxBuffer: 1e8,
    }),
  ) as Behind
  return list
}
