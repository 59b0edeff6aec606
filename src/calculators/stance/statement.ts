import { defineStatement } from '../../machine/statement.ts'

import { inputs } from './inputs.ts'

const length = (label: string, digits = 1) =>
  ({ label, quantity: 'length', unit: 'mm', digits }) as const

/** Where an end stands, by the core's names. */
const STOPS = {
  none: 'between its stops',
  extended: 'fully extended',
  bottomed: 'on its stop',
  coilBound: 'coil-bound',
} as const

const outputs = {
  frontTravel: { ...length('Front travel used'), lead: true },
  rearTravel: { ...length('Rear travel used'), lead: true },
  frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
  rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1 },
  frontShare: { label: 'Front share', quantity: 'share', unit: '%', digits: 1, changeDigits: 2 },
  trail: { ...length('Trail'), lead: true },
  rake: { label: 'Rake', quantity: 'angle', unit: '°', digits: 1, changeDigits: 2 },
  wheelbase: length('Wheelbase'),
  frontTravelShare: {
    label: 'Front, share of its travel',
    quantity: 'share',
    unit: '%',
    digits: 0,
  },
  rearTravelShare: { label: 'Rear, share of its travel', quantity: 'share', unit: '%', digits: 0 },
  frontStop: { kind: 'choice', label: 'The front stands', options: STOPS },
  rearStop: { kind: 'choice', label: 'The rear stands', options: STOPS },
  frontBand: length('Front travel, friction either way'),
  rearBand: length('Rear travel, friction either way'),
  scaleFrontMisfit: { ...length('Front travel, read less computed'), signed: true, more: true },
  scaleRearMisfit: { ...length('Rear travel, read less computed'), signed: true, more: true },
  exposedTube: { ...length('Exposed tube, seal to mark'), more: true },
  pitch: {
    label: 'Pitch, nose up',
    quantity: 'angle',
    unit: '°',
    digits: 1,
    changeDigits: 2,
    signed: true,
    more: true,
  },
  normalTrail: { ...length('Normal trail'), more: true },
  forkForce: {
    label: 'Force in the fork, along it',
    quantity: 'force',
    unit: 'N',
    digits: 0,
    more: true,
  },
  rearForce: {
    label: 'Force of the rear spring, at the wheel',
    quantity: 'force',
    unit: 'N',
    digits: 0,
    more: true,
  },
  centreAhead: { ...length('Centre of gravity ahead of the rear contact', 0), more: true },
  centreHeight: { ...length('Centre of gravity above the ground', 0), more: true },
  liftDeceleration: {
    label: 'Rear wheel carries nothing from',
    quantity: 'acceleration',
    unit: 'g',
    digits: 2,
    more: true,
  },
  frontGrip: {
    label: 'Grip needed at the front, force ÷ load',
    quantity: 'ratio',
    unit: '',
    digits: 2,
    more: true,
  },
  rearGrip: {
    label: 'Grip needed at the rear, force ÷ load',
    quantity: 'ratio',
    unit: '',
    digits: 2,
    more: true,
  },
} as const

export default defineStatement({
  id: 'stance',
  order: 200,
  version: 1,
  title: 'The whole bike',
  question: 'Where does it sit?',
  answers:
    'Where both ends settle together, at rest, braking, leaning or two-up, and what a change at one end does to the other.',
  assumes: [
    'A steady state: at rest, or in a long even stop or bend, on a level road. Nothing moves any more.',
    'No friction in the figures; the friction band is given apart. Gas slow at rest and in a bend, fast on the brakes.',
    'Steering straight ahead, caliper on the swing arm, unsprung masses and places aboard as on the bike’s sheet.',
  ],
  leavesOut: [
    'Tyre deflection: about 3 mm of trail and 7 mm of height with a tyre of 180 N/mm under 1.2 kN.',
    'Damping: a brake put on quickly passes the settled dive by 15 to 32 % of the change.',
    'Chain pull, air, frame and fork flex, bushing friction that grows with the brake.',
    'Pneumatic trail, as large as the changes shown, and yokes that are not parallel to the steering axis.',
    'A quick brake, a crest or a road downhill: each lifts the rear wheel at less than the deceleration given here.',
  ],
  inputs,
  outputs,
})
