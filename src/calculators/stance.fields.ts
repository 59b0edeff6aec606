export { inputs } from './stance.inputs.ts'

const length = (label: string, digits = 1) => ({ label, quantity: 'length', unit: 'mm', digits }) as const

export const outputs = {
  frontTravel: { ...length('Front travel used'), lead: true },
  rearTravel: { ...length('Rear travel used'), lead: true },
  frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
  rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1 },
  frontShare: { label: 'Front share', quantity: 'share', unit: '%', digits: 2 },
  trail: { ...length('Trail'), lead: true },
  rake: { label: 'Rake', quantity: 'angle', unit: '°', digits: 2 },
  wheelbase: length('Wheelbase'),
  frontTravelShare: { label: 'Front, share of its travel', quantity: 'share', unit: '%', digits: 0 },
  rearTravelShare: { label: 'Rear, share of its travel', quantity: 'share', unit: '%', digits: 0 },
  frontStop: { kind: 'text', label: 'The front stands' },
  rearStop: { kind: 'text', label: 'The rear stands' },
  frontBand: length('Front travel, friction either way'),
  rearBand: length('Rear travel, friction either way'),
  exposedTube: { ...length('Exposed tube, seal to mark'), more: true },
  pitch: { label: 'Pitch, nose up', quantity: 'angle', unit: '°', digits: 2, signed: true, more: true },
  normalTrail: { ...length('Normal trail'), more: true },
  forkForce: { label: 'Force in the fork, along it', quantity: 'force', unit: 'N', digits: 0, more: true },
  rearForce: { label: 'Force of the rear spring, at the wheel', quantity: 'force', unit: 'N', digits: 0, more: true },
  centreAhead: { ...length('Centre of gravity ahead of the rear contact', 0), more: true },
  centreHeight: { ...length('Centre of gravity above the ground', 0), more: true },
  liftDeceleration: { label: 'Rear wheel carries nothing from', quantity: 'acceleration', unit: 'g', digits: 2, more: true },
  frontGrip: { label: 'Grip needed at the front, force ÷ load', quantity: 'ratio', unit: '', digits: 2, more: true },
  rearGrip: { label: 'Grip needed at the rear, force ÷ load', quantity: 'ratio', unit: '', digits: 2, more: true },
} as const
