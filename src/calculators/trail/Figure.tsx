import type { Say } from '../../units/say.ts'
import { middle } from '../../units/interval.ts'
import type trail from './statement.ts'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { ContactPatch, patchMagnification } from '../../drawing/ContactPatch.tsx'
import { Dimension } from '../../drawing/Dimension.tsx'
import { round } from '../../drawing/state.ts'
import type { Spot } from '../../drawing/state.ts'
import { lowerBearing, onFork, SteeringFork, yokesAt } from '../../drawing/SteeringFork.tsx'
import { Wheel } from '../../drawing/Wheel.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof trail>['now']

interface Steering {
  rake: number
  forkOffset: number
  frontRadius: number
}

/** The front end stands left, the ground under it magnified right. */
const CONTACT_X = 90
const GROUND = 204
const HEIGHT = 220
/** No wheel is drawn with a larger radius [units], and none at more than so many units a metre. */
const LARGEST = 54
const SCALE = 165
/** Where the front end's values stand, right of its lines. */
const RIGHT = 134
/** Length of the axis that is drawn, from the ground, and of the arc between it and the vertical [units]. */
const AXIS = 182
const ARC = 176
/** The magnified ground: its contact, and the room ahead of it. */
const LENS: Spot = [216, 126]
const ROOM = 116

/** The places of the construction, from the contact: axle, where the axis meets the road, along the axis from there. */
function construction(
  { rake, forkOffset, frontRadius }: Steering,
  trailLength: number,
  scale: number,
) {
  const [sin, cos] = [Math.sin(rake), Math.cos(rake)]
  const axle: Spot = [CONTACT_X, GROUND - frontRadius * scale]
  const foot: Spot = [CONTACT_X + trailLength * scale, GROUND]
  const along = (units: number): Spot => [foot[0] - units * sin, foot[1] - units * cos]
  const fork = { axle, radius: frontRadius, rake, forkOffset, scale }
  return { axle, foot, along, fork }
}
type Built = ReturnType<typeof construction>

/** The angle between the axis and the vertical where it meets the road, above the fork. */
function Rake({ built: { foot, fork, along }, text }: { built: Built; text: string }) {
  const end = along(ARC)
  return (
    <g class="dim">
      <line
        class="measure"
        x1={round(foot[0])}
        x2={round(foot[0])}
        y1={foot[1]}
        y2={round(foot[1] - ARC - 2)}
      />
      <path
        class="measure"
        d={`M${round(end[0])} ${round(end[1])} A${ARC} ${ARC} 0 0 1 ${round(foot[0])} ${round(foot[1] - ARC)}`}
      />
      <text
        class="middle"
        x={round(Math.max(foot[0] - ARC * Math.sin(fork.rake / 2), 46))}
        y={round(foot[1] - ARC - 7)}
      >
        {text}
      </text>
    </g>
  )
}

/** A name, and its value below it, right of the front end with a line to what they belong to. */
function Beside({ y, to, lines }: { y: number; to: Spot; lines: readonly string[] }) {
  return (
    <g>
      <line class="leader" x1={RIGHT - 4} y1={y - 5} x2={round(to[0])} y2={round(to[1])} />
      {lines.map((line, index) => (
        <text key={line} class="start" x={RIGHT} y={y + 17 * index}>
          {line}
        </text>
      ))}
    </g>
  )
}

/** The legs' centre line, and the offset between it and the axis, measured above the yokes. */
function Offset({ built: { fork }, text }: { built: Built; text: string }) {
  const at = onFork(fork)
  const { top } = yokesAt(fork.radius)
  const [low, high] = [at(0, -0.05), at(0, top + 0.06)]
  const [onLeg, onAxis] = [at(0, top + 0.035), at(-fork.forkOffset, top + 0.035)]
  return (
    <g>
      <line
        class="axis ink"
        x1={round(low[0])}
        y1={round(low[1])}
        x2={round(high[0])}
        y2={round(high[1])}
      />
      <Dimension from={onAxis} to={onLeg} text="" />
      <Beside y={56} to={onLeg} lines={['offset', text]} />
    </g>
  )
}

function Earlier({ built, radius }: { built: Built; radius: number }) {
  const top = built.along(AXIS)
  return (
    <g>
      <Wheel
        axle={built.axle}
        radius={radius * built.fork.scale}
        state="before"
        scale={built.fork.scale}
      />
      <line
        class="before axis"
        x1={round(top[0])}
        y1={round(top[1])}
        x2={round(built.foot[0])}
        y2={round(built.foot[1])}
      />
      <circle class="before hollow" cx={round(built.foot[0])} cy={GROUND} r="3" />
    </g>
  )
}

/** The wheel in its fork, and the steering axis through the head bearings, with what makes the trail: radius, offset, rake. */
function Construction({ built, say, input }: { built: Built; say: Say; input: Steering }) {
  const { axle, foot, along, fork } = built
  const top = along(AXIS)
  const bearing = lowerBearing(fork)
  const aside = CONTACT_X - input.frontRadius * fork.scale - 10
  return (
    <g>
      <Wheel
        axle={axle}
        radius={input.frontRadius * fork.scale}
        state="now"
        disc={0.15 * fork.scale}
        scale={fork.scale}
      />
      <SteeringFork {...fork} />
      <line class="axis ink" x1={axle[0]} x2={axle[0]} y1={round(axle[1])} y2={GROUND} />
      <line
        class="now axis heavy"
        x1={round(top[0])}
        y1={round(top[1])}
        x2={round(foot[0])}
        y2={round(foot[1])}
      />
      <circle class="now solid" cx={round(foot[0])} cy={GROUND} r="2.4" />
      <circle class="now solid" cx={axle[0]} cy={round(axle[1])} r="2.4" />
      <Rake built={built} text={`rake ${say.quantity(input.rake, '°', 1)}`} />
      <Offset built={built} text={say.quantity(input.forkOffset, 'mm', 1)} />
      <circle class="leader-end" cx={round(bearing[0])} cy={round(bearing[1])} r="2" />
      <Beside y={106} to={bearing} lines={['bearings']} />
      <Dimension
        from={[aside, GROUND]}
        to={[aside, axle[1]]}
        text={say.quantity(input.frontRadius, 'mm', 1)}
        turned
      />
    </g>
  )
}

