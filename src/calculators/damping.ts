import { dampingRemarks } from './damping.remarks.ts'
import { defineCalculator } from './define.ts'
import type { InputValues } from './define.ts'
import { damperForce, dampingRatio, rideOver, springForce, STANDARD_GRAVITY } from '../core/index.ts'
import type { Damper, End, Law, Profile, Ride } from '../core/index.ts'

/** Share of a step within which the body counts as settled: the usual 5 % of control engineering. */
const SETTLED = 0.05
/** Stiffness of both stops [N/m]: ten times a tyre, so that a bottomed fork reads as a knock. Invented. */
const STOP_RATE = 2e6
/** Long enough for a body of 1 Hz to come to rest from a step [s]. */
const DURATION = 2.5

const inputs = {
  road: { kind: 'choice', label: 'Road', options: { step: 'a kerb: up and stay up', bump: 'a bump', waves: 'waves without end' }, default: 'step' },
  compression: {
    kind: 'quantity',
    label: 'Compression damping, slow',
    hint: 'At the wheel, for the pair.',
    quantity: 'damping',
    unit: 'N·s/m',
    range: [0, 6000],
    step: 50,
    default: 700,
  },
  rebound: {
    kind: 'quantity',
    label: 'Rebound damping, slow',
    hint: 'At the wheel, for the pair.',
    quantity: 'damping',
    unit: 'N·s/m',
    range: [0, 6000],
    step: 50,
    default: 1500,
  },
  law: {
    kind: 'choice',
    label: 'How damping grows with speed',
    options: { linear: 'evenly', digressive: 'less and less: shims', square: 'more and more: a plain hole' },
    default: 'linear',
  },
  height: { kind: 'quantity', label: 'Height of the step, bump or wave', more: true, quantity: 'length', unit: 'mm', range: [-80, 80], step: 1, default: 30 },
  length: { kind: 'quantity', label: 'Length along the road', more: true, quantity: 'distance', unit: 'm', range: [0.2, 20], step: 0.1, default: 1 },
  speed: { kind: 'quantity', label: 'Speed', more: true, quantity: 'speed', unit: 'km/h', range: [5, 200], step: 5, default: 40 },
  sprungMass: {
    kind: 'quantity',
    label: 'Mass that this end carries',
    hint: 'Its scale reading with the rider, less the wheel and all that moves with it.',
    procedure: 'weigh-the-bike',
    more: true,
    quantity: 'mass',
    unit: 'kg',
    range: [40, 300],
    step: 1,
    default: 112,
  },
  unsprungMass: {
    kind: 'quantity',
    label: 'Mass that moves with the wheel',
    more: true,
    quantity: 'mass',
    unit: 'kg',
    range: [5, 60],
    step: 1,
    default: 28,
    typical: [15, 35],
    typicalFrom: 'common practice for road bikes, no published source',
  },
  wheelRate: { kind: 'quantity', label: 'Rate at the wheel', more: true, quantity: 'rate', unit: 'N/mm', range: [2, 60], step: 0.5, default: 22 },
  sag: {
    kind: 'quantity',
    label: 'Travel used at rest',
    procedure: 'measure-front-sag',
    more: true,
    quantity: 'length',
    unit: 'mm',
    range: [5, 120],
    step: 1,
    default: 38,
  },
  travel: { kind: 'quantity', label: 'Full travel', more: true, quantity: 'length', unit: 'mm', range: [60, 300], step: 1, default: 120 },
  tyreRate: {
    kind: 'quantity',
    label: 'Rate of the tyre',
    more: true,
    quantity: 'rate',
    unit: 'N/mm',
    range: [80, 300],
    step: 5,
    default: 180,
    typical: [140, 220],
    typicalFrom: 'common practice, no published source',
  },
  knee: {
    kind: 'quantity',
    label: 'Speed at which slow damping ends',
    hint: 'The shims open there; the hole’s law meets the even one there.',
    more: true,
    when: { law: ['digressive', 'square'] },
    quantity: 'velocity',
    unit: 'm/s',
    range: [0.02, 1],
    step: 0.01,
    default: 0.15,
  },
  after: {
    kind: 'quantity',
    label: 'Fast damping as a share of slow',
    more: true,
    when: { law: 'digressive' },
    quantity: 'share',
    unit: '%',
    range: [0, 100],
    step: 5,
    default: 25,
  },
} as const

