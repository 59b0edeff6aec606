import type cgHeight from './statement.ts'
import type { Picture } from './solve.ts'
import { ends, middle } from '../../units/interval.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { bikeShape } from '../../drawing/bikeShape.ts'
import { BikeNow } from '../../drawing/BikeNow.tsx'
import { CentreOfGravity } from '../../drawing/CentreOfGravity.tsx'
import { Dimension } from '../../drawing/Dimension.tsx'
import { LoadArrow } from '../../drawing/LoadArrow.tsx'
import { projection } from '../../drawing/projection.ts'
import { sideViewScale } from '../../drawing/SideView.tsx'
import { LOAD_SCALE } from '../../drawing/sideViewScale.ts'
import { round } from '../../drawing/state.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

/** The bike as it is weighed: one axle raised on a stand, one scale under the wheel that stays down, the weight acting through its centre. */
export default function CgHeightFigure({ now, say }: FigureProps<typeof cgHeight, Picture>) {
  const { bike, centreOfGravity, lifted } = now.picture
  const scale = sideViewScale(bike) * 0.92
  const top = 232 + Math.max(0, now.input.lift - 0.4) * scale
  const view = projection(scale, [24 + bike.geometry.rearRadius * scale, top])
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
      <View id="all">
        <figure class="fig">
          <svg
            viewBox={`0 0 360 ${Math.ceil(top + 10 + deepest + 24)}`}
            role="img"
            aria-label={`The bike with its ${lifted} axle raised on a stand. ${told}`}
          >
            <line class="ground" x1="0" x2="360" y1={top} y2={top} />
            <rect
              class="metal"
              x={round(up[0] - 26)}
              y={round(standTop)}
              width="52"
              height={round(Math.max(0, top - standTop))}
            />
            <BikeNow picture={bike} shape={shape} projection={view} bare />
            <line
              class="plumb"
              x1={round(centre[0])}
              x2={round(centre[0])}
              y1={round(centre[1])}
              y2={top}
            />
            <CentreOfGravity at={centre} r={6} />
            <rect class="now fill" x={round(down[0] - 24)} y={top} width="48" height="7" />
            <Dimension
              from={[up[0] + (lifted === 'rear' ? -radius - 4 : radius + 4), top]}
              to={[up[0] + (lifted === 'rear' ? -radius - 4 : radius + 4), standTop]}
              text={say.quantity(now.input.lift, 'mm', 0)}
              turned
            />
            <LoadArrow
              tip={[down[0], top + 9]}
              load={kept}
              scale={LOAD_SCALE}
              text={say.quantity(kept, 'kg load', 1)}
            />
          </svg>
          <figcaption>
            To scale, suspension locked. Raising the axle carries the weight towards the wheel that
            stays down. {told}
          </figcaption>
        </figure>
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
CgHeightFigure.views = [{ id: 'all', name: 'Bike' }] satisfies readonly ViewName[]
