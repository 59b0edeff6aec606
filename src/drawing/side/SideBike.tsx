import type { BikeShape } from '../bikeShape.ts'
import type { Projection } from '../projection.ts'
import { round } from '../state.ts'
import { CHASSIS, COVERS, FRAME, LOWERS, POINTS, SEAL, YOKE_PATH, YOKES } from './roadster.ts'

interface Point {
  x: number
  z: number
}

/** A rigid part's place: millimetres of its own frame to the drawing, its origin in the ground frame [m] and the way its second axis points. */
function placed({ spot, scale }: Projection, origin: Point, up: Point): string {
  const k = scale / 1000
  const [x, y] = spot(origin)
  const fine = (value: number): number => Math.round(value * 1e6) / 1e6
  return `matrix(${fine(k * up.z)} ${fine(k * up.x)} ${fine(k * up.x)} ${fine(-k * up.z)} ${round(x)} ${round(y)})`
}

/** A round tube from the side: an edge, and its filling one line narrower on each side. `line` is a line's width in millimetres. */
function Tube({ d, width, line, name }: { d: string; width: number; line: number; name: string }) {
  return (
    <>
      <path class="tube-edge" d={d} stroke-width={width} />
      <path
        class={`tube-fill ${name}`}
        d={d}
        stroke-width={round(Math.max(width * 0.3, width - 2 * line))}
      />
    </>
  )
}

const polar = (r: number, angle: number): string =>
  `${round(r * Math.cos(angle))} ${round(r * Math.sin(angle))}`

/** A cast wheel about its axle: tyre, rim, five spokes, disc with its bolts, hub. Radii in millimetres. */
export function SideWheel({ radius, disc }: { radius: number; disc: number }) {
  const section = radius * 0.27
  const rim = radius - section
  const spokes = [0, 1, 2, 3, 4].map((index) => {
    const a = (index * 2 * Math.PI) / 5 + Math.PI / 2
    return `M${polar(44, a - 0.5)}L${polar(rim - 16, a - 0.15)}L${polar(rim - 16, a + 0.15)}L${polar(44, a + 0.5)}Z`
  })
  return (
    <>
      <circle class="tyre" r={round(radius - section / 2)} stroke-width={round(section)} />
      <circle class="bike-line" r={radius} />
      <circle class="bike-line" r={round(rim)} />
      <circle class="bike-thin" r={round(rim - 16)} />
      <path class="bike-part" d={spokes.join('')} />
      <circle class="bike-disc" r={disc - 16} stroke-width="32" />
      <circle class="bike-thin" r={disc} />
      <circle class="bike-thin" r={disc - 32} />
      <circle class="bike-part" r="46" />
      <circle class="bike-hole" r="14" />
    </>
  )
}

/** Frame, engine, tank and seat: what rides on the springs. The frame is filled, since it is what stands and straps may hold. */
function Chassis({ line }: { line: number }) {
  return (
    <>
      <path class="bike-part" d={CHASSIS.guard} />
      <path class="bike-part" d={CHASSIS.plate} />
      {FRAME.slice(0, 2).map(([d, width]) => (
        <Tube key={d} d={d} width={width} line={line} name="frame-fill" />
      ))}
      <path class="bike-part" d={CHASSIS.airBox} />
      <path class="bike-part" d={CHASSIS.cylinder} />
      <path class="bike-thin" d={CHASSIS.fins} />
      <path class="bike-part" d={CHASSIS.cover} />
      <path class="bike-part" d={CHASSIS.sump} />
      <path class="bike-part" d={CHASSIS.engine} />
      {COVERS.map(([x, z, r, plain]) => (
        <circle
          key={`${x} ${r}`}
          class={plain ? 'bike-thin' : 'bike-part dark'}
          cx={x}
          cy={z}
          r={r}
        />
      ))}
      <path class="bike-part" d={CHASSIS.head} />
      {FRAME.slice(2).map(([d, width]) => (
        <Tube key={d} d={d} width={width} line={line} name="frame-fill" />
      ))}
      <path class="bike-frame" d={CHASSIS.gusset} />
      <Tube d={CHASSIS.pipe} width={40} line={line} name="metal-fill" />
      <path class="bike-part dark" d={CHASSIS.silencer} />
      <path class="bike-thin" d={CHASSIS.silencerBand} />
      <path class="bike-part" d={CHASSIS.tail} />
      <path class="bike-part dark" d={CHASSIS.lamp} />
      <path class="bike-skin dark" d={CHASSIS.seat} />
      <path class="bike-thin" d={CHASSIS.seatSeam} />
      <path class="bike-skin" d={CHASSIS.tank} />
      <path class="bike-thin" d={CHASSIS.tankSeam} />
    </>
  )
}

