export const inputs = {
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

export const outputs = {
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
