/**
 * Plants faults in src/core, src/machine and each solve.ts, one at a time, and counts how many tests catch: `npm run mutate`, a slice (`-- core`, `-- machine`,
 * `-- solve`), or files (`-- core/spring machine/link sag`). Each file is tried against the tests that fit it, not against all: a mutant that runs them all
 * takes minutes. So the share told is a lower bound. What was tried before is kept in reports/mutation and tried again only where the file or its tests changed.
 * Faults that change no result are explained in explained.ts, and told apart. Fails where a slice is below 90 %.
 */
import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { EXPLAINED } from './explained.ts'

const CONFIG = 'tests/stryker.config.json'
const CONFIGURED = JSON.parse(readFileSync(CONFIG, 'utf8')) as Record<string, unknown>
const WANTED = 0.9
const LAWS = ['laws', 'representable']
const STANCE = ['stance', 'stanceCases', 'lift', 'scales']
/** Files that are tested through what they serve. */
const THROUGH: Record<string, string[]> = {
  oilLevel: ['gas'],
  balance: STANCE,
  newton: STANCE,
  scene: STANCE,
  stance: STANCE,
  forceNeeded: ['choose'],
  chassis: ['stanceCases'],
  whipple: ['steering'],
  bikeContradictions: ['fitBike'],
  bikeParameters: ['fitBike', 'sampleBike'],
  bikeProblem: ['fitBike'],
  bikeSolve: ['fitBike'],
  contradictions: ['fitBike'],
  covariance: ['fitNonlinear'],
  leastSquares: ['fitNonlinear'],
  observation: ['fitBike'],
  plusMinus: ['fitBike'],
  predict: ['fitBike'],
  qr: ['fitNonlinear'],
  random: ['sampleBike'],
  search: ['fitNonlinear'],
  slopes: ['fitNonlinear'],
  trustStep: ['fitNonlinear'],
}
const DATA = new Set(['bike', 'index', 'constants', 'viscosityIndexTable'])
/** What the cards' machine serves: each of its files shows in one of these. */
const MACHINE = [
  ...[
    'apart',
    'away',
    'bikeFill',
    'decidingRemark',
    'fields',
    'keptLinks',
    'link',
    'number',
    'paste',
    'units',
  ],
  ...['whatDecides', 'worked', 'marks', 'sag', 'spring-test', 'rate-from-sag', 'stance'],
].map((name) => `calculators/${name}`)
/** Calculators that are tested in more files than their own. */
const ALSO: Record<string, string[]> = {
  'find-change': ['findChangeTrade'],
  stance: ['hung'],
  sag: ['hung'],
}

type Slice = 'core' | 'machine' | 'solve'
/** A file to plant faults in, and the tests that fit it, without `tests/` and `.test.ts`. */
interface Target {
  slice: Slice
  name: string
  file: string
  tests: string[]
}

const namesIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith('.ts'))
    .map((file) => file.replace('.ts', ''))

const core = namesIn('src/core')
  .filter((name) => !DATA.has(name))
  .map((name): Target => {
    const own = existsSync(`tests/core/${name}.test.ts`) ? [name] : []
    const tests = [...new Set([...own, ...(THROUGH[name] ?? []), ...LAWS])]
    return {
      slice: 'core',
      name,
      file: `src/core/${name}.ts`,
      tests: tests.map((test) => `core/${test}`),
    }
  })
const machine = [
  ...namesIn('src/machine'),
  ...namesIn('src/machine/inputs').map((name) => `inputs/${name}`),
].map((name): Target => ({
  slice: 'machine',
  name,
  file: `src/machine/${name}.ts`,
  tests: MACHINE,
}))
const solve = readdirSync('src/calculators')
  .filter((name) => existsSync(`src/calculators/${name}/solve.ts`))
  .map((name): Target => ({
    slice: 'solve',
    name,
    file: `src/calculators/${name}/solve.ts`,
    tests: [name, 'worked', ...(ALSO[name] ?? [])].map((test) => `calculators/${test}`),
  }))

