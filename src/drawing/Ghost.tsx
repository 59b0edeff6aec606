import type { BikePicture } from '../bikes/picture.ts'
import type { BikeShape } from './bikeShape.ts'
import { SteeringAxis } from './BikeNow.tsx'
import { CentreOfGravity } from './CentreOfGravity.tsx'
import type { Projection } from './projection.ts'
import { round } from './state.ts'
import { Wheel } from './Wheel.tsx'

/** The bike as it stood before: the outline that a change can be read against, dashed. */
export function Ghost({
  picture,
  shape,
  projection,
}: {
  picture: BikePicture
  shape: BikeShape
  projection: Projection
}) {
  const { spot, scale, path, stand } = projection
  const [front, rear, top, pivot] = [
    shape.frontAxle,
    shape.rearAxle,
    shape.tubeTop,
    shape.pivot,
  ].map(spot) as [[number, number], [number, number], [number, number], [number, number]]
  return (
    <g>
      <Wheel axle={rear} radius={shape.rearRadius * scale} state="before" scale={scale} />
      <Wheel axle={front} radius={shape.frontRadius * scale} state="before" scale={scale} />
      <g transform={stand(shape.chassis)}>
        <path class="before" d={path(shape.body.outlines['tank']!)} />
        <path class="before" d={path(shape.body.outlines['seat']!)} />
      </g>
      <line
        class="before"
        x1={round(front[0])}
        y1={round(front[1])}
        x2={round(top[0])}
        y2={round(top[1])}
      />
      <line
        class="before"
        x1={round(pivot[0])}
        y1={round(pivot[1])}
        x2={round(rear[0])}
        y2={round(rear[1])}
      />
      <SteeringAxis shape={shape} projection={projection} state="before" />
      {picture.centreOfGravity && (
        <CentreOfGravity at={spot(picture.centreOfGravity)} state="before" />
      )}
    </g>
  )
}