/** Bars, levers and footrests, over the rest. */
function Controls({ line }: { line: number }) {
  return (
    <>
      <path class="bike-part dark" d={CHASSIS.instruments} />
      <path class="bike-part" d={CHASSIS.reservoir} />
      <Tube d={CHASSIS.bars} width={24} line={line} name="metal-fill" />
      <path class="bike-line" d={CHASSIS.lever} />
      <Tube d={CHASSIS.grip} width={36} line={line} name="dark-fill" />
      <Tube d={CHASSIS.peg} width={22} line={line} name="dark-fill" />
    </>
  )
}

/** Rear shock between its two eyes, in its own frame: up from the lower eye [mm]. */
function ShockSide({ length }: { length: number }) {
  const coils = [0, 1, 2, 3, 4, 5].map((turn) => {
    const at = length * (0.2 + 0.098 * turn)
    return `M-36 ${round(at)}L36 ${round(at + length * 0.05)}`
  })
  return (
    <>
      <path
        class="bike-part"
        d={`M-8 20L8 20L8 ${round(length * 0.4)}L-8 ${round(length * 0.4)}Z`}
      />
      <path
        class="bike-part dark"
        d={`M-24 ${round(length * 0.42)}L24 ${round(length * 0.42)}L24 ${round(length * 0.86)}L-24 ${round(length * 0.86)}Z`}
      />
      <path class="shock-coil" d={coils.join('')} />
      <path
        class="bike-part"
        d={`M-42 ${round(length * 0.13)}h84v14h-84zM-42 ${round(length * 0.8)}h84v14h-84z`}
      />
      <circle class="bike-hole" r="15" />
      <circle class="bike-hole" cy={length} r="15" />
    </>
  )
}

const between = (a: Point, b: Point): { length: number; up: Point } => {
  const length = Math.hypot(b.x - a.x, b.z - a.z)
  return { length, up: { x: (b.x - a.x) / length, z: (b.z - a.z) / length } }
}

/** A point of the chassis [mm] in the ground frame [m], as the chassis stands. */
export function chassisPoint({ chassis: { x, z, cos, sin } }: BikeShape, at: Point): Point {
  return { x: x + (at.x * cos - at.z * sin) / 1000, z: z + (at.x * sin + at.z * cos) / 1000 }
}

/** The place [mm] of a point on the swing arm, `along` from the pivot and `above` its middle. */
function onSwingArm({ pivot, rearAxle }: BikeShape, along: number, above: number): Point {
  const { up } = between(pivot, rearAxle)
  return {
    x: pivot.x + (up.x * along + up.z * above) / 1000,
    z: pivot.z + (up.z * along - up.x * above) / 1000,
  }
}

/** The two eyes of the rear shock in the ground frame [m]. */
export const shockEyes = (shape: BikeShape): { foot: Point; head: Point } => ({
  foot: onSwingArm(shape, 166, -16),
  head: chassisPoint(shape, POINTS.shockHead),
})

/** Where a line on the tail stands straight above the rear axle, in the ground frame [m]. */
export const tailLine = (shape: BikeShape): Point => ({
  x: shape.rearAxle.x,
  z: chassisPoint(shape, POINTS.tailLine).z,
})

const SWING_ARM = 'M-34 -34C-36 -46 36 -46 36 -30L26 420L24 600L-24 600L-26 420Z'

/** The swing arm in its own frame: from the pivot towards the axle. */
function SwingArmSide({ length }: { length: number }) {
  return (
    <>
      <path
        class="bike-skin"
        d={SWING_ARM.replaceAll('600', String(round(length + 54))).replaceAll(
          '420',
          String(round(length - 60)),
        )}
      />
      <path
        class="bike-thin"
        d={`M-16 40L-12 ${round(length - 70)}M16 40L12 ${round(length - 70)}`}
      />
      <circle class="bike-hole" r="24" />
      <circle class="bike-hole" cy={round(length)} r="22" />
      <circle class="bike-part" cy={round(length)} r="12" />
    </>
  )
}

