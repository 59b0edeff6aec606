/**
 * Plants faults in src/core, one at a time, and counts how many its tests catch: `npm run mutate`, or `npm run mutate -- spring gas` for some files.
 * Each file is tried against the tests that mirror it and the laws, not against all: guards are reached by every test, and a mutant that runs them all
 * takes minutes. So the share told is a lower bound. Faults that change no result are explained in explained.ts, and told apart. Fails below 90 %.
 */
import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { EXPLAINED } from './explained.ts'

// Another configuration, with a report of its own, lets two runs go side by side.
const CONFIG = process.env['STRYKER_CONFIG'] ?? 'tests/stryker.config.json'
const REPORT = (JSON.parse(readFileSync(CONFIG, 'utf8')) as { jsonReporter: { fileName: string } })
  .jsonReporter.fileName
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

interface Mutant {
  status:
    'Killed' | 'Survived' | 'Timeout' | 'NoCoverage' | 'Ignored' | 'CompileError' | 'RuntimeError'
  mutatorName: string
  replacement?: string
  location: { start: Place; end: Place }
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

const files = readdirSync('src/core')
  .map((file) => file.replace('.ts', ''))
  .filter((name) => !DATA.has(name))
const asked = process.argv.slice(2)
const total = { caught: 0, tried: 0, explained: 0 }
for (const name of asked.length > 0 ? asked : files) {
  const tests = [
    ...new Set([
      ...(existsSync(`tests/core/${name}.test.ts`) ? [name] : []),
      ...(THROUGH[name] ?? []),
      ...LAWS,
    ]),
  ]
  execFileSync(
    'node_modules/.bin/stryker',
    ['run', CONFIG, '--mutate', `src/core/${name}.ts`, '--reporters', 'json'],
    {
      env: { ...process.env, CORE_TESTS: tests.join(',') },
      stdio: ['ignore', 'ignore', 'inherit'],
    },
  )
  const report = JSON.parse(readFileSync(REPORT, 'utf8')) as {
    files: Record<string, { source: string; mutants: Mutant[] }>
  }
  const [file] = Object.values(report.files)
  const lines = file?.source.split('\n') ?? []
  const mutants = file?.mutants ?? []
  const caught = mutants.filter(({ status }) => status === 'Killed' || status === 'Timeout').length
  const alive = mutants
    .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
    .map((mutant) => ({ mutant, why: excuse(name, lines, mutant) }))
  const missed = alive.filter(({ why }) => why === null)
  const tried = caught + missed.length
  total.caught += caught
  total.tried += tried
  total.explained += alive.length - missed.length
  console.log(
    `${name.padEnd(20)} ${String(caught).padStart(4)} of ${String(tried).padStart(4)} caught, ${alive.length - missed.length} explained`,
  )
  for (const { mutant, why } of alive) {
    const [was, becomes] = [
      textAt(lines, mutant.location),
      (mutant.replacement ?? '').replace(/\s+/g, ' '),
    ].map((text) => text.slice(0, 90))
    console.log(
      `    ${why === null ? 'missed' : 'explained'}, line ${mutant.location.start.line}: ${was} → ${becomes}${why === null ? '' : ` (${why})`}`,
    )
  }
}
const share = total.caught / total.tried
console.log(
  `\n${total.caught} of ${total.tried} caught: ${(100 * share).toFixed(1)} %; ${total.explained} more explained`,
)
process.exit(share >= WANTED ? 0 : 1)