const outputs = {
  ratio: { label: 'Damping ratio, mean of both ways', quantity: 'ratio', unit: '', digits: 2, lead: true },
  ratioCompression: { label: 'Damping ratio, compression', quantity: 'ratio', unit: '', digits: 2, more: true },
  ratioRebound: { label: 'Damping ratio, rebound', quantity: 'ratio', unit: '', digits: 2, more: true },
  peakTravel: { label: 'Most travel used', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  overshoot: { label: 'Body past its new height', quantity: 'length', unit: 'mm', digits: 1 },
  settling: { label: 'Settled after', quantity: 'time', unit: 's', digits: 2 },
  leastLoad: { label: 'Least load on the tyre', quantity: 'force', unit: 'N', digits: 0 },
  rest: { label: 'Travel used standing still', quantity: 'length', unit: 'mm', digits: 1 },
  meanTravel: { label: 'Mean travel over the waves', quantity: 'length', unit: 'mm', digits: 1 },
} as const

type Values = InputValues<typeof inputs>

export default defineCalculator({
  id: 'damping',
  version: 1,
  title: 'What damping does over a step, a bump and waves',
  question: 'What does damping do?',
  answers: 'How a body and its wheel move over a road with one damper setting, and with another.',
  assumes: [
    'One end of the bike by itself, moving straight up and down.',
    'Damping and rates at the wheel, for both legs or the whole shock.',
    'A straight spring between two hard stops.',
  ],
  leavesOut: [
    'Friction, which stops small movements that a damper lets through.',
    'The other end: pitch couples them.',
    'Oil that foams or warms, which takes damping away within minutes.',
    'Curved tyre contact: sharp edges are rounder on the road than here.',
  ],
  inputs,
  outputs,
  compute(input) {
    const ride = rideOf(input)
    const { ratio, compression, rebound } = ratiosOf(input)
    return {
      ratio,
      ratioCompression: compression,
      ratioRebound: rebound,
      peakTravel: Math.max(...ride.travel),
      overshoot: input.road === 'step' ? overshootOf(ride, input.height) : null,
      settling: input.road === 'waves' ? null : settlingOf(ride, input.road === 'step' ? input.height : 0, Math.abs(input.height)),
      leastLoad: Math.min(...ride.tyreForce),
      rest: ride.travel[0] ?? input.sag,
      meanTravel: input.road === 'waves' ? meanOfLastHalf(ride.travel) : null,
    }
  },
  baseline: () => ({ compression: 700, rebound: 700, law: 'linear' }),
  picture(input) {
    const ride = rideOf(input)
    const damper = damperOf(input)
    const top = 0.8
    const speeds = Array.from({ length: 81 }, (_, place) => -top + (place / 80) * 2 * top)
    return {
      time: ride.time,
      body: ride.body,
      wheel: ride.wheel,
      road: ride.road,
      force: speeds.map((speed): [number, number] => [speed, damperForce(damper, speed)]),
      events: ride.events,
    }
  },
  remarks: dampingRemarks,
})

function lawOf(input: Values, coefficient: number): Law {
  const { law, knee, after } = input
  if (law === 'digressive') return { kind: 'digressive', knee: { velocity: knee, force: coefficient * knee }, after: coefficient * after }
  if (law === 'square') return { kind: 'square', coefficient: coefficient / knee }
  return { kind: 'linear', coefficient }
}

const damperOf = (input: Values): Damper => ({ compression: lawOf(input, input.compression), rebound: lawOf(input, input.rebound) })

/** The end of the bike: its spring is preloaded so that it rests at the sag given; a negative preload is a spring loose near full extension. */
function endOf(input: Values): End {
  const { sprungMass, unsprungMass, wheelRate, sag, travel, tyreRate } = input
  const preload = (sprungMass * STANDARD_GRAVITY) / wheelRate - sag
  const spring = [{ rate: wheelRate }]
  return { sprungMass, unsprungMass, travel, tyreRate, stopRate: STOP_RATE, force: (x) => springForce(spring, preload + x), damper: damperOf(input) }
}

const rides = new WeakMap<Values, Ride>()

/** The ride is asked for twice, for results and picture: computed once. */
function rideOf(input: Values): Ride {
  const known = rides.get(input)
  if (known) return known
  const profile: Profile = { kind: input.road, height: input.height, length: input.length, speed: input.speed }
  const ride = rideOver(profile, endOf(input), { duration: DURATION, relativeTolerance: 1e-5 })
  rides.set(input, ride)
  return ride
}

/** At slow speed; a plain hole has no slow coefficient, and takes the one that its force at the knee gives. */
function ratiosOf({ sprungMass, wheelRate, compression, rebound }: Values): { ratio: number; compression: number; rebound: number } {
  const ratio = (damping: number): number => dampingRatio({ mass: sprungMass, stiffness: wheelRate, damping })
  return { ratio: ratio((compression + rebound) / 2), compression: ratio(compression), rebound: ratio(rebound) }
}

/** How far the body goes beyond the step's height, in the step's direction [m]; 0 if it never does. */
function overshootOf({ body }: Ride, height: number): number {
  const way = Math.sign(height) || 1
  return Math.max(0, ...body.map((z) => way * (z - height)))
}

/** Time after which the body stays within 5 % of the road's height about its end [s]; null if it is still moving when the sheet ends. */
function settlingOf({ body, time }: Ride, end: number, size: number): number | null {
  const last = body.findLastIndex((z) => Math.abs(z - end) > SETTLED * size)
  if (last === -1) return 0
  return last + 1 < time.length ? time[last + 1]! : null
}

function meanOfLastHalf(values: readonly number[]): number {
  const half = values.slice(values.length >> 1)
  return half.reduce((sum, value) => sum + value, 0) / half.length
}
