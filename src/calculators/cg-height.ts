import { centreOfGravityHeight, frontShareFromScales, pose, propagate, STANDARD_GRAVITY } from '../core/index.ts'
import type { Geometry, Pose } from '../core/index.ts'
import type { BikePicture } from './bike-picture.ts'
import { cgHeightRemarks } from './cg-height.remarks.ts'
import { defineCalculator, InputRefusal } from './define.ts'
import type { Interval } from './define.ts'
import { about, standardFromLimit } from './measured.ts'

interface Weighing {
  frontLevel: number
  rearLevel: number
  otherWheelRaised: number
  lift: number
  lifted: 'front' | 'rear'
  wheelbase: number
  frontRadius: number
  rearRadius: number
  scalePlusMinus: number
  lengthPlusMinus: number
}

/** The raised bike: how far it turned [rad], the axle it turned about, its pose with every place turned. */
export interface RaisedPicture {
  bike: BikePicture
  turn: number
  lifted: 'front' | 'rear'
  centreOfGravity: { x: number; z: number }
}

/** The step of a common scale [N]. */
const HALF_KILOGRAM = 0.5 * STANDARD_GRAVITY

// The drawing needs a bike; no result does. Rake, offset and pivot are those of a plain road bike.
const DRAWN = { rake: (25 * Math.PI) / 180, forkOffset: 0.03, pivot: { x: 0.54, z: 0.39 } }

function heightOf(given: Weighing): Interval & { value: number } {
  const { scalePlusMinus, lengthPlusMinus, ...weighing } = given
  if (weighing.otherWheelRaised > weighing.frontLevel + weighing.rearLevel) {
    throw new InputRefusal('otherWheelRaised', 'Load on the wheel that stays down, bike raised, must not be more than both level loads together')
  }
  const { height, uncertainty } = centreOfGravityHeight({
    ...weighing,
    uncertainty: { load: standardFromLimit(scalePlusMinus), length: standardFromLimit(lengthPlusMinus) },
  })
  return about(height, uncertainty)
}

/** How far ahead of the rear axle the weight acts [m]: the front's share of the wheelbase. */
function aheadOf({ frontLevel, rearLevel, wheelbase, scalePlusMinus, lengthPlusMinus }: Weighing): Interval & { value: number } {
  const limits = [scalePlusMinus, scalePlusMinus, lengthPlusMinus].map(standardFromLimit)
  const { value, uncertainty } = propagate(
    ([front, rear, base]) => frontShareFromScales({ front: front!, rear: rear! }) * base!,
    [frontLevel, rearLevel, wheelbase],
    limits,
  )
  return about(value, uncertainty)
}

/** Turns a level pose about the axle that stays down. */
function raised(level: Pose, lifted: 'front' | 'rear', lift: number): { turn: number; pose: Pose } {
  const centre = lifted === 'rear' ? level.frontAxle : level.rearAxle
  const other = lifted === 'rear' ? level.rearAxle : level.frontAxle
  const rise = other.z - centre.z
  const span = Math.hypot(level.wheelbase, rise)
  const turn = (Math.asin((rise + lift) / span) - Math.asin(rise / span)) * (lifted === 'rear' ? -1 : 1)
  const [sin, cos] = [Math.sin(turn), Math.cos(turn)]
  const toRaised = ({ x, z }: { x: number; z: number }): { x: number; z: number } => ({
    x: centre.x + (x - centre.x) * cos - (z - centre.z) * sin,
    z: centre.z + (x - centre.x) * sin + (z - centre.z) * cos,
  })
  const turned = {
    ...level,
    rake: level.rake + turn,
    pitch: level.pitch + turn,
    frontAxle: toRaised(level.frontAxle),
    rearAxle: toRaised(level.rearAxle),
    pivot: toRaised(level.pivot),
  }
  return { turn, pose: { ...turned, toGround: (point) => toRaised(level.toGround(point)) } }
}

function pictureOf(given: Weighing, height: number): RaisedPicture {
  const { wheelbase, frontRadius, rearRadius } = given
  const geometry: Geometry = { ...DRAWN, wheelbase, frontRadius, rearRadius, datum: { frontTravel: 0, rearTravel: 0 } }
  const level = pose(geometry, 0, 0)
  const { turn, pose: turned } = raised(level, given.lifted, given.lift)
  const share = frontShareFromScales({ front: given.frontLevel, rear: given.rearLevel })
  const total = given.frontLevel + given.rearLevel
  const down = given.otherWheelRaised
  return {
    bike: {
      pose: turned,
      geometry,
      frontTravel: 0,
      rearTravel: 0,
      fork: { upsideDown: false, travel: 0.12, tubeDiameter: 0.043, exposedTube: 0.15 },
      shocks: 1,
      loads: given.lifted === 'rear' ? { front: down, rear: total - down } : { front: total - down, rear: down },
    },
    turn,
    lifted: given.lifted,
    // level ground frame → chassis frame of a level bike is the same frame, so the pose can turn it
    centreOfGravity: turned.toGround({ x: share * wheelbase, z: height }),
  }
}

