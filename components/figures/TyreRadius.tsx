import { middle } from '../../src/calculators/interval.ts'
import type tyreRadius from '../../src/calculators/tyre-radius.ts'
import type { FigureProps } from './index.ts'
import { ContactPatch, patchMagnification } from './kit/ContactPatch.tsx'
import { Dimension } from './kit/Dimension.tsx'
import { sideViewScale, SideView } from './kit/SideView.tsx'
import { round } from './kit/state.ts'
import { Wheel } from './kit/Wheel.tsx'

const GROUND = 214
const SCALE = 262
const ROOM = 280

/** Both tyres to scale on one ground line, each with its radius; then the bike that wears them. */
export default function TyreRadiusFigure({ now, before, say, prefix }: FigureProps<typeof tyreRadius>) {
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
  const axle = (r: number): number => GROUND - r * SCALE
  return (
    <div class="figs">
      <figure class="fig">
        <svg viewBox="0 0 360 252" role="img" aria-label={`Two tyres to scale. ${told}`}>
          <line class="ground" x1="0" x2="360" y1={GROUND} y2={GROUND} />
          {was !== null && (
            <g>
              <Wheel axle={[left, axle(was)]} radius={was * SCALE} state="before" scale={SCALE} />
              <line class="before axis" x1={left} x2={right} y1={round(axle(was))} y2={round(axle(was))} />
              <Dimension from={[left, GROUND]} to={[left, axle(was)]} text={say.quantity(was, 'mm', 1)} state="before" turned />
              <text class="middle before" x={left} y={GROUND} dy="1.3em">
                before {before?.input.marking}
              </text>
            </g>
          )}
          <Wheel axle={[right, axle(radius)]} radius={radius * SCALE} state="now" scale={SCALE} />
          <Dimension from={[right, GROUND]} to={[right, axle(radius)]} text={say.quantity(radius, 'mm', 1)} state="now" turned />
          <line class="detail" x1={right - 30} x2={right + 30} y1={round(GROUND - (radius - loaded) * SCALE)} y2={round(GROUND - (radius - loaded) * SCALE)} />
          <text class="middle now" x={right} y={GROUND} dy="1.3em">
            now {now.input.marking}
          </text>
        </svg>
        <figcaption>To scale, free. The thin line above the ground is where the ground meets this tyre when it is loaded.</figcaption>
      </figure>
      <SideView
        now={now.picture}
        before={before && before.picture}
        say={say}
        prefix={prefix}
        label={`The bike with these tyres. ${told}`}
        caption="The bike at rest with its rider, to scale. Dashed: with the tyre before."
      />
      <figure class="fig">
        <svg viewBox="0 0 360 128" role="img" aria-label={`The ground at the front tyre, magnified: trail ${say.quantity(now.picture.pose.trail, 'mm', 1)}.`}>
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
          The ground at the front tyre, ×{magnified} the drawing above: trail now{before ? ' and before' : ''}.
        </figcaption>
      </figure>
    </div>
  )
}
