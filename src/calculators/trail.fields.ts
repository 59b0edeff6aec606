const plusMinus = (label: string, unit: 'mm' | '°', standard: number, most: number) =>
  ({ kind: 'quantity', label, quantity: unit === 'mm' ? 'length' : 'angle', unit, range: [0, most], step: 0.1, default: standard, more: true }) as const

export const inputs = {
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

export const outputs = {
  trail: { label: 'Trail along the ground (± covers about 95 %)', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  normalTrail: { label: 'Normal trail, at right angles to the axis (±)', quantity: 'length', unit: 'mm', digits: 1 },
  perDegree: { label: 'Trail for one degree more rake', quantity: 'length', unit: 'mm', digits: 2, signed: true },
  perOffset: { label: 'Trail for one millimetre more offset', quantity: 'length', unit: 'mm', digits: 2, signed: true },
  perRadius: { label: 'Trail for one millimetre more radius', quantity: 'length', unit: 'mm', digits: 2, signed: true },
  flop: { label: 'Wheel flop', quantity: 'length', unit: 'mm', digits: 1, more: true },
} as const
