/** Time and force evaluations of one stance, warm, on one core: `node tests/bench/stance.bench.ts`. */
import { readFileSync } from 'node:fs'
import { findBalance } from '../../src/core/newton.ts'
import { setScene } from '../../src/core/scene.ts'
import { solveStance } from '../../src/core/stance.ts'

const { cases } = JSON.parse(
  readFileSync(new URL('../core/data/stance-cases.json', import.meta.url), 'utf8'),
)
const ROUNDS = 40
const REPEATS = 50

const evaluations: number[] = cases
  .map((it: (typeof cases)[0]) => findBalance(setScene(it.bike, it.load, it.settle)).evaluations)
  .sort((a: number, b: number) => a - b)

const times: number[] = []
let checksum = 0
for (let round = -10; round < ROUNDS; round++) {
  const start = process.hrtime.bigint()
  for (let i = 0; i < REPEATS; i++)
    for (const it of cases)
      checksum += solveStance(it.bike, it.load, { settle: it.settle }).frontTravel
  const time = Number(process.hrtime.bigint() - start) / 1000 / (REPEATS * cases.length)
  if (round >= 0) times.push(time)
}
times.sort((a, b) => a - b)
const at = (sorted: number[], share: number): number =>
  sorted[Math.round(share * (sorted.length - 1))]!
console.log(
  `stance: median ${at(times, 0.5).toFixed(2)} µs, 10 % to 90 % ${at(times, 0.1).toFixed(2)} to ${at(times, 0.9).toFixed(2)} µs (${ROUNDS} rounds)`,
)
console.log(
  `force evaluations a solve: median ${at(evaluations, 0.5)}, range ${evaluations[0]} to ${evaluations.at(-1)} over ${cases.length} bikes`,
)
console.log(`checksum ${checksum.toFixed(6)}`)
