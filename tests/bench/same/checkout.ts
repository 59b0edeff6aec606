/** Run in the folder of a checkout, of this edition or an earlier one: tells its calculators, or computes the states that it is handed. */
import { existsSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Asked, Described, Told } from './outputs.ts'

interface Edition {
  calculatorIds: readonly string[]
  loadCalculator(id: string): Described | Promise<Described>
}
interface Machine {
  evaluate(
    calculator: Described,
    given: object,
    context: object,
  ): { now: { output: object } | null; problems: object; refusal: string | null }
}

const load = async (file: string): Promise<unknown> => import(pathToFileURL(file).href)
const here = (...files: string[]): string =>
  path.resolve(files.find((file) => existsSync(file)) ?? files[0]!)

const { calculatorIds, loadCalculator } = (await load(here('src/calculators/index.ts'))) as Edition

async function describe(): Promise<Described[]> {
  const all: Described[] = []
  for (const id of calculatorIds) all.push(await loadCalculator(id))
  return all.map(({ id, version, earlier, inputs, outputs }) => ({
    id,
    version,
    ...(earlier ? { earlier } : {}),
    inputs,
    outputs,
  }))
}

async function compute(asked: readonly Asked[]): Promise<Told[]> {
  const { evaluate } = (await load(
    here('src/machine/evaluate.ts', 'src/calculators/evaluate.ts'),
  )) as Machine
  const { bikes } = (await load(here('tests/calculators/bikes.ts'))) as { bikes: object }
  const told: Told[] = []
  for (const { id, given } of asked) {
    const { now, problems, refusal } = evaluate(await loadCalculator(id), given, { bikes })
    const refused = [...(Object.values(problems) as string[]), ...(refusal ? [refusal] : [])]
    told.push({ output: now?.output ?? null, refused: refused.join('. ') } as Told)
  }
  return told
}

const asked = process.argv[2] === 'compute' ? readFileSync(0, 'utf8') : null
process.stdout.write(
  JSON.stringify(
    asked === null ? await describe() : await compute(JSON.parse(asked) as readonly Asked[]),
  ),
)
