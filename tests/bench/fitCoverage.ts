/**
 * Fits random bikes to simulated readings, 1,000 or as many as the first argument says, and prints how often the 95 % intervals hold the true figure, how
 * often good sets bring a pair, whether spoilt sets name what was spoilt, and how often a fit from the truth itself ends lower: `npm run fit-coverage`.
 */
import { bikeProblem, leftOverAt } from '../../src/core/bikeProblem.ts'
import { solveFrom } from '../../src/core/bikeSolve.ts'
import { fitBike } from '../../src/core/index.ts'
import { sumOfSquares } from '../../src/core/leastSquares.ts'
import { knownBike, readingsOf } from '../core/bikeReadings.ts'
import { stream } from '../core/bikes.ts'
import { BLUNDERS } from '../core/blunders.ts'

const count = Number(process.argv[2] ?? 1000)
const FIRST = 100_000
const hits = new Map<string, [inside: number, of: number]>()
const outcomes = {
  'not converged': 0,
  'a pair in a good set': 0,
  'a lower place from the truth': 0,
}
for (let seed = FIRST; seed < FIRST + count; seed++) {
  const known = knownBike(seed)
  const next = stream(seed)
  const readings = readingsOf(known, seed + 5e5).filter(() => next() < 0.8)
  const { values, converged, contradictions, chiSquared } = fitBike(readings, known.prior)
  if (!converged) outcomes['not converged']++
  if (contradictions.length > 0) outcomes['a pair in a good set']++
  for (const [name, { value, uncertainty }] of Object.entries(values)) {
    const [inside, of] = hits.get(name) ?? [0, 0]
    hits.set(name, [
      inside + (Math.abs(known.truth[name]! - value) <= 1.96 * uncertainty ? 1 : 0),
      of + 1,
    ])
  }
  const problem = bikeProblem(readings, known.prior)
  const truth = problem.unknowns.map(({ name, start, unit }) => (known.truth[name]! - start) / unit)
  const fromTruth = solveFrom(problem, (counted) => leftOverAt(problem, counted), truth)
  // A tenth of the square of an uncertainty: less than that no reader would see.
  if (sumOfSquares(fromTruth.leftOver) < chiSquared - 0.1)
    outcomes['a lower place from the truth']++
}
console.log(`${count} bikes: share of 95 % intervals that hold the true figure`)
for (const [name, [inside, of]] of hits)
  console.log(`${name.padEnd(32)} ${((100 * inside) / of).toFixed(1)} %`)
for (const [what, times] of Object.entries(outcomes))
  console.log(`${what.padEnd(32)} ${((100 * times) / count).toFixed(1)} %`)

const named = new Map<string, [first: number, of: number]>()
for (let seed = FIRST; seed < FIRST + count; seed++) {
  const [what, blunder] = Object.entries(BLUNDERS)[seed % Object.keys(BLUNDERS).length]!
  const known = knownBike(seed)
  const readings = readingsOf(known, seed + 6e5)
  const next = stream(seed)
  const spoilt = blunder(readings, (of) => Math.floor(next() * of))
  if (!spoilt) continue
  const [pair = []] = fitBike(readings, known.prior).contradictions
  const [first, of] = named.get(what) ?? [0, 0]
  named.set(what, [
    first + (spoilt.some((name) => (pair as string[]).includes(name)) ? 1 : 0),
    of + 1,
  ])
}
console.log('\nspoilt sets whose first pair names what was spoilt')
for (const [what, [first, of]] of named) console.log(`${what.padEnd(48)} ${first} of ${of}`)
