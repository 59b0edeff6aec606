import { defineStatement } from '../../machine/statement.ts'

const inputs = {
  speed: {
    kind: 'quantity',
    label: 'Speed of the bicycle',
    quantity: 'speed',
    unit: 'km/h',
    range: [0, 36],
    step: 1,
    default: 18,
  },
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
  weave: {
    label: 'Weave: growth (below 0 it dies out)',
    quantity: 'growth',
    unit: '1/s',
    digits: 2,
    lead: true,
  },
  fall: { label: 'Slow fall: growth', quantity: 'growth', unit: '1/s', digits: 2 },
  back: { label: 'Steering back: growth', quantity: 'growth', unit: '1/s', digits: 2 },
  moment: {
    label: 'Moment about the steering axis',
    quantity: 'moment',
    unit: 'N·m',
    digits: 2,
    lead: true,
  },
  flop: { label: 'Wheel flop', quantity: 'length', unit: 'mm', digits: 1 },
  weaveEnds: {
    label: 'Speed from which the weave dies out',
    quantity: 'speed',
    unit: 'km/h',
    digits: 1,
  },
  fallBegins: {
    label: 'Speed from which the slow fall grows',
    quantity: 'speed',
    unit: 'km/h',
    digits: 1,
  },
  motions: {
    kind: 'table',
    label: 'What moves, at this speed',
    columns: [
      {
        kind: 'choice',
        id: 'motion',
        label: 'The bicycle',
        options: {
          weave: 'weaves: rolls and steers from side to side',
          topple: 'topples: falls over without a swing',
          fall: 'rolls and falls slowly',
          back: 'steers itself back',
        },
      },
      { id: 'growth', label: 'Growth', quantity: 'growth', unit: '1/s', digits: 2, signed: true },
      { id: 'time', label: 'Halves or doubles in', quantity: 'time', unit: 's', digits: 2 },
      { id: 'swing', label: 'Swings', quantity: 'frequency', unit: 'Hz', digits: 2 },
    ],
  },
} as const

export default defineStatement({
  id: 'steering-modes',
  order: 210,
  version: 1,
  title: 'What trail does to a bicycle',
  question: 'How does it steer?',
  answers:
    'How a published bicycle rolls and steers by itself at a speed, and what its trail does to that.',
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
})
