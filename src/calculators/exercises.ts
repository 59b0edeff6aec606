import { calculatorOf } from '../machine/calculator.ts'
import type { Calculator } from '../machine/calculator.ts'
import type { Exercise } from '../machine/question.ts'
import type { Statement } from '../machine/statement.ts'
import type { Work } from '../machine/work.ts'
import { importFolders } from './folders.ts'

/* What a worksheet is made from. A browser gets a calculator's part once the sheet asks about it; plain Node reads the folder. */

type Module<T> = { default: T }
type Loaders<T> = Readonly<Record<string, () => Promise<Module<T>>>>

const bundled = import.meta.env !== undefined

/** As a bundler's pattern gives them: functions that load. */
async function fromFolders<T>(file: string): Promise<Loaders<T>> {
  const modules = await importFolders<Module<T>>(file)
  return Object.fromEntries(
    Object.entries(modules).map(([key, module]) => [key, () => Promise.resolve(module)]),
  )
}

const statements: Loaders<Statement> = bundled
  ? import.meta.glob<Module<Statement>>('./*/statement.ts')
  : await fromFolders('statement.ts')
const works: Loaders<Work> = bundled
  ? import.meta.glob<Module<Work>>('./*/solve.ts')
  : await fromFolders('solve.ts')
const questions: Loaders<readonly Exercise[]> = bundled
  ? import.meta.glob<Module<readonly Exercise[]>>('./*/questions.ts')
  : await fromFolders('questions.ts')

/** The work of a calculator with its picture, done where it is asked for and not in a worker; refuses an unknown id. */
export async function loadWorkHere(id: string): Promise<Work> {
  const load = works[`./${id}/solve.ts`]
  if (load === undefined) throw new RangeError(`there is no calculator “${id}”`)
  return (await load()).default
}

/** A sheet draws nothing. */
const withoutPicture = (work: Work): Work => ({
  ...work,
  solve: (input) => ({ ...work.solve(input), picture: () => undefined }),
})

/** A calculator with the questions that can be asked about it. */
export interface Topic {
  id: string
  title: string
  calculator: Calculator
  exercises: readonly Exercise[]
}

/** The topics of these calculators, in the order of the overview; unknown ids are left out. */
export async function loadTopics(ids: readonly string[]): Promise<readonly Topic[]> {
  const known = ids.filter((id) => `./${id}/questions.ts` in questions)
  const topics = await Promise.all(
    known.map(async (id) => {
      const [statement, work, exercises] = await Promise.all([
        statements[`./${id}/statement.ts`]!(),
        works[`./${id}/solve.ts`]!(),
        questions[`./${id}/questions.ts`]!(),
      ])
      const { title, order } = statement.default
      return {
        order,
        topic: {
          id,
          title,
          calculator: calculatorOf(statement.default, withoutPicture(work.default)),
          exercises: exercises.default,
        },
      }
    }),
  )
  return topics.sort((one, other) => one.order - other.order).map(({ topic }) => topic)
}
