/**
 * Searches 200 random bikes, or as many as the first argument says, and holds each answer to what is claimed of it: every way, made by hand and solved
 * alone, reads what it says; trying every place of its grid finds nothing with less work; widening each of its aims never makes the best way costlier;
 * another order of aims and means gives the same ways. `npm run find-fuzz`.
 */
import { findChange } from '../../src/core/index.ts'
import { faultsOf } from '../core/changeBrute.ts'
import { randomSearch } from '../core/changeCases.ts'
import { orderFaults, wideningFaults } from '../core/changeClaims.ts'

const count = Number(process.argv[2] ?? 200)
/** By how much each aim is widened either way, in its own unit: half a millimetre, and 3 mm. */
const WIDER = [5e-4, 3e-3]
const outcomes = new Map<string, number>()
let [stances, time, widenings] = [0, 0, 0]
for (let seed = 1; seed <= count; seed++) {
  const wanted = randomSearch(seed)
  const start = performance.now()
  const found = findChange(wanted)
  time += performance.now() - start
  stances += found.tally.stances
  const faults = [...faultsOf(wanted, found), ...orderFaults(wanted, seed)]
  for (const [which] of wanted.aims.entries())
    for (const by of WIDER) {
      faults.push(...wideningFaults(wanted, which, by))
      if (found.meets) widenings++
    }
  for (const fault of faults) console.log(`bike ${seed}: ${fault}`)
  const what = faults.length > 0 ? 'faulty' : found.meets ? `${found.ways.length} ways` : 'no way'
  outcomes.set(what, (outcomes.get(what) ?? 0) + 1)
}
console.log(
  `${count} bikes, ${widenings} aims widened, ${stances} stances in ${time.toFixed(0)} ms: ${((stances / time) * 1000).toFixed(0)} a second`,
)
for (const [what, times] of [...outcomes].sort()) console.log(String(times).padStart(7), what)
if (outcomes.has('faulty')) process.exitCode = 1
