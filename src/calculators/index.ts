import { calculatorOf } from '../machine/calculator.ts'
import type { WholeCalculator } from '../machine/calculator.ts'
import type { Remarks } from '../machine/remark.ts'
import type { Statement } from '../machine/statement.ts'
import type { Work } from '../machine/work.ts'
import { importFolders } from './folders.ts'

/* Every calculator is a folder beside this file. A bundler finds them by the patterns; plain Node, which runs scripts, reads the directory. */

type Module<T> = { default: T }

const bundled = import.meta.env !== undefined

const statements = bundled
  ? import.meta.glob<Module<Statement>>('./*/statement.ts', { eager: true })
  : await importFolders<Module<Statement>>('statement.ts')
const works = bundled
  ? import.meta.glob<Module<Work>>('./*/solve.ts', { eager: true })
  : await importFolders<Module<Work>>('solve.ts')
const remarks = bundled
  ? import.meta.glob<Module<Remarks>>('./*/remarks.ts', { eager: true })
  : await importFolders<Module<Remarks>>('remarks.ts')

const ordered = Object.values(statements)
  .map((module) => module.default)
  .sort((one, other) => one.order - other.order)

/** All ids, in the order of the overview. */
export const calculatorIds: readonly string[] = ordered.map(({ id }) => id)

export const isCalculatorId = (id: string): boolean => calculatorIds.includes(id)

function moduleOf<T>(modules: Readonly<Record<string, Module<T>>>, id: string, file: string): T {
  const module = modules[`./${id}/${file}`]
  if (module === undefined)
    throw new RangeError(`there is no calculator “${id}”; known are ${calculatorIds.join(', ')}`)
  return module.default
}

/** One whole calculator; refuses an id that has no folder. */
export const loadCalculator = (id: string): WholeCalculator => ({
  ...calculatorOf(moduleOf(statements, id, 'statement.ts'), moduleOf(works, id, 'solve.ts')),
  remarks: moduleOf(remarks, id, 'remarks.ts'),
})
