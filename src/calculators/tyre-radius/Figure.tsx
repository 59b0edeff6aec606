import { middle } from '../../units/interval.ts'
import type tyreRadius from './statement.ts'
import type { Picture } from './solve.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { ContactPatch, patchMagnification } from '../../drawing/ContactPatch.tsx'
import { Dimension } from '../../drawing/Dimension.tsx'
import { sideViewScale, SideView } from '../../drawing/SideView.tsx'
import { round } from '../../drawing/state.ts'
import { Wheel } from '../../drawing/Wheel.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

const GROUND = 214
const SCALE = 262
const ROOM = 280

const axle = (radius: number): number => GROUND - radius * SCALE

/** The tyre before, dashed, with its axle's height carried across to the one now. */
function Earlier({
  radius,
  x,
  to,
  marking,
  text,
}: {
  radius: number
  x: number
  to: number
  marking: string
  text: string
}) {
  return (
    <g>
      <Wheel axle={[x, axle(radius)]} radius={radius * SCALE} state="before" scale={SCALE} />
      <line class="before axis" x1={x} x2={to} y1={round(axle(radius))} y2={round(axle(radius))} />
      <Dimension from={[x, GROUND]} to={[x, axle(radius)]} text={text} state="before" turned />
      <text class="middle before" x={x} y={GROUND} dy="1.3em">
        before {marking}
      </text>
    </g>
  )
}

/** Both tyres to scale on one ground line, each with its radius; then the bike that wears them. */
export default function TyreRadiusFigure({
  now,
  before,
  say,
  prefix,
}: FigureProps<typeof tyreRadius, Picture>) {
  const radius = middle(now.output.radius) ?? 0
  const loaded = middle(now.output.loadedRadius) ?? 0
  const was = before && (middle(before.output.radius) ?? 0)
  const told =
    was === null
      ? `${now.input.marking}: ${say.quantity(radius, 'mm', 1)}.`
      : `${before?.input.marking}: ${say.quantity(was, 'mm', 1)}. ${now.input.marking}: ${say.quantity(radius, 'mm', 1)}.`
  const [left, right] = was === null ? [180, 180] : [90, 270]
  const trails = [now.picture.pose.trail, ...(before ? [before.picture.pose.trail] : [])]
  const magnified = patchMagnification(trails, sideViewScale(now.picture), ROOM)
  return (
    <div class="figs">
      <View id="tyres">
        <figure class="fig">
          <svg viewBox="0 0 360 252" role="img" aria-label={`Two tyres to scale. ${told}`}>
            <line class="ground" x1="0" x2="360" y1={GROUND} y2={GROUND} />
            {was !== null && (
              <Earlier
                radius={was}
                x={left}
                to={right}
                marking={before?.input.marking ?? ''}
                text={say.quantity(was, 'mm', 1)}
              />
            )}
            <Wheel axle={[right, axle(radius)]} radius={radius * SCALE} state="now" scale={SCALE} />
            <Dimension
              from={[right, GROUND]}
              to={[right, axle(radius)]}
              text={say.quantity(radius, 'mm', 1)}
              state="now"
              turned
            />
            <line
              class="detail"
              x1={right - 30}
              x2={right + 30}
              y1={round(GROUND - (radius - loaded) * SCALE)}
              y2={round(GROUND - (radius - loaded) * SCALE)}
            />
            <text class="middle now" x={right} y={GROUND} dy="1.3em">
              now {now.input.marking}
            </text>
          </svg>
          <figcaption>
            To scale, free. The thin line above the ground is where the ground meets this tyre when
            it is loaded.
          </figcaption>
        </figure>
      </View>
      <View id="bike">
        <SideView
          now={now.picture}
          before={before && before.picture}
          say={say}
          prefix={prefix}
          label={`The bike with these tyres. ${told}`}
          caption="The bike at rest with its rider, to scale. Dashed: with the tyre before."
        />
      </View>
      <View id="ground">
        <figure class="fig">
          <svg
            viewBox={`0 0 360 ${before ? 148 : 108}`}
            role="img"
            aria-label={`The ground at the front tyre, magnified: trail ${say.quantity(now.picture.pose.trail, 'mm', 1)}.`}
          >
            <ContactPatch
              now={now.picture.pose}
              before={before && before.picture.pose}
              radius={now.picture.geometry.frontRadius}
              contact={[50, 56]}
              room={ROOM}
              scale={sideViewScale(now.picture)}
              say={(trail) => say.quantity(trail, 'mm', 1)}
            />
          </svg>
          <figcaption>
            The ground at the front tyre, ×{magnified} the drawing above: trail now
            {before ? ' and before' : ''}.
          </figcaption>
        </figure>
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
TyreRadiusFigure.views = [
  { id: 'tyres', name: 'Tyres', shows: ['fitted', 'marking', 'end'] },
  { id: 'bike', name: 'Bike', shows: ['bike', 'rider'] },
  { id: 'ground', name: 'Ground', shows: ['tyreRate'] },
] satisfies readonly ViewName[]
