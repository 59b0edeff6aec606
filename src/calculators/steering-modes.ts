import { defineCalculator } from './define.ts'
import type { Cell, InputValues, Remark } from './define.ts'
import { BENCHMARK_BICYCLE } from './steering-bicycle.ts'
import { MOTION_NAMES, nameModes } from './steering-names.ts'
import type { Motion, NamedMode } from './steering-names.ts'
import { capsizeSpeed, linearModes, trailMoment, weaveSpeed, wheelFlop } from '../core/index.ts'
import type { WhippleParameters } from '../core/index.ts'

/** A growth [1/s] below this changes by half in no less than 14 s: a rider corrects it without noticing. */
export const SLOW = 0.05
const FASTEST = 10

const inputs = {
  speed: { kind: 'quantity', label: 'Speed of the bicycle', quantity: 'speed', unit: 'km/h', range: [0, 36], step: 1, default: 18 },
  trail: {
    kind: 'quantity',
    label: 'Trail of the bicycle',
    hint: 'As published it is 80 mm. All else stays as published.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 150],
    step: 5,
    default: 40,
  },
  sideForce: {
    kind: 'quantity',
    label: 'Side force at the front tyre',
    hint: 'For the moment about the steering axis.',
    quantity: 'force',
    unit: 'N',
    range: [0, 200],
    step: 5,
    default: 20,
  },
} as const

const outputs = {
  weave: { label: 'Weave: growth (below 0 it dies out)', quantity: 'growth', unit: '1/s', digits: 2, lead: true },
  fall: { label: 'Slow fall: growth', quantity: 'growth', unit: '1/s', digits: 2 },
  back: { label: 'Steering back: growth', quantity: 'growth', unit: '1/s', digits: 2 },
  moment: { label: 'Moment about the steering axis', quantity: 'moment', unit: 'N·m', digits: 2, lead: true },
  flop: { label: 'Wheel flop', quantity: 'length', unit: 'mm', digits: 1 },
  weaveEnds: { label: 'Speed from which the weave dies out', quantity: 'speed', unit: 'km/h', digits: 1 },
  fallBegins: { label: 'Speed from which the slow fall grows', quantity: 'speed', unit: 'km/h', digits: 1 },
  motions: {
    kind: 'table',
    label: 'What moves, at this speed',
    columns: [
      { kind: 'text', id: 'motion', label: 'The bicycle' },
      { id: 'growth', label: 'Growth', quantity: 'growth', unit: '1/s', digits: 2, signed: true },
      { id: 'time', label: 'Halves or doubles in', quantity: 'time', unit: 's', digits: 2 },
      { id: 'swing', label: 'Swings', quantity: 'frequency', unit: 'Hz', digits: 2 },
    ],
  },
} as const

const withTrail = (trail: number): WhippleParameters => ({ ...BENCHMARK_BICYCLE, c: trail })

/** The growth of a motion [1/s]; of two that topple, the quicker. */
function growthOf(modes: readonly NamedMode[], ...motions: Motion[]): number | null {
  const found = modes.filter(({ motion }) => motions.includes(motion)).map(({ growth }) => growth)
  return found.length === 0 ? null : Math.max(...found)
}

/** Growths against speed, a curve a motion; the weave's two roots part where it only topples. */
function branches(trail: number): Record<'weave' | 'other' | 'fall' | 'back', [number, number][]> {
  const curves: Record<'weave' | 'other' | 'fall' | 'back', [number, number][]> = { weave: [], other: [], fall: [], back: [] }
  for (let step = 0; step <= 100; step++) {
    const speed = (step / 100) * FASTEST
    const modes = nameModes(linearModes(withTrail(trail), speed))
    for (const motion of ['fall', 'back'] as const) {
      const growth = growthOf(modes, motion)
      if (growth !== null) curves[motion].push([speed, growth])
    }
    const weave = modes.filter(({ motion }) => motion === 'weave' || motion === 'topple').map(({ growth }) => growth)
    if (weave.length > 0) curves.weave.push([speed, Math.max(...weave)])
    if (weave.length > 1) curves.other.push([speed, Math.min(...weave)])
  }
  return curves
}

type Values = InputValues<typeof inputs>

export default defineCalculator({
  id: 'steering-modes',
  version: 1,
  title: 'What trail does to a bicycle',
  question: 'How does it steer?',
  answers: 'How a published bicycle rolls and steers by itself at a speed, and what its trail does to that.',
  notice:
    'This is a bicycle, the one published in 2007 as a benchmark, with a rigid rider who does nothing. It shows what trail does there. It says nothing about any motorcycle, and a motion that dies out here is no verdict on stability.',
  assumes: [
    'The published bicycle in every figure but its trail.',
    'Small leans and steering angles near straight running.',
    'A rider fixed to the frame, hands off the bars.',
  ],
  leavesOut: [
    'Tyres: these roll on a knife edge and never slip. A motorcycle’s tyres decide much of its weave and wobble.',
    'Suspension, a flexible frame, a steering damper.',
    'The rider, who steers.',
    'Wobble of the front alone, which this model does not have.',
  ],
  inputs,
  outputs,
  compute({ speed, trail, sideForce }) {
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
        MOTION_NAMES[motion],
        growth,
        Math.abs(growth) < 1e-9 ? null : Math.LN2 / Math.abs(growth),
        swing === 0 ? null : swing,
      ]),
    }
  },
  baseline: () => ({ trail: 80 }),
  picture: ({ trail }: Values) => branches(trail),
  remarks({ input, output, before, say }) {
    const remarks: Remark[] = []
    const weave = typeof output.weave === 'number' ? output.weave : null
    const fall = typeof output.fall === 'number' ? output.fall : null
    if (weave !== null) {
      const does = Math.abs(weave) < SLOW ? 'hardly changes' : weave > 0 ? 'grows' : 'dies out'
      remarks.push({
        kind: 'reading',
        text: `At ${say.quantity(input.speed, 'km/h', 0)} this bicycle’s weave ${does}${fall === null ? '.' : `, and its slow fall ${Math.abs(fall) < SLOW ? 'hardly changes' : fall > 0 ? 'grows' : 'dies out'}.`}`,
      })
    }
    const ends = [output.weaveEnds, before?.output.weaveEnds]
    if (before && before.input.trail !== input.trail && typeof ends[0] === 'number' && typeof ends[1] === 'number') {
      const less = input.trail < before.input.trail
      const sooner = ends[0] < ends[1]
      remarks.push({
        kind: 'reading',
        text: `With ${less ? 'less' : 'more'} trail the weave dies out from ${say.quantity(ends[0], 'km/h', 1)}, ${sooner ? 'sooner' : 'later'} than before, and the bars pull back ${less ? 'less' : 'more'}. So more trail is not steadier in every sense, even here.`,
      })
    }
    remarks.push({
      kind: 'limit',
      text: 'Read the shapes, and take nothing over to a motorcycle. What its trail does to the steering’s pull, the moment above, holds for any two-wheeler.',
    })
    remarks.push({
      kind: 'caution',
      caution: 'change-of-geometry-and-speed',
      text: 'On a motorcycle change trail in steps small enough to undo, and find out slowly.',
    })
    return remarks
  },
})
