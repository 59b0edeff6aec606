/** Cost of a force curve against its size and against the number of coil groups, and of a Monte-Carlo of 1,000 stances: `node tests/bench/curves.bench.ts`. */
import { forkForce, solveStance } from '../../src/core/index.ts'
import type { CoilGroup, Fork } from '../../src/core/index.ts'
import { bikeOf, payloadOf } from '../../src/bikes/bikes.ts'
import { specs } from '../calculators/bikes.ts'
import { measure, report } from './measure.ts'

const gas = { tubeDiameter: 0.043, boreDiameter: 0.038, airHeight: 0.13 }
const groups = (count: number): CoilGroup[] =>
  Array.from({ length: count }, (_, index) =>
    index === count - 1
      ? { rate: 9000 * count }
      : { rate: 9000 * count, closes: 0.02 / count + index * 1e-4 },
  )
const forkWith = (count: number): Fork => {
  const leg = { spring: groups(count), preload: 0.015, gas }
  return { travel: 0.12, legs: [leg, leg] }
}
function curve(fork: Fork, points: number): number {
  let sum = 0
  for (let index = 0; index < points; index++)
    sum += forkForce(fork, (fork.travel * index) / (points - 1))
  return sum
}

/** Slope of log time against log size: 1 is linear growth. */
function growth(sizes: readonly number[], medians: readonly number[]): string {
  const [x, y] = [sizes.map(Math.log), medians.map(Math.log)]
  const mean = (all: readonly number[]): number =>
    all.reduce((sum, each) => sum + each, 0) / all.length
  const [mx, my] = [mean(x), mean(y)]
  return (
    x.reduce((sum, each, index) => sum + (each - mx) * (y[index]! - my), 0) /
    x.reduce((sum, each) => sum + (each - mx) ** 2, 0)
  ).toFixed(2)
}

report(
  'force curve of 200 points, one coil group',
  measure(() => curve(forkWith(1), 200)),
)

const sizes = [100, 200, 400, 800, 1600]
const one = forkWith(1)
const bySize = sizes.map((size) => measure(() => curve(one, size)))
sizes.forEach((size, index) => report(`  ${size} points`, bySize[index]!))
console.log(
  `  grows with the power ${growth(
    sizes,
    bySize.map(({ median }) => median),
  )} of the number of points (1 is linear)`,
)

const counts = [4, 8, 16, 32, 64]
const byGroups = counts.map((count) => {
  const fork = forkWith(count)
  return measure(() => curve(fork, 200))
})
counts.forEach((count, index) => report(`  200 points, ${count} groups`, byGroups[index]!))
console.log(
  `  grows with the power ${growth(
    counts,
    byGroups.map(({ median }) => median),
  )} of the number of coil groups (at most 1 is linear or better)`,
)

const roadster = specs['middleweight-roadster']!
let seed = 1
const random = (): number => {
  seed = (seed * 48271) % 2147483647
  return seed / 2147483647
}
report(
  'Monte-Carlo of 1,000 stances',
  measure(() => {
    let sum = 0
    for (let draw = 0; draw < 1000; draw++) {
      const bike = bikeOf(roadster, {
        forkRate: 9000 * (0.95 + 0.1 * random()),
        forkPreload: 0.015 * (0.8 + 0.4 * random()),
      })
      sum += solveStance(bike, { payload: [payloadOf(roadster.rider, 75 + 10 * random())] }).trail
    }
    return sum
  }, 15),
)
