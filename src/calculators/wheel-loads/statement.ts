import { PART_LABELS } from '../../bikes/aboard.ts'
import { defineStatement } from '../../machine/statement.ts'
import { luggageMass, passengerMass, riderMass } from '../../machine/inputs/wholeBike.ts'

const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  rider: riderMass,
  passenger: passengerMass,
  luggage: luggageMass,
} as const

const outputs = {
  frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
  rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
  frontShare: { label: 'Front share', quantity: 'share', unit: '%', digits: 1, changeDigits: 2 },
  parts: {
    kind: 'table',
    label: 'What each puts on the wheels',
    columns: [
      {
        kind: 'choice',
        id: 'part',
        label: 'Part',
        options: {
          bike: 'Bike alone',
          ...PART_LABELS,
        },
      },
      { id: 'front', label: 'Front', quantity: 'load', unit: 'kg load', digits: 1 },
      { id: 'rear', label: 'Rear', quantity: 'load', unit: 'kg load', digits: 1 },
      { id: 'share', label: 'Front share', quantity: 'share', unit: '%', digits: 0 },
    ],
  },
  rake: {
    label: 'Rake, as it stands',
    quantity: 'angle',
    unit: '°',
    digits: 1,
    changeDigits: 2,
    more: true,
  },
  wheelbase: {
    label: 'Wheelbase, as it stands',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
} as const

export default defineStatement({
  id: 'wheel-loads',
  order: 130,
  version: 1,
  title: 'Wheel loads',
  question: 'What happens on the brakes?',
  answers: 'What bike, rider, passenger and luggage each put on the front and the rear wheel.',
  assumes: [
    'The bike stands upright and at rest on level ground, where its springs let it settle.',
    'Each person is one mass at a fixed place: a crouch or straight arms move it by several centimetres.',
  ],
  leavesOut: [
    'Air: at road speed drag and lift shift load to the rear.',
    'Fuel: 10 kg of it, six tenths of the way to the front axle, moves the share by less than half a point.',
  ],
  inputs,
  outputs,
})
