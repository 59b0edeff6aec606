/* Times of fitting a bike to some twenty readings, and of drawing bikes from the fit: `node tests/bench/fit.bench.ts`. */
import { fitBike, sampleBike, solveStance } from '../../src/core/index.ts'
import { knownBike, readingsOf } from '../core/bikeReadings.ts'

const sets = Array.from({ length: 40 }, (_, i) => ({
  readings: readingsOf(knownBike(i + 1), i + 1),
  prior: knownBike(i + 1).prior,
}))
const milliseconds = (work: () => unknown): number => {
  const from = performance.now()
  work()
  return performance.now() - from
}
const cold = milliseconds(() => fitBike(sets[0]!.readings, sets[0]!.prior))
const times = sets
  .map(({ readings, prior }) => milliseconds(() => fitBike(readings, prior)))
  .sort((a, b) => a - b)
console.log(
  `fit of ${sets[0]!.readings.length} readings: first ${cold.toFixed(0)} ms, then median ${times[20]!.toFixed(1)} ms, slowest ${times.at(-1)!.toFixed(1)} ms`,
)
const fit = fitBike(sets[0]!.readings, sets[0]!.prior)
const sampled = milliseconds(() =>
  sampleBike(fit, 1000, 1).forEach((bike) => solveStance(bike, { payload: [bike.rider!] })),
)
console.log(`1,000 bikes drawn and solved: ${sampled.toFixed(1)} ms`)