interface Mutant {
  status:
    'Killed' | 'Survived' | 'Timeout' | 'NoCoverage' | 'Ignored' | 'CompileError' | 'RuntimeError'
  mutatorName: string
  replacement?: string
  location: { start: Place; end: Place }
}
/** Faults caught, all that count, and those that change nothing. */
interface Tally {
  caught: number
  tried: number
  explained: number
}
interface Place {
  line: number
  column: number
}

/** The text that a mutant changes, on one line. */
function textAt(lines: string[], { start, end }: Mutant['location']): string {
  const text = lines.slice(start.line - 1, end.line)
  text[text.length - 1] = text.at(-1)!.slice(0, end.column - 1)
  text[0] = text[0]!.slice(start.column - 1)
  return text.join(' ').replace(/\s+/g, ' ')
}

/** Why a mutant that no test caught changes nothing, or null. */
function excuse(
  name: string,
  lines: string[],
  { location, replacement = '' }: Mutant,
): string | null {
  const line = lines[location.start.line - 1] ?? ''
  const was = textAt(lines, location)
  const fits = (wanted: string | undefined, given: string): boolean =>
    wanted === undefined || wanted === given
  return (
    EXPLAINED[name]?.find(
      (one) =>
        line.includes(one.line ?? '') && fits(one.was, was) && fits(one.becomes, replacement),
    )?.why ?? null
  )
}

/** Tries one file; prints what no test caught. */
function tryFile({ slice, name, file, tests }: Target): Tally {
  const kept = `reports/mutation/${slice}-${name.replace('/', '-')}`
  const report = `${kept}.json`
  const wanted = { ...CONFIGURED, mutate: [file], incrementalFile: report }
  const config = `${kept}.config.json`
  writeFileSync(config, JSON.stringify(wanted))
  execFileSync('node_modules/.bin/stryker', ['run', config], {
    env: { ...process.env, MUTATE_TESTS: tests.join(',') },
    stdio: ['ignore', 'ignore', 'inherit'],
  })
  const { files } = JSON.parse(readFileSync(report, 'utf8')) as {
    files: Record<string, { source: string; mutants: Mutant[] }>
  }
  const { source = '', mutants = [] } = files[file] ?? {}
  const lines = source.split('\n')
  const caught = mutants.filter(({ status }) => status === 'Killed' || status === 'Timeout').length
  const alive = mutants
    .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
    .map((mutant) => ({ mutant, why: excuse(`${slice}/${name}`, lines, mutant) }))
  const missed = alive.filter(({ why }) => why === null)
  const explained = alive.length - missed.length
  console.log(
    `${`${slice}/${name}`.padEnd(30)} ${String(caught).padStart(4)} of ${String(caught + missed.length).padStart(4)} caught, ${explained} explained`,
  )
  for (const { mutant, why } of alive) tell(lines, mutant, why)
  return { caught, tried: caught + missed.length, explained }
}

function tell(lines: string[], mutant: Mutant, why: string | null): void {
  const [was, becomes] = [
    textAt(lines, mutant.location),
    (mutant.replacement ?? '').replace(/\s+/g, ' '),
  ].map((text) => text.slice(0, 90))
  console.log(
    `    ${why === null ? 'missed' : 'explained'}, line ${mutant.location.start.line}: ${was} → ${becomes}${why === null ? '' : ` (${why})`}`,
  )
}

const all = [...solve, ...machine, ...core]
const asked = process.argv.slice(2)
const chosen =
  asked.length === 0
    ? all
    : all.filter(({ slice, name }) =>
        asked.some((one) => one === slice || one === name || one === `${slice}/${name}`),
      )
mkdirSync('reports/mutation', { recursive: true })
const totals = new Map<Slice, Tally>()
for (const target of chosen) {
  const { caught, tried, explained } = tryFile(target)
  const before = totals.get(target.slice) ?? { caught: 0, tried: 0, explained: 0 }
  totals.set(target.slice, {
    caught: before.caught + caught,
    tried: before.tried + tried,
    explained: before.explained + explained,
  })
}
for (const [slice, { caught, tried, explained }] of totals)
  console.log(
    `\n${slice}: ${caught} of ${tried} caught: ${((100 * caught) / tried).toFixed(1)} %; ${explained} more explained`,
  )
process.exit([...totals.values()].every(({ caught, tried }) => caught >= WANTED * tried) ? 0 : 1)
