import type cgHeight from '../../src/calculators/cg-height.ts'
import { ends, middle } from '../../src/calculators/interval.ts'
import type { FigureProps } from './props.ts'
import { bikeShape } from './kit/bikeShape.ts'
import { BikeNow } from './kit/BikeNow.tsx'
import { CentreOfGravity } from './kit/CentreOfGravity.tsx'
import { Dimension } from './kit/Dimension.tsx'
import { LoadArrow } from './kit/LoadArrow.tsx'
import { projection } from './kit/projection.ts'
import { sideViewScale } from './kit/SideView.tsx'
import { LOAD_SCALE } from './kit/side-view-scale.ts'
import { round } from './kit/state.ts'

/** The bike as it is weighed: one axle raised on a stand, one scale under the wheel that stays down, the weight acting through its centre. */
export default function CgHeightFigure({ now, say }: FigureProps<typeof cgHeight>) {
  const { bike, centreOfGravity, lifted } = now.picture
  const scale = sideViewScale(bike) * 0.94
  const top = 232 + Math.max(0, now.input.lift - 0.4) * scale
  const view = projection(scale, [14 + bike.geometry.rearRadius * scale, top])
  const shape = bikeShape(bike)
  const up = lifted === 'rear' ? view.spot(shape.rearAxle) : view.spot(shape.frontAxle)
  const down = lifted === 'rear' ? view.spot(shape.frontAxle) : view.spot(shape.rearAxle)
  const radius = (lifted === 'rear' ? shape.rearRadius : shape.frontRadius) * scale
  const standTop = up[1] + radius
  const centre = view.spot(centreOfGravity)
  const height = middle(now.output.height) ?? 0
  const [low, high] = ends(now.output.height) ?? [height, height]
  const loads = bike.loads ?? { front: 0, rear: 0 }
  const kept = lifted === 'rear' ? loads.front : loads.rear
  const told = `Centre of gravity ${say.quantity(height, 'mm', 0)} above the ground, between ${say.number(low, 'mm', 0)} and ${say.quantity(high, 'mm', 0)}.`
  const deepest = Math.max(loads.front, loads.rear) * LOAD_SCALE
  return (
    <div class="figs">
      <figure class="fig">
        <svg viewBox={`0 0 360 ${Math.ceil(top + 10 + deepest + 24)}`} role="img" aria-label={`The bike with its ${lifted} axle raised on a stand. ${told}`}>
          <line class="ground" x1="0" x2="360" y1={top} y2={top} />
          <rect class="metal" x={round(up[0] - 26)} y={round(standTop)} width="52" height={round(Math.max(0, top - standTop))} />
          <BikeNow picture={bike} shape={shape} projection={view} bare />
          <line class="plumb" x1={round(centre[0])} x2={round(centre[0])} y1={round(centre[1])} y2={top} />
          <CentreOfGravity at={centre} r={6} />
          <rect class="now fill" x={round(down[0] - 24)} y={top} width="48" height="7" />
          <Dimension
            from={[up[0] + (lifted === 'rear' ? -radius - 4 : radius + 4), top]}
            to={[up[0] + (lifted === 'rear' ? -radius - 4 : radius + 4), standTop]}
            text={say.quantity(now.input.lift, 'mm', 0)}
            turned
          />
          <LoadArrow tip={[down[0], top + 9]} load={kept} scale={LOAD_SCALE} text={say.quantity(kept, 'kg load', 1)} />
        </svg>
        <figcaption>To scale, suspension locked. Raising the axle carries the weight towards the wheel that stays down. {told}</figcaption>
      </figure>
    </div>
  )
}
