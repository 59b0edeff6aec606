import { centreOfGravityHeight, frontShareFromScales, pose, propagate, STANDARD_GRAVITY } from '../core/index.ts'
import type { Geometry, Pose } from '../core/index.ts'
import type { BikePicture } from './bike-picture.ts'
import type { inputs, outputs } from './cg-height.fields.ts'
import { InputRefusal } from './define.ts'
import type { InputValues, Interval, OutputValues } from './define.ts'
import { about, standardFromLimit } from './measured.ts'

type Values = InputValues<typeof inputs>

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

function heightOf(input: Values): Interval & { value: number } {
  const { scalePlusMinus, lengthPlusMinus, ...weighing } = input
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
function aheadOf({ frontLevel, rearLevel, wheelbase, scalePlusMinus, lengthPlusMinus }: Values): Interval & { value: number } {
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

function pictureOf(input: Values, height: number): RaisedPicture {
  const { wheelbase, frontRadius, rearRadius } = input
  const geometry: Geometry = { ...DRAWN, wheelbase, frontRadius, rearRadius, datum: { frontTravel: 0, rearTravel: 0 } }
  const level = pose(geometry, 0, 0)
  const { turn, pose: turned } = raised(level, input.lifted, input.lift)
  const share = frontShareFromScales({ front: input.frontLevel, rear: input.rearLevel })
  const total = input.frontLevel + input.rearLevel
  const down = input.otherWheelRaised
  return {
    bike: {
      pose: turned,
      geometry,
      frontTravel: 0,
      rearTravel: 0,
      fork: { upsideDown: false, travel: 0.12, tubeDiameter: 0.043, exposedTube: 0.15 },
      shocks: 1,
      loads: input.lifted === 'rear' ? { front: down, rear: total - down } : { front: total - down, rear: down },
    },
    turn,
    lifted: input.lifted,
    // level ground frame → chassis frame of a level bike is the same frame, so the pose can turn it
    centreOfGravity: turned.toGround({ x: share * wheelbase, z: height }),
  }
}

/** SI in, SI out. */
export function compute(input: Values): OutputValues<typeof outputs> {
  const height = heightOf(input)
  const stays = input.lifted === 'rear' ? input.frontLevel : input.rearLevel
  const lighter = centreOfGravityHeight({ ...input, uncertainty: undefined, otherWheelRaised: input.otherWheelRaised - HALF_KILOGRAM })
  return {
    height,
    ahead: aheadOf(input),
    frontShare: frontShareFromScales({ front: input.frontLevel, rear: input.rearLevel }),
    gained: input.otherWheelRaised - stays,
    perHalfKilogram: height.value - lighter,
  }
}

/** The bike with its axle raised, about the height found [SI]. */
export const picture = (input: Values, output: OutputValues<typeof outputs>): RaisedPicture =>
  pictureOf(input, output.height !== null && typeof output.height === 'object' ? (output.height.value ?? 0) : 0)
