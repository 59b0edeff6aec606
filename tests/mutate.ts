/**
 * Plants faults in src/core, one at a time, and counts how many its tests catch: `npm run mutate`, or `npm run mutate -- spring gas` for some files.
 * Each file is tried against the tests that mirror it and the laws, not against all: guards are reached by every test, and a mutant that runs them all
 * takes minutes. So the share told is a lower bound. Fails below 90 %.
 */
import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'

const REPORT = 'reports/mutation.json'
const WANTED = 0.9
const LAWS = ['laws', 'representable']
const STANCE = ['stance', 'stanceCases', 'lift', 'scales']
/** Files that are tested through what they serve. */
const THROUGH: Record<string, string[]> = {
  atmosphere: [],
  oilLevel: ['gas'],
  balance: ['balance', ...STANCE],
  bike: STANCE,
  newton: STANCE,
  scene: STANCE,
  stance: STANCE,
  forceNeeded: ['fork', 'rear', 'gas'],
  chassis: ['chassis', 'stanceCases'],
  end: ['ride', 'damper'],
  lookout: ['ride'],
  road: ['ride'],
  whipple: ['steering'],
}
const DATA = new Set(['index', 'constants', 'viscosityIndexTable'])

interface Mutant {
  status: 'Killed' | 'Survived' | 'Timeout' | 'NoCoverage' | 'Ignored' | 'CompileError' | 'RuntimeError'
  mutatorName: string
  replacement?: string
  location: { start: { line: number } }
}

const files = readdirSync('src/core')
  .map((file) => file.replace('.ts', ''))
  .filter((name) => !DATA.has(name))
const asked = process.argv.slice(2)
const total = { caught: 0, tried: 0 }
for (const name of asked.length > 0 ? asked : files) {
  const tests = [...new Set([...(existsSync(`tests/core/${name}.test.ts`) ? [name] : []), ...(THROUGH[name] ?? []), ...LAWS])]
  execFileSync('node_modules/.bin/stryker', ['run', 'tests/stryker.config.json', '--mutate', `src/core/${name}.ts`, '--reporters', 'json'], {
    env: { ...process.env, CORE_TESTS: tests.join(',') },
    stdio: ['ignore', 'ignore', 'inherit'],
  })
  const report = JSON.parse(readFileSync(REPORT, 'utf8')) as { files: Record<string, { mutants: Mutant[] }> }
  const mutants = Object.values(report.files).flatMap((file) => file.mutants)
  const caught = mutants.filter(({ status }) => status === 'Killed' || status === 'Timeout').length
  const missed = mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
  total.caught += caught
  total.tried += caught + missed.length
  console.log(`${name.padEnd(20)} ${String(caught).padStart(4)} of ${String(caught + missed.length).padStart(4)} caught`)
  for (const { location, mutatorName, replacement } of missed)
    console.log(`    line ${location.start.line}: ${mutatorName} → ${(replacement ?? '').replace(/\s+/g, ' ').slice(0, 90)}`)
}
const share = total.caught / total.tried
console.log(`\n${total.caught} of ${total.tried} caught: ${(100 * share).toFixed(1)} %`)
process.exit(share >= WANTED ? 0 : 1)
