import { changeSearch } from '../../src/core/index.ts'
import { aboard } from '../../src/bikes/aboard.ts'
import { bikeOf } from '../../src/bikes/bikes.ts'
import type { BikeSpec } from '../../src/bikes/inSI.ts'
import type { Aim, Mean } from '../../src/core/index.ts'

/* A search as a worker does it, on one bike under one rider after the other, each with nothing solved before: stances and time of each. */

const MM = 1e-3
const steps = (low: number, high: number) => ({ low: low * MM, high: high * MM, step: 0.5 * MM })
const MEANS: readonly Mean[] = [
  { id: 'forkPreloadChange', ...steps(-10, 15), work: 5 },
  { id: 'rearPreloadChange', ...steps(-8, 10), work: 10 },
  { id: 'tubeRaise', ...steps(-5, 10), work: 20 },
  { id: 'oilHeightChange', low: -0.03, high: 0.03, step: 5 * MM, work: 90 },
  { id: 'shockLengthChange', low: -6 * MM, high: 6 * MM, step: MM, work: 120 },
  { id: 'forkRate', rates: [8, 8.5, 9, 9.5, 10, 10.5, 11].map((rate) => rate * 1e3), work: 200 },
  { id: 'rearRate', rates: [80, 85, 95, 100, 105, 110].map((rate) => rate * 1e3), work: 240 },
]
// both ends 8 mm lower with the sags kept, which tubes and shock alone could do and neither may: no way, so that every set of means is looked at
const AIMS: readonly Aim[] = [
  { id: 'frontRiderSag', low: 33 * MM, high: 37 * MM },
  { id: 'rearRiderSag', low: 36 * MM, high: 40 * MM },
  { id: 'frontHeight', low: -9 * MM, high: -7 * MM },
  { id: 'rearHeight', low: -9 * MM, high: -7 * MM },
]

function searched(spec: BikeSpec, rider: number): { stances: number; time: number } {
  const bike = bikeOf(spec)
  const start = performance.now()
  const find = changeSearch(bike, { static: {}, rider: { payload: aboard(spec, { rider }) } })
  const means = MEANS.filter(({ id }) => id !== 'tubeRaise' && id !== 'shockLengthChange')
  const { tally } = find({ aims: AIMS, means })
  return { stances: tally.stances, time: performance.now() - start }
}

addEventListener('message', ({ data }: MessageEvent<BikeSpec>) => {
  const runs = Array.from({ length: 60 }, (_, i) => searched(data, 70 + i / 2))
  postMessage(runs.slice(10).map(({ stances, time }) => ({ stances, time })))
})
