import { solveStance } from '../core/index.ts'
import type { Stance } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import { bikeOf, geometryOf } from './bikes.ts'
import type { BikeSpec, Fitted } from './bikes.ts'
import { defineCalculator } from './define.ts'
import { rideHeightRemarks } from './ride-height.remarks.ts'
import { quotedFront, quotedRear, riderMass } from './whole-bike.fields.ts'
import { aboard, motionRatioAt, quotedAs } from './whole-bike.ts'

export type HeightChange = 'preload' | 'tubes' | 'shock' | 'tyre'

interface Given {
  bike: BikeSpec
  by: HeightChange
  amount: number
  rider: number
  quotedFront?: number
  quotedRear?: number
}

const MM = 1e-3

/** The one part that changes. A longer shock lifts the back by its length ÷ the motion ratio where the bike settles: the model needs one number. */
function fittedFor(spec: BikeSpec, { by, amount, rider }: Given): Fitted {
  if (by === 'preload') return { forkPreload: spec.fork.preload * MM + amount }
  if (by === 'tubes') return { tubeRaise: amount }
  if (by === 'tyre') return { frontRadius: spec.frontRadius * MM + amount }
  const settled = solveStance(bikeOf(spec), { payload: aboard(spec, { rider }) })
  return { rearRaise: amount / motionRatioAt(spec, settled.rearTravel) }
}

function settle(given: Given): { spec: BikeSpec; fitted: Fitted; stance: Stance } {
  const spec = quotedAs(given.bike, given.quotedFront, given.quotedRear)
  const fitted = fittedFor(spec, given)
  return { spec, fitted, stance: solveStance(bikeOf(spec, fitted), { payload: aboard(spec, given) }) }
}

export default defineCalculator({
  id: 'ride-height',
  version: 1,
  title: 'Change the ride height',
  question: 'Where does it sit?',
  answers: 'What a change of preload, tubes in the yokes, shock length or front tyre does to height, geometry and load.',
  assumes: [
    'The bike stands upright and at rest on level ground, both springs free of friction.',
    'The bike is an invented one, with its own springs, gas and geometry, and the rider sits still.',
  ],
  leavesOut: [
    'Tyre deflection: with a tyre of 180 N/mm about 4 mm of trail and 7 mm of height, nearly the same before and after.',
    'Friction: it can hold the front several millimetres off these heights, either way.',
    'Pneumatic trail, which is as large as the changes shown here, and yokes that are not parallel to the steering axis.',
  ],
  inputs: {
    bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
    by: {
      kind: 'choice',
      label: 'Change the height by',
      options: { preload: 'fork preload', tubes: 'tubes up through the yokes', shock: 'shock length', tyre: 'front tyre’s radius' },
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
  },
  outputs: {
    exposedTube: { label: 'Exposed tube, seal to mark', quantity: 'length', unit: 'mm', digits: 1 },
    rake: { label: 'Rake', quantity: 'angle', unit: '°', digits: 2 },
    trail: { label: 'Trail', quantity: 'length', unit: 'mm', digits: 1, lead: true },
    wheelbase: { label: 'Wheelbase', quantity: 'length', unit: 'mm', digits: 1 },
    frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
    frontShare: { label: 'Front share', quantity: 'share', unit: '%', digits: 2 },
    pitch: { label: 'Pitch, nose up', quantity: 'angle', unit: '°', digits: 2, signed: true },
    frontTravel: { label: 'Front travel used', quantity: 'length', unit: 'mm', digits: 1 },
    rearTravel: { label: 'Rear travel used', quantity: 'length', unit: 'mm', digits: 1, more: true },
    rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1, more: true },
  },
  compute(given) {
    const { spec, stance } = settle(given)
    const { rake, trail, wheelbase, frontLoad, frontShare, pitch, frontTravel, rearTravel, rearLoad } = stance
    return { exposedTube: spec.fork.exposedTube * MM - frontTravel, rake, trail, wheelbase, frontLoad, frontShare, pitch, frontTravel, rearTravel, rearLoad }
  },
  baseline: () => ({ amount: 0 }),
  picture(given): BikePicture {
    const { spec, fitted, stance } = settle(given)
    return bikePicture(spec, geometryOf(spec, fitted), stance)
  },
  remarks: rideHeightRemarks,
})
