/**
 * Lists what stands behind each core function that a calculator uses, and behind each result: by calls that are counted while they happen, not by what a file mentions.
 * Run by itself in plain Node, where the core's files are not bundled: `node src/build/behindRun.ts` writes the list as JSON.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { Session } from 'node:inspector/promises'
import { parse } from 'yaml'
import { readSheet } from '../bikes/sheet.ts'
import type { BikeSheets } from '../bikes/sheet.ts'
import { calculatorIds, loadCalculator } from '../calculators/index.ts'
import { runChecks } from '../checks/published.ts'
import { checkTopic } from '../checks/schema.ts'
import { secondOutputs, singleCases } from '../checks/second/calculators.ts'
import { runParts } from '../checks/second/parts.ts'
import { loadWorkedChecks, runWorked } from '../checks/worked.ts'
import * as core from '../core/index.ts'
import { defaultsOf, evaluate } from '../machine/evaluate.ts'
import type { Given } from '../machine/given.ts'
import type { Input } from '../machine/statement.ts'
import type { Behind } from './behind.ts'

const bikes: BikeSheets = Object.fromEntries(
  readdirSync('content/bikes').map((file) => {
    const id = file.replace('.yaml', '')
    return [id, readSheet(id, parse(readFileSync(`content/bikes/${file}`, 'utf8')))]
  }),
)

const topics = readdirSync('content/checks').map((file) =>
  checkTopic.parse(parse(readFileSync(`content/checks/${file}`, 'utf8'))),
)

const functions = new Set(
  Object.entries(core).flatMap(([name, value]) =>
    typeof value === 'function' && !/^[A-Z]/.test(name) ? [name] : [],
  ),
)

const session = new Session()
session.connect()
await session.post('Profiler.enable')
await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false })

/** The core's functions that run while something does. */
async function called(run: () => void): Promise<Set<string>> {
  await session.post('Profiler.takePreciseCoverage')
  run()
  const { result } = await session.post('Profiler.takePreciseCoverage')
  const names = result
    .filter(({ url }) => url.includes('/src/core/'))
    .flatMap((script) =>
      script.functions.flatMap(({ functionName, ranges }) =>
        (ranges[0]?.count ?? 0) > 0 ? [functionName] : [],
      ),
    )
  return new Set(names.filter((name) => functions.has(name)))
}

/** Ends and choices of an input, so that each way through a calculator is gone once. */
function tried(input: Input): Given[string][] {
  if (input.kind === 'quantity') return [input.range[0], input.range[1]]
  if (input.kind === 'choice') return Object.keys(input.options)
  if (input.kind === 'bike') return Object.keys(bikes)
  return []
}

function statesOf(id: string): Given[] {
  const { inputs } = loadCalculator(id)
  return [
    {},
    ...Object.entries(inputs).flatMap(([name, input]) =>
      tried(input).map((value): Given => ({ [name]: value })),
    ),
  ]
}

async function usedBy(id: string): Promise<Set<string>> {
  const calculator = loadCalculator(id)
  return called(() => {
    for (const given of statesOf(id))
      evaluate(calculator, { ...defaultsOf(calculator), ...given }, { bikes })
  })
}

/** By core function, the checks whose counted values come out of it. */
async function outsideOf(): Promise<Map<string, string[]>> {
  const behind = new Map<string, string[]>()
  for (const topic of topics) {
    for (const check of topic.checks) {
      if (check.uncounted !== undefined) continue
      const names = await called(() => void runChecks([{ ...topic, checks: [check] }]))
      for (const name of names) behind.set(name, [...(behind.get(name) ?? []), check.id])
    }
  }
  return behind
}

/** Of the functions that a state names, those that it does call. */
const named = async (names: readonly string[], run: () => void): Promise<string[]> => {
  if (names.length === 0) return []
  const ran = await called(run)
  return names.filter((name) => ran.has(name))
}

/** By core function, how many hand-worked cases hold values that come out of it. */
async function byHandOf(): Promise<Map<string, number>> {
  const byHand = new Map<string, number>()
  for (const id of calculatorIds) {
    const calculator = loadCalculator(id)
    for (const check of await loadWorkedChecks(id)) {
      const run = (): void => void runWorked(calculator, [check], bikes)
      for (const name of await named(check.core ?? [], run))
        byHand.set(name, (byHand.get(name) ?? 0) + 1)
    }
  }
  return byHand
}

async function secondOf(): Promise<Set<string>> {
  const second = new Set(['solveStance', ...runParts(1).map(({ name }) => name)])
  for (const { calculator, given, core: names } of singleCases(bikes)) {
    const run = (): void => void evaluate(loadCalculator(calculator), given, { bikes })
    for (const name of await named(names, run)) second.add(name)
  }
  return second
}

const outside = await outsideOf()
const byHand = await byHandOf()
const second = await secondOf()
const used = new Map<string, string[]>()
for (const id of calculatorIds)
  for (const name of await usedBy(id)) used.set(name, [...(used.get(name) ?? []), id])
const byVirtualWork = new Set(
  secondOutputs(loadCalculator, bikes).map(({ calculator, output }) => `${calculator} ${output}`),
)

const list: Behind = {
  functions: [...used]
    .sort(([a], [b]) => a.localeCompare(b))
    .map(([name, calculators]) => ({
      name,
      calculators,
      outside: outside.get(name) ?? [],
      second: second.has(name),
      byHand: byHand.get(name) ?? 0,
    })),
  calculators: await Promise.all(
    calculatorIds.map(async (id) => {
      const { title, outputs } = loadCalculator(id)
      const worked = await loadWorkedChecks(id)
      return {
        id,
        title,
        outputs: Object.entries(outputs).map(([output, { label, kind }]) => ({
          id: output,
          label,
          kind: kind ?? 'quantity',
          worked: worked.filter(({ expect }) =>
            Object.keys(expect).some((path) => path.split('.')[0] === output),
          ).length,
          second: byVirtualWork.has(`${id} ${output}`),
        })),
      }
    }),
  ),
}
process.stdout.write(JSON.stringify(list))
