/** Searches 200 random bikes, or as many as the first argument says, and tries every place of each grid one by one besides: `npm run find-fuzz`. */
import { findChange } from '../../src/core/index.ts'
import { faultsOf } from '../core/changeBrute.ts'
import { randomSearch } from '../core/changeCases.ts'

const count = Number(process.argv[2] ?? 200)
const outcomes = new Map<string, number>()
let [stances, time] = [0, 0]
for (let seed = 1; seed <= count; seed++) {
  const wanted = randomSearch(seed)
  const start = performance.now()
  const found = findChange(wanted)
  time += performance.now() - start
  stances += found.tally.stances
  const faults = faultsOf(wanted, found)
  for (const fault of faults) console.log(`bike ${seed}: ${fault}`)
  const what = faults.length > 0 ? 'faulty' : found.meets ? `${found.ways.length} ways` : 'no way'
  outcomes.set(what, (outcomes.get(what) ?? 0) + 1)
}
console.log(
  `${count} bikes, ${stances} stances in ${time.toFixed(0)} ms: ${((stances / time) * 1000).toFixed(0)} a second`,
)
for (const [what, times] of [...outcomes].sort()) console.log(String(times).padStart(7), what)
if (outcomes.has('faulty')) process.exitCode = 1
