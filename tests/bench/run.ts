/** Runs every benchmark here, one after the other: `npm run bench`. They print; nothing is asserted, since a busy machine is no fault. */
import { execFileSync } from 'node:child_process'
import { readdirSync } from 'node:fs'

for (const file of readdirSync(import.meta.dirname).filter((name) => name.endsWith('.bench.ts'))) {
  console.log(`\n${file}`)
  execFileSync(process.execPath, [`${import.meta.dirname}/${file}`], { stdio: 'inherit' })
}
