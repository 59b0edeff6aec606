import { defineStatement } from '../../machine/statement.ts'

const plusMinus = (label: string, unit: 'mm' | '°', standard: number, most: number) =>
  ({
    kind: 'quantity',
    label,
    quantity: unit === 'mm' ? 'length' : 'angle',
    unit,
    range: [0, most],
    step: 0.1,
    default: standard,
    more: true,
  }) as const

const inputs = {
  rake: {
    kind: 'quantity',
    label: 'Rake, from the vertical',
    hint: 'A head angle of 65° is a rake of 25°.',
    quantity: 'angle',
    unit: '°',
    range: [15, 40],
    step: 0.1,
    default: 25,
    typical: [23.5, 27],
    typicalFrom: 'common practice for road bikes, no published source',
    procedure: 'measure-geometry',
  },
  forkOffset: {
    kind: 'quantity',
    label: 'Axle ahead of the steering axis',
    hint: 'The yokes’ offset and the axle’s own, together, at right angles to the axis.',
    quantity: 'length',
    unit: 'mm',
    range: [-20, 100],
    step: 0.5,
    default: 30,
    typical: [25, 45],
    typicalFrom: 'common practice for road bikes, no published source',
    procedure: 'measure-geometry',
  },
  frontRadius: {
    kind: 'quantity',
    label: 'Front tyre’s radius',
    hint: 'From the ground to the axle; or roll the wheel one turn and divide by 6.283.',
    quantity: 'length',
    unit: 'mm',
    range: [200, 420],
    step: 0.5,
    default: 300,
    typical: [290, 305],
    typicalFrom: '17-inch road tyres, loaded and free',
    procedure: 'measure-geometry',
  },
  rakePlusMinus: plusMinus('Rake is within ±', '°', 0.3, 3),
  offsetPlusMinus: plusMinus('Offset is within ±', 'mm', 1, 10),
  radiusPlusMinus: plusMinus('Radius is within ±', 'mm', 2, 20),
} as const

const outputs = {
  trail: {
    label: 'Trail along the ground (± covers about 95 %)',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  normalTrail: {
    label: 'Normal trail, at right angles to the axis (±)',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
  },
  perDegree: {
    label: 'Trail for one degree more rake',
    quantity: 'length',
    unit: 'mm',
    digits: 2,
    signed: true,
  },
  perOffset: {
    label: 'Trail for one millimetre more offset',
    quantity: 'length',
    unit: 'mm',
    digits: 2,
    signed: true,
  },
  perRadius: {
    label: 'Trail for one millimetre more radius',
    quantity: 'length',
    unit: 'mm',
    digits: 2,
    signed: true,
  },
  flop: { label: 'Wheel flop', quantity: 'length', unit: 'mm', digits: 1, more: true },
} as const

export default defineStatement({
  id: 'trail',
  order: 110,
  version: 1,
  title: 'Trail from rake, offset and radius',
  question: 'How does it steer?',
  answers:
    'How far ahead of the tyre’s contact the steering axis meets the road, and what moves it.',
  assumes: [
    'Steering straight ahead, the bike upright, the tyre round, the fork’s tubes parallel to the steering axis.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. The result’s ± then covers about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Tyre deflection: a tyre of 180 N/mm under 1.2 kN sits 6.7 mm lower, which takes about 3 mm off the trail. Enter the loaded radius to include it.',
    'Pneumatic trail, the tyre’s own, which can be as large as a change between two set-ups.',
    'Frame and fork flex, and steering away from straight ahead, which shortens trail.',
  ],
  inputs,
  outputs,
})
