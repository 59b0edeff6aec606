import type { BikePicture } from '../bikes/picture.ts'
import type { BikeShape } from './bikeShape.ts'
import { Body, Exhaust, Mudguard, Shock, SwingArm } from './Body.tsx'
import { CentreOfGravity } from './CentreOfGravity.tsx'
import { ForkSide } from './ForkSide.tsx'
import type { Projection } from './projection.ts'
import { round } from './state.ts'
import { Wheel } from './Wheel.tsx'

const FRONT_DISC = 0.15
const REAR_DISC = 0.11

/** The steering axis, drawn as a centre line down to the ground. */
export function SteeringAxis({
  shape,
  projection,
  state,
}: {
  shape: BikeShape
  projection: Projection
  state: 'now' | 'before'
}) {
  const [top, foot] = [projection.spot(shape.axisTop), projection.spot(shape.axisFoot)]
  return (
    <>
      <line
        class={`${state} axis`}
        x1={round(top[0])}
        y1={round(top[1])}
        x2={round(foot[0])}
        y2={round(foot[1])}
      />
      <circle
        class={state === 'now' ? 'now solid' : 'before hollow'}
        cx={round(foot[0])}
        cy={round(foot[1])}
        r="2"
      />
    </>
  )
}

/** The bike as it stands now: wheels behind, frame and engine, then swing arm, fork and axis on top; `bare` leaves the steering axis out. */
export function BikeNow({
  picture,
  shape,
  projection,
  bare = false,
}: {
  picture: BikePicture
  shape: BikeShape
  projection: Projection
  bare?: boolean
}) {
  const { spot, scale } = projection
  const [front, rear] = [spot(shape.frontAxle), spot(shape.rearAxle)]
  const shock = <Shock foot={spot(shape.shockFoot)} head={spot(shape.shockHead)} scale={scale} />
  return (
    <g>
      <Wheel
        axle={rear}
        radius={shape.rearRadius * scale}
        state="now"
        disc={REAR_DISC * scale}
        scale={scale}
      />
      <Wheel
        axle={front}
        radius={shape.frontRadius * scale}
        state="now"
        disc={FRONT_DISC * scale}
        scale={scale}
      />
      {picture.shocks === 1 && shock}
      <Mudguard axle={front} radius={shape.frontRadius * scale} scale={scale} />
      <Body shape={shape} projection={projection} />
      <SwingArm pivot={spot(shape.pivot)} axle={rear} scale={scale} />
      <Exhaust shape={shape} projection={projection} />
      {picture.shocks > 1 && shock}
      <ForkSide
        shape={shape}
        fork={picture.fork}
        offset={picture.geometry.forkOffset}
        projection={projection}
      />
      {!bare && <SteeringAxis shape={shape} projection={projection} state="now" />}
      {picture.centreOfGravity && <CentreOfGravity at={spot(picture.centreOfGravity)} />}
    </g>
  )
}
