import { luggageMass, passengerMass, riderMass } from './whole-bike.fields.ts'

export const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  rider: riderMass,
  passenger: passengerMass,
  luggage: luggageMass,
} as const

export const outputs = {
  frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
  rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
  frontShare: { label: 'Front share', quantity: 'share', unit: '%', digits: 1 },
  parts: {
    kind: 'table',
    label: 'What each puts on the wheels',
    columns: [
      { kind: 'text', id: 'part', label: 'Part' },
      { id: 'front', label: 'Front', quantity: 'load', unit: 'kg load', digits: 1 },
      { id: 'rear', label: 'Rear', quantity: 'load', unit: 'kg load', digits: 1 },
      { id: 'share', label: 'Front share', quantity: 'share', unit: '%', digits: 0 },
    ],
  },
  rake: { label: 'Rake, as it stands', quantity: 'angle', unit: '°', digits: 2, more: true },
  wheelbase: { label: 'Wheelbase, as it stands', quantity: 'length', unit: 'mm', digits: 1, more: true },
} as const