const lengthOf = (state: State): number => middle(state.output.trail) ?? 0

/** The scales [viewBox units per metre and times that] of the front end and of the ground beside it, the same before and now. */
function scalesOf(now: State, before: State | null): { scale: number; times: number } {
  const states = before ? [now, before] : [now]
  const largest = Math.max(...states.map(({ input }) => input.frontRadius))
  const scale = Math.min(SCALE, LARGEST / largest)
  return { scale, times: patchMagnification(states.map(lengthOf), scale, ROOM) }
}

/** The front wheel and fork with the lines that make the trail, and beside them the ground, magnified, where it is measured. */
export default function TrailFigure({ now, before, say }: FigureProps<typeof trail>) {
  const { scale, times } = scalesOf(now, before)
  const built = construction(now.input, lengthOf(now), scale)
  const was = before && construction(before.input, lengthOf(before), scale)
  const length = say.quantity(lengthOf(now), 'mm', 1)
  const told = `Trail ${length} from a rake of ${say.quantity(now.input.rake, '°', 1)}, ${say.quantity(now.input.forkOffset, 'mm', 1)} of offset and a radius of ${say.quantity(now.input.frontRadius, 'mm', 1)}.`
  return (
    <div class="figs">
      <View id="all">
        <figure class="fig">
          <svg viewBox={`0 0 360 ${HEIGHT}`} role="img" aria-label={told}>
            <line
              class="ground"
              x1={round(CONTACT_X - now.input.frontRadius * scale - 10)}
              x2="156"
              y1={GROUND}
              y2={GROUND}
            />
            {was && before && <Earlier built={was} radius={before.input.frontRadius} />}
            <Construction built={built} say={say} input={now.input} />
            <text class="quiet end" x="358" y="14">
              the ground, ×{times}
            </text>
            <ContactPatch
              now={{ trail: lengthOf(now), rake: now.input.rake }}
              before={before && { trail: lengthOf(before), rake: before.input.rake }}
              radius={now.input.frontRadius}
              contact={LENS}
              room={ROOM}
              normal={say.quantity(middle(now.output.normalTrail) ?? 0, 'mm', 1)}
              scale={scale}
              say={(trail) => say.quantity(trail, 'mm', 1)}
            />
          </svg>
          <figcaption>
            Left, to scale: the steering axis runs through the head bearings. The legs stand ahead
            of it by the yokes’ offset, and parallel to it. The upright dimension is the radius.
            Right, the ground ×{times}: where the axis meets the road,{' '}
            {lengthOf(now) < 0 ? 'behind' : 'ahead of'} the tyre’s contact, the trail ends.
          </figcaption>
        </figure>
      </View>
      <View id="ground" closeUp>
        <Ground now={now} before={before} say={say} />
      </View>
    </div>
  )
}

/** The ground at the tyre over the whole width, large enough for a finger to set a millimetre. */
const GROUND_VIEW = { contact: [44, 60] as Spot, room: 290, reach: 0.14 }

function Ground({ now, before, say }: Pick<FigureProps<typeof trail>, 'now' | 'before' | 'say'>) {
  const { scale } = scalesOf(now, before)
  const of = (state: State) => ({ trail: lengthOf(state), rake: state.input.rake })
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${before ? 150 : 110}`}
        role="img"
        aria-label={`The ground at the front tyre, enlarged: trail ${say.quantity(lengthOf(now), 'mm', 1)}.`}
      >
        <ContactPatch
          now={of(now)}
          before={before && of(before)}
          radius={now.input.frontRadius}
          {...GROUND_VIEW}
          scale={scale}
          say={(length) => say.quantity(length, 'mm', 1)}
        />
      </svg>
      <figcaption>
        The ground alone, ×{groundTimes(now, before)}: from the tyre’s contact to where the axis
        meets the road.
      </figcaption>
    </figure>
  )
}

function groundTimes(now: State, before: State | null): number {
  const trails = [now, ...(before ? [before] : [])].map(lengthOf)
  return patchMagnification(
    [...trails, GROUND_VIEW.reach],
    scalesOf(now, before).scale,
    GROUND_VIEW.room,
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
TrailFigure.views = [
  { id: 'all', name: 'Front end', shows: ['rake', 'frontRadius'] },
  { id: 'ground', name: 'Ground', shows: ['forkOffset'] },
] satisfies readonly ViewName[]

/** What can be pulled: the place where the axis meets the road. More offset brings it back, by the offset over the cosine of the rake. */
TrailFigure.handles = [
  {
    input: 'forkOffset',
    view: 'ground',
    axis: 'x',
    side: 'above',
    part: 'the axis',
    at({ now, before }) {
      const magnified = scalesOf(now, before).scale * groundTimes(now, before)
      const behind = Math.max(0, -lengthOf(now), before ? -lengthOf(before) : 0)
      const [left, y] = GROUND_VIEW.contact
      const x = left + (behind + lengthOf(now)) * magnified
      return { spot: [x, y - 12], perUnit: -magnified / Math.cos(now.input.rake) }
    },
  },
] satisfies readonly Handle<FigureProps<typeof trail>>[]
