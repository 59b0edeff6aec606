import {
  centreOfGravityHeight,
  frontShareFromScales,
  pose,
  propagate,
  STANDARD_GRAVITY,
} from '../../core/index.ts'
import type { Geometry, Pose } from '../../core/index.ts'
import type { BikePicture } from '../../bikes/picture.ts'
import type statement from './statement.ts'
import type { InputOf, OutputOf } from '../../machine/values.ts'
import { InputRefusal, defineWork } from '../../machine/work.ts'
import type { Interval } from '../../units/interval.ts'
import { about, standardFromLimit } from '../../machine/measured.ts'

type Values = InputOf<typeof statement>

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

/** Raised beyond this share of its reach a bike stands nearly on end, and the sum has no answer. */
const STEEPEST = 0.9

function refuseSteep({ lifted, lift, wheelbase, frontRadius, rearRadius }: Values): void {
  const rise = lifted === 'rear' ? rearRadius - frontRadius : frontRadius - rearRadius
  if (lift >= STEEPEST * wheelbase || rise + lift >= STEEPEST * Math.hypot(wheelbase, rise))
    throw new InputRefusal(
      'lift',
      'The axle cannot be raised so far on a bike of this wheelbase: it would stand nearly on end. Check how far it was raised',
    )
}

function heightOf(input: Values): Interval & { value: number } {
  const { scalePlusMinus, lengthPlusMinus, ...weighing } = input
  if (weighing.otherWheelRaised > weighing.frontLevel + weighing.rearLevel) {
    throw new InputRefusal(
      'otherWheelRaised',
      'The wheel that stays down cannot carry more than both wheels did together when level. Check the three loads',
    )
  }
  refuseSteep(input)
  const { height, uncertainty } = centreOfGravityHeight({
    ...weighing,
    uncertainty: {
      load: standardFromLimit(scalePlusMinus),
      length: standardFromLimit(lengthPlusMinus),
    },
  })
  return about(height, uncertainty)
}

/** How far ahead of the rear axle the weight acts [m]: the front's share of the wheelbase. */
function aheadOf({
  frontLevel,
  rearLevel,
  wheelbase,
  scalePlusMinus,
  lengthPlusMinus,
}: Values): Interval & { value: number } {
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
  const turn =
    (Math.asin((rise + lift) / span) - Math.asin(rise / span)) * (lifted === 'rear' ? -1 : 1)
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
  const geometry: Geometry = {
    ...DRAWN,
    wheelbase,
    frontRadius,
    rearRadius,
    datum: { frontTravel: 0, rearTravel: 0 },
  }
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
      loads:
        input.lifted === 'rear'
          ? { front: down, rear: total - down }
          : { front: total - down, rear: down },
    },
    turn,
    lifted: input.lifted,
    // level ground frame → chassis frame of a level bike is the same frame, so the pose can turn it
    centreOfGravity: turned.toGround({ x: share * wheelbase, z: height }),
  }
}

/** SI in, SI out. */
function compute(input: Values): OutputOf<typeof statement> {
  const height = heightOf(input)
  const stays = input.lifted === 'rear' ? input.frontLevel : input.rearLevel
  const lighter = centreOfGravityHeight({
    ...input,
    uncertainty: undefined,
    otherWheelRaised: input.otherWheelRaised - HALF_KILOGRAM,
  })
  return {
    height,
    ahead: aheadOf(input),
    frontShare: frontShareFromScales({ front: input.frontLevel, rear: input.rearLevel }),
    gained: input.otherWheelRaised - stays,
    perHalfKilogram: height.value - lighter,
  }
}

/** The bike with its axle raised, about the height found [SI]. */
const picture = (input: Values, output: OutputOf<typeof statement>): RaisedPicture =>
  pictureOf(
    input,
    output.height !== null && typeof output.height === 'object' ? (output.height.value ?? 0) : 0,
  )

/** What the figure draws. */
export type Picture = ReturnType<typeof picture>

export default defineWork<typeof statement>({
  solve(input) {
    const outputs = compute(input)
    return { outputs, picture: () => picture(input, outputs) }
  },
})
