import { middle } from '../../src/calculators/interval.ts'
import type trail from '../../src/calculators/trail.ts'
import type { FigureProps } from './props.ts'
import { Dimension } from './kit/Dimension.tsx'
import { round } from './kit/state.ts'
import type { Spot } from './kit/state.ts'
import { Wheel } from './kit/Wheel.tsx'

interface Steering {
  rake: number
  forkOffset: number
  frontRadius: number
}

const CONTACT_X = 138
const GROUND = 252
/** A wheel of 300 mm is 102 units high in radius. */
const SCALE = 340

const at = (x: number, z: number): Spot => [CONTACT_X + x * SCALE, GROUND - z * SCALE]

/** The places of the construction, from the contact: axle, where the axis meets the road, the axis beside the axle, the foot of the normal. */
function construction({ rake, forkOffset, frontRadius }: Steering, trailLength: number) {
  const [sin, cos] = [Math.sin(rake), Math.cos(rake)]
  const foot = at(trailLength, 0)
  const along = (distance: number): Spot => at(trailLength - distance * sin, distance * cos)
  const beside = at(-forkOffset * cos, frontRadius - forkOffset * sin)
  const normalFoot = along(trailLength * sin)
  return { axle: at(0, frontRadius), foot, along, beside, normalFoot }
}

function Angle({ foot, rake, text }: { foot: Spot; rake: number; text: string }) {
  const reach = 212
  const end: Spot = [foot[0] - reach * Math.sin(rake), foot[1] - reach * Math.cos(rake)]
  return (
    <g class="dim">
      <line class="measure" x1={foot[0]} x2={foot[0]} y1={foot[1]} y2={round(foot[1] - reach - 8)} />
      <path class="measure" d={`M${round(end[0])} ${round(end[1])} A${reach} ${reach} 0 0 1 ${round(foot[0])} ${round(foot[1] - reach)}`} />
      <text class="middle" x={round((end[0] + foot[0]) / 2 + 14)} y={round(foot[1] - reach)} dy="-0.5em">
        {text}
      </text>
    </g>
  )
}

/** The front wheel with the lines that make its trail: radius, offset, rake, and where the axis meets the road. */
export default function TrailFigure({ now, before, say }: FigureProps<typeof trail>) {
  const length = middle(now.output.trail) ?? 0
  const normal = middle(now.output.normalTrail) ?? 0
  const { axle, foot, along, beside, normalFoot } = construction(now.input, length)
  const was = before && { trail: middle(before.output.trail) ?? 0, ...construction(before.input, middle(before.output.trail) ?? 0) }
  const top = along(0.7)
  const told = `Trail ${say.quantity(length, 'mm', 1)} from a rake of ${say.quantity(now.input.rake, '°', 1)}, ${say.quantity(now.input.forkOffset, 'mm', 1)} of offset and a radius of ${say.quantity(now.input.frontRadius, 'mm', 1)}.`
  return (
    <div class="figs">
      <figure class="fig">
        <svg viewBox={`0 0 360 ${was ? 320 : 298}`} role="img" aria-label={told}>
          <line class="ground" x1="8" x2="352" y1={GROUND} y2={GROUND} />
          <Wheel axle={axle} radius={now.input.frontRadius * SCALE} state="now" disc={0.15 * SCALE} scale={SCALE} />
          {was && before && (
            <g>
              <Wheel axle={was.axle} radius={before.input.frontRadius * SCALE} state="before" scale={SCALE} />
              <line class="before axis" x1={round(was.along(0.68)[0])} y1={round(was.along(0.68)[1])} x2={round(was.foot[0])} y2={round(was.foot[1])} />
              <circle class="before hollow" cx={round(was.foot[0])} cy={GROUND} r="3" />
            </g>
          )}
          <line class="axis ink" x1={axle[0]} x2={axle[0]} y1={round(axle[1] - 12)} y2={GROUND} />
          <line class="now axis" x1={round(top[0])} y1={round(top[1])} x2={round(foot[0])} y2={round(foot[1])} />
          <line class="now thin" x1={axle[0]} y1={GROUND} x2={round(normalFoot[0])} y2={round(normalFoot[1])} />
          <circle class="now solid" cx={round(foot[0])} cy={GROUND} r="3" />
          <circle class="now solid" cx={axle[0]} cy={round(axle[1])} r="3" />
          <line class="now thick" x1={axle[0]} y1={round(axle[1])} x2={round(beside[0])} y2={round(beside[1])} />
          <line class="detail" x1={round((axle[0] + beside[0]) / 2)} y1={round((axle[1] + beside[1]) / 2)} x2={round(axle[0] + 52)} y2={round(axle[1] - 52)} />
          <text class="start halo" x={round(axle[0] + 54)} y={round(axle[1] - 52)} dy="0.2em">
            offset {say.quantity(now.input.forkOffset, 'mm', 1)}
          </text>
          <text class="start halo now" x={round(Math.max(normalFoot[0], foot[0]) + 12)} y={round(GROUND - 22)}>
            normal trail {say.quantity(normal, 'mm', 1)}
          </text>
          <Dimension from={[axle[0] - 114, GROUND]} to={[axle[0] - 114, axle[1]]} text={say.quantity(now.input.frontRadius, 'mm', 1)} turned />
          <Angle foot={foot} rake={now.input.rake} text={`rake ${say.quantity(now.input.rake, '°', 1)}`} />
          <Dimension from={[axle[0], GROUND + 2]} to={[foot[0], GROUND + 2]} offset={24} text={say.quantity(length, 'mm', 1)} state="now" place="after" />
          {was && (
            <Dimension
              from={[was.axle[0], GROUND + 2]}
              to={[was.foot[0], GROUND + 2]}
              offset={48}
              text={`before ${say.quantity(was.trail, 'mm', 1)}`}
              state="before"
              place="after"
            />
          )}
        </svg>
        <figcaption>
          To scale. The steering axis passes behind the axle by the offset and meets the road ahead of the contact: that distance is the trail. The upright
          dimension is the radius.
        </figcaption>
      </figure>
    </div>
  )
}