/** The front end from the lower yoke up to the tube's top, and the slider below: each moves with its own part. */
function ForkFront({
  shape,
  projection,
  without,
}: Pick<SideBikeProps, 'shape' | 'projection' | 'without'>) {
  const { frontAxle, lowerYoke, upperYoke, tubeTop } = shape
  const { up } = between(frontAxle, upperYoke)
  const below = (between(shape.seal, lowerYoke).length + 0.06) * 1000
  const top = between(lowerYoke, tubeTop).length * 1000
  return (
    <>
      <g transform={placed(projection, lowerYoke, up)}>
        <path
          class="bike-skin"
          d={`M-21.5 ${round(-below)}L-21.5 ${round(top)}L21.5 ${round(top)}L21.5 ${round(-below)}Z`}
        />
        <path class="bike-part dark" d={`M-16 ${round(top)}h32v12h-32z`} />
        <path class="bike-part dark" d={YOKE_PATH} />
        <path class="bike-thin" d={`M8 -15v30M8 ${YOKES - 15}v30`} />
      </g>
      <g transform={placed(projection, frontAxle, up)}>
        <path class="bike-thin" d={LOWERS.guardStays} />
        {without !== 'caliper' && (
          <>
            <path class="bike-part dark" d={LOWERS.caliper} />
            <path class="bike-thin" d={LOWERS.caliperLine} />
          </>
        )}
        <path class="bike-skin dark" d={LOWERS.slider} />
        <path class="bike-thin" d={LOWERS.sliderLine} />
        <circle class="bike-hole" r="17" />
      </g>
    </>
  )
}

const GUARD = (() => {
  const at = (r: number, degrees: number): string => polar(r, (degrees * Math.PI) / 180)
  return (r: number): string =>
    `M${at(r, 6)}A${r} ${r} 0 0 1 ${at(r, 122)}L${at(r + 14, 122)}A${r + 14} ${r + 14} 0 0 0 ${at(r + 14, 6)}Z`
})()

/** Metres to millimetres. */
const MM = 1000
const DISCS = { front: 150, rear: 112 }

interface SideBikeProps {
  shape: BikeShape
  projection: Projection
  /** a part taken off */
  without?: 'frontWheel' | 'caliper' | undefined
}

/** The whole bike from its right side, well drawn: for pictures that show where a hand, a stand or a strap goes. */
export function SideBike({ shape, projection, without }: SideBikeProps) {
  const { scale } = projection
  /** a line of about 1.1 units, in millimetres */
  const line = (1.1 / scale) * MM
  const upright = { x: -shape.chassis.sin, z: shape.chassis.cos }
  const level = { x: 0, z: 1 }
  const { foot, head } = shockEyes(shape)
  const shock = between(foot, head)
  const arm = between(shape.pivot, shape.rearAxle)
  const forkUp = between(shape.frontAxle, shape.upperYoke).up
  return (
    <g class="side-bike">
      <g transform={placed(projection, shape.rearAxle, level)}>
        <SideWheel radius={round(shape.rearRadius * MM)} disc={DISCS.rear} />
      </g>
      {without !== 'frontWheel' && (
        <g transform={placed(projection, shape.frontAxle, level)}>
          <SideWheel radius={round(shape.frontRadius * MM)} disc={DISCS.front} />
        </g>
      )}
      <g transform={placed(projection, shape.frontAxle, forkUp)}>
        <path class="bike-skin" d={GUARD(round(shape.frontRadius * MM + 16))} />
      </g>
      <g transform={placed(projection, shape.chassis, upright)}>
        <path class="bike-part dark" d={CHASSIS.lampBracket} />
        <path class="bike-skin" d={CHASSIS.headlamp} />
        <path class="bike-thin" d={CHASSIS.lens} />
        <path class="bike-frame" d={CHASSIS.pivotPlate} />
      </g>
      <g transform={placed(projection, foot, shock.up)}>
        <ShockSide length={round(shock.length * MM)} />
      </g>
      <g transform={placed(projection, shape.pivot, arm.up)}>
        <SwingArmSide length={round(arm.length * MM)} />
      </g>
      <g transform={placed(projection, shape.chassis, upright)}>
        <Chassis line={line} />
      </g>
      <ForkFront shape={shape} projection={projection} without={without} />
      <g transform={placed(projection, shape.chassis, upright)}>
        <Controls line={line} />
      </g>
    </g>
  )
}

export { POINTS, SEAL }