const load = (label: string, standard: number, hint: string) =>
  ({ kind: 'quantity', label, hint, quantity: 'load', unit: 'kg load', range: [10, 400], step: 0.5, default: standard, procedure: 'weigh-the-bike' }) as const
const lengthOf = (label: string, range: readonly [number, number], standard: number) =>
  ({ kind: 'quantity', label, quantity: 'length', unit: 'mm', range, step: 1, default: standard, procedure: 'measure-geometry', more: true }) as const

export default defineCalculator({
  id: 'cg-height',
  version: 1,
  title: 'Height of the centre of gravity',
  question: 'What happens on the brakes?',
  answers: 'Where the centre of gravity is, from one weighing level and one with an axle raised, and how sure that is.',
  assumes: [
    'Suspension locked at both ends, so that the bike turns as one piece. Wheels free to roll, brakes off.',
    'Both scales level; the loads read with the bike upright and still.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. The result’s ± then covers about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Fuel and oil that run to the low end: 10 kg of fuel that moves 100 mm moves the height by several millimetres.',
    'Tyres that squash more on the low end, 1 or 2 mm of lift.',
  ],
  inputs: {
    frontLevel: load('Front wheel’s load, level', 100, 'The scale under the front wheel, bike level.'),
    rearLevel: load('Rear wheel’s load, level', 100, 'The scale under the rear wheel, bike level.'),
    otherWheelRaised: load('Load on the wheel that stays down, bike raised', 107.5, 'The scale under the other wheel, with one axle raised.'),
    lift: {
      kind: 'quantity',
      label: 'How far the axle is raised',
      hint: 'From axle to floor, raised, less the same, level.',
      quantity: 'length',
      unit: 'mm',
      range: [100, 800],
      step: 5,
      default: 400,
      procedure: 'weigh-the-bike',
    },
    lifted: { kind: 'choice', label: 'Axle that is raised', options: { rear: 'rear axle', front: 'front axle' }, default: 'rear', more: true },
    wheelbase: lengthOf('Wheelbase', [900, 2000], 1450),
    frontRadius: { ...lengthOf('Front tyre’s radius', [180, 420], 300), typical: [285, 305], typicalFrom: '17-inch road tyres, loaded and free' },
    rearRadius: { ...lengthOf('Rear tyre’s radius', [180, 420], 312), typical: [295, 320], typicalFrom: '17-inch road tyres, loaded and free' },
    scalePlusMinus: {
      kind: 'quantity',
      label: 'Each load is within ±',
      quantity: 'load',
      unit: 'kg load',
      range: [0, 10],
      step: 0.1,
      default: 0.5,
      more: true,
    },
    lengthPlusMinus: { kind: 'quantity', label: 'Each length is within ±', quantity: 'length', unit: 'mm', range: [0, 30], step: 0.5, default: 3, more: true },
  },
  outputs: {
    height: { label: 'Height above the ground (± covers about 95 %)', quantity: 'length', unit: 'mm', digits: 0, lead: true },
    ahead: { label: 'Ahead of the rear axle (±)', quantity: 'length', unit: 'mm', digits: 0 },
    frontShare: { label: 'Front share, level', quantity: 'share', unit: '%', digits: 1 },
    gained: { label: 'Load that moved when the axle rose', quantity: 'load', unit: 'kg load', digits: 1, signed: true },
    perHalfKilogram: { label: 'Height for half a kilogram more on that scale', quantity: 'length', unit: 'mm', digits: 0, signed: true, more: true },
  },
  compute(given) {
    const height = heightOf(given)
    const stays = given.lifted === 'rear' ? given.frontLevel : given.rearLevel
    const lighter = centreOfGravityHeight({ ...given, uncertainty: undefined, otherWheelRaised: given.otherWheelRaised - HALF_KILOGRAM })
    return {
      height,
      ahead: aheadOf(given),
      frontShare: frontShareFromScales({ front: given.frontLevel, rear: given.rearLevel }),
      gained: given.otherWheelRaised - stays,
      perHalfKilogram: height.value - lighter,
    }
  },
  picture: (given, output): RaisedPicture => pictureOf(given, output.height !== null && typeof output.height === 'object' ? (output.height.value ?? 0) : 0),
  remarks: cgHeightRemarks,
})
