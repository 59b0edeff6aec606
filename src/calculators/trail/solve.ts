import { groundTrail, normalTrail, propagate, wheelFlop } from '../../core/index.ts'
import type { Propagated, SteeringGeometry } from '../../core/index.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import { measured, standardFromLimit } from '../../machine/measured.ts'
import type statement from './statement.ts'

type Values = InputOf<typeof statement>

const DEGREE = Math.PI / 180
const MM = 1e-3

const readings = ({ rake, forkOffset, frontRadius }: SteeringGeometry): number[] => [
  rake,
  forkOffset,
  frontRadius,
]
const limits = ({ rakePlusMinus, offsetPlusMinus, radiusPlusMinus }: Values): number[] => [
  rakePlusMinus,
  offsetPlusMinus,
  radiusPlusMinus,
]
const geometry = ([rake, forkOffset, frontRadius]: number[]): SteeringGeometry => ({
  rake: rake!,
  forkOffset: forkOffset!,
  frontRadius: frontRadius!,
})
const trailOf = (values: number[]): number => groundTrail(geometry(values))

/** What one step of one reading does to trail [m], centred on the reading: half a step either way. */
function sensitivity(given: SteeringGeometry, key: keyof SteeringGeometry, step: number): number {
  return (
    groundTrail({ ...given, [key]: given[key] + step / 2 }) -
    groundTrail({ ...given, [key]: given[key] - step / 2 })
  )
}

/** Trail with its standard uncertainty, and what each reading adds to that [m], in the order rake, offset, radius. */
export const trailWithDoubt = (input: Values): Propagated =>
  propagate(trailOf, readings(input), limits(input).map(standardFromLimit))

/** SI in, SI out. */
function compute(input: Values): OutputOf<typeof statement> {
  const trail = measured(trailOf, readings(input), limits(input))
  return {
    trail,
    normalTrail: measured(
      (values) => normalTrail(geometry(values)),
      readings(input),
      limits(input),
    ),
    perDegree: sensitivity(input, 'rake', DEGREE),
    perOffset: sensitivity(input, 'forkOffset', MM),
    perRadius: sensitivity(input, 'frontRadius', MM),
    flop: wheelFlop({ trail: trail.value, rake: input.rake }),
  }
}

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => undefined }
  },
})
