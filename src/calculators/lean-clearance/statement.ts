import { lengthInput } from '../../machine/inputs/length.ts'
import { defineStatement } from '../../machine/statement.ts'
import { luggageMass, passengerMass, riderMass } from '../../machine/inputs/wholeBike.ts'

const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  height: {
    ...lengthInput('Height of the part, bike upright', [60, 600], 300),
    hint: 'From the floor to its lowest edge, with the rider aboard, a helper holding the bike and nobody else on it.',
    procedure: 'change-ride-height',
  },
  halfWidth: {
    ...lengthInput('Out from the middle of the bike', [50, 600], 360),
    hint: 'From the middle of the tyre to the same edge, along the floor.',
  },
  passenger: { ...passengerMass, default: 70 },
  luggage: { ...luggageMass, more: true },
  rider: { ...riderMass, more: true },
  rearPreload: {
    ...lengthInput('Rear preload added for the load', [-10, 20], 0),
    hint: 'At the spring, not at the wheel.',
    more: true,
    procedure: 'set-rear-preload',
  },
  rearRaise: {
    ...lengthInput('Back raised, at the axle', [-40, 40], 0),
    hint: 'By a longer shock. Below 0 for lowered.',
    more: true,
  },
  tubeRaise: {
    ...lengthInput('Fork tubes slid up', [-20, 20], 0),
    hint: 'Through the yokes, which lowers the front.',
    more: true,
    procedure: 'change-ride-height',
  },
  ahead: {
    ...lengthInput('Part ahead of the rear axle', [-300, 1500], 620),
    hint: 'Along the floor.',
    more: true,
  },
  crown: {
    ...lengthInput('Radius of the tyres’ crown', [0, 130], 70),
    hint: 'About half the tyre’s width on a road tyre.',
    more: true,
    typical: [50, 90],
    typicalFrom: 'half the width of road tyres, common practice, no published source',
  },
  tyreRate: {
    kind: 'quantity',
    label: 'Stiffness of each tyre',
    more: true,
    quantity: 'rate',
    unit: 'N/mm',
    range: [80, 400],
    step: 5,
    default: 150,
    typical: [115, 180],
    typicalFrom: 'published models of road motorcycles',
  },
} as const

const angle = (label: string) => ({ label, quantity: 'angle', unit: '°', digits: 1 }) as const

const outputs = {
  roll: { ...angle('Lean at which it touches'), lead: true },
  rigid: { ...angle('If the bike did not squat in the bend') },
  heightNow: {
    label: 'Its height now, bike upright',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    lead: true,
  },
  squat: {
    label: 'Lower still in that bend, by',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
  },
  effective: { ...angle('Lean that the turn itself needs'), more: true },
  sideways: {
    label: 'Sideways acceleration there',
    quantity: 'acceleration',
    unit: 'g',
    digits: 2,
    more: true,
  },
  frontTravel: {
    label: 'Front travel used in that bend',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    more: true,
  },
  rearTravel: {
    label: 'Rear travel used in that bend',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    more: true,
  },
} as const

export default defineStatement({
  id: 'lean-clearance',
  order: 194,
  version: 1,
  title: 'Lean to first touch',
  question: 'Where does it sit?',
  answers:
    'At how much lean a peg or another low part touches the road, and what a load or a change of height takes from that.',
  assumes: [
    'A steady bend on a level road: no brake, no bump, the steering nearly straight.',
    'The part is fixed to the frame. One on the swing arm or the fork moves with its wheel.',
    'Both tyres roll on a round crown of the same radius.',
    'The tyres’ radii of the bike’s sheet are those with the rider aboard.',
  ],
  leavesOut: [
    'Bumps and dips. On a peg 360 mm out, 10 mm less height is about one degree.',
    'Friction of fork and rear, which holds either end a few millimetres high or low.',
    'The rider who hangs off to the inside: the bike then leans less for the same bend.',
    'Steering, and crowns that differ from front to rear.',
  ],
  inputs,
  outputs,
})
