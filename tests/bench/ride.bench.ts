// Times one end over a bump (3 s, relative tolerance 1e-8) and a choice among 20 spring rates, warm, on one core.
// Run it alone: node tests/bench/ride.bench.ts
import { chooseRate, rideOver, type End, type Law, type Profile } from '../../src/core/index.ts'
import { forkCurve, forkCurveForce } from '../../src/core/fork.ts'
import { frontEnd, gassyBike as bike, gassyChoice as choice, linear } from '../core/bikes.ts'

const digressive: Law = { kind: 'digressive', knee: { velocity: 0.1, force: 200 }, after: 800 }
const bump: Profile = { kind: 'bump', height: 0.05, length: 0.5, speed: 15 }
const end = frontEnd(1100)
const curve = forkCurve(bike.fork)
const gassy: End = {
  ...end,
  force: (x) => forkCurveForce(curve, x),
  damper: { compression: linear(800), rebound: digressive },
}
function time(name: string, run: () => unknown): void {
  for (let i = 0; i < 50; i++) run()
  const times = Array.from({ length: 101 }, () => {
    const start = performance.now()
    run()
    return performance.now() - start
  }).sort((a, b) => a - b)
  const [low = 0, median = 0, high = 0] = [times[10], times[50], times[90]]
  console.log(
    `${name}: median ${median.toFixed(2)} ms, 10th to 90th percentile ${low.toFixed(2)} to ${high.toFixed(2)} ms`,
  )
}

const options = { duration: 3, relativeTolerance: 1e-8 }
time('rideOver a bump, 3 s, straight spring and damper', () => rideOver(bump, end, options))
time('rideOver a bump, 3 s, gas fork and digressive rebound', () => rideOver(bump, gassy, options))
time('rideOver waves, 3 s, gas fork and digressive rebound', () =>
  rideOver({ kind: 'waves', height: 0.04, length: 5, speed: 20 }, gassy, options),
)
time('chooseRate over 20 rates', () => chooseRate(choice))
