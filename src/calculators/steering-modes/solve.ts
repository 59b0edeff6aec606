import {
  capsizeSpeed,
  linearModes,
  modesBySpeed,
  sample,
  trailMoment,
  weaveSpeed,
  wheelFlop,
} from '../../core/index.ts'
import type { WhippleParameters } from '../../core/index.ts'
import type { Cell } from '../../machine/cells.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { defineWork } from '../../machine/work.ts'
import { BENCHMARK_BICYCLE } from './bicycle.ts'
import type statement from './statement.ts'
import { nameModes } from './names.ts'
import type { Motion, NamedMode } from './names.ts'

const FASTEST = 10

type Values = InputOf<typeof statement>

const withTrail = (trail: number): WhippleParameters => ({ ...BENCHMARK_BICYCLE, c: trail })

/** The growth of a motion [1/s]; of two that topple, the quicker. */
function growthOf(modes: readonly NamedMode[], ...motions: Motion[]): number | null {
  const found = modes.filter(({ motion }) => motions.includes(motion)).map(({ growth }) => growth)
  return found.length === 0 ? null : Math.max(...found)
}

type Curves = Record<'weave' | 'other' | 'fall' | 'back', [speed: number, growth: number][]>

/** Growths against speed, a curve a motion; the weave's two roots part where it only topples. */
function branches(trail: number): Curves {
  const modesAt = modesBySpeed(withTrail(trail))
  const curves: Curves = { weave: [], other: [], fall: [], back: [] }
  for (const speed of sample(0, FASTEST, 100)) {
    const weave: number[] = []
    for (const { motion, growth } of nameModes(modesAt(speed))) {
      if (motion === 'fall' || motion === 'back') curves[motion].push([speed, growth])
      else weave.push(growth)
    }
    if (weave.length > 0) curves.weave.push([speed, Math.max(...weave)])
    if (weave.length > 1) curves.other.push([speed, Math.min(...weave)])
  }
  return curves
}

/** SI in, SI out. */
function compute({ speed, trail, sideForce }: Values): OutputOf<typeof statement> {
  const parameters = withTrail(trail)
  const modes = nameModes(linearModes(parameters, speed))
  return {
    weave: growthOf(modes, 'weave', 'topple'),
    fall: growthOf(modes, 'fall'),
    back: growthOf(modes, 'back'),
    moment: trailMoment({ sideForce, trail, rake: parameters.lam }),
    flop: wheelFlop({ trail, rake: parameters.lam }),
    weaveEnds: weaveSpeed(parameters),
    fallBegins: capsizeSpeed(parameters),
    motions: modes.map(({ motion, growth, swing }): Cell[] => [
      motion,
      growth,
      Math.abs(growth) < 1e-9 ? null : Math.LN2 / Math.abs(growth),
      swing === 0 ? null : swing,
    ]),
  }
}

/** Before: the trail as published. */
const baseline = () => ({ trail: 80 })

/** As many as the trail's slider has places. */
const KEPT = 31
const drawn = new Map<number, Curves>()

/** Growth [1/s] of each motion against speed [m/s]. It depends on the trail alone, so that no other slider draws it anew. */
function picture({ trail }: Values): Curves {
  const known = drawn.get(trail)
  if (known) return known
  if (drawn.size >= KEPT) drawn.clear()
  const curves = branches(trail)
  drawn.set(trail, curves)
  return curves
}

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input) }
  },
  baseline,
})
