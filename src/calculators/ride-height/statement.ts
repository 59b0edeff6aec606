import { defineStatement } from '../../machine/statement.ts'
import { quotedFront, quotedRear, riderMass } from '../../machine/inputs/wholeBike.ts'

const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  by: {
    kind: 'choice',
    label: 'Change the height by',
    options: {
      preload: 'fork preload',
      tubes: 'tubes up through the yokes',
      shock: 'shock length',
      tyre: 'front tyre’s radius',
    },
    default: 'tubes',
  },
  amount: {
    kind: 'quantity',
    label: 'How much',
    hint: 'More preload lifts the front, tubes slid up lower it, a longer shock lifts the back, a larger tyre lifts the front. Below 0 is the other way.',
    quantity: 'length',
    unit: 'mm',
    range: [-20, 20],
    step: 0.5,
    default: 10,
    procedure: 'change-ride-height',
  },
  rider: riderMass,
  quotedFront,
  quotedRear,
} as const

const outputs = {
  exposedTube: { label: 'Exposed tube, seal to mark', quantity: 'length', unit: 'mm', digits: 1 },
  rake: { label: 'Rake', quantity: 'angle', unit: '°', digits: 1, changeDigits: 2 },
  trail: { label: 'Trail', quantity: 'length', unit: 'mm', digits: 1, lead: true },
  wheelbase: { label: 'Wheelbase', quantity: 'length', unit: 'mm', digits: 1 },
  frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
  frontShare: { label: 'Front share', quantity: 'share', unit: '%', digits: 1, changeDigits: 2 },
  pitch: {
    label: 'Pitch, nose up',
    quantity: 'angle',
    unit: '°',
    digits: 1,
    changeDigits: 2,
    signed: true,
  },
  frontTravel: { label: 'Front travel used', quantity: 'length', unit: 'mm', digits: 1 },
  rearTravel: { label: 'Rear travel used', quantity: 'length', unit: 'mm', digits: 1, more: true },
  rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1, more: true },
} as const

export default defineStatement({
  id: 'ride-height',
  order: 100,
  version: 1,
  title: 'Change the ride height',
  question: 'Where does it sit?',
  answers:
    'What a change of preload, tubes in the yokes, shock length or front tyre does to height, geometry and load.',
  assumes: [
    'The bike stands upright and at rest on level ground, both springs free of friction.',
    'The bike is an invented one, with its own springs, gas and geometry, and the rider sits still.',
  ],
  leavesOut: [
    'Tyre deflection: with a tyre of 180 N/mm about 3 mm of trail and 7 mm of height, nearly the same before and after.',
    'Friction: it can hold the front several millimetres off these heights, either way.',
    'Pneumatic trail, which is as large as the changes shown here, and yokes that are not parallel to the steering axis.',
  ],
  inputs,
  outputs,
})
