import type { BikeShape } from './bikeShape.ts'
import type { Projection } from './projection.ts'
import { direction, outline, round } from './state.ts'
import type { Spot } from './state.ts'

interface Fork {
  upsideDown: boolean
  tubeDiameter: number
}

/** The outline of a straight round part, seen from the side, between two places. */
function bar(from: Spot, to: Spot, width: number): string {
  const [ux, uy] = direction(from, to)
  const h = width / 2
  const corner = ([x, y]: Spot, side: number): Spot => [x - uy * h * side, y + ux * h * side]
  return outline([corner(from, 1), corner(to, 1), corner(to, -1), corner(from, -1)])
}

/** The outline of a yoke seen from the side: from behind the steering axis to in front of the tube. */
function yoke(at: Spot, axis: Spot, scale: number, rear: number): string {
  const along: Spot = [axis[1], -axis[0]]
  const end = (distance: number): Spot => [
    at[0] - along[0] * distance * scale,
    at[1] - along[1] * distance * scale,
  ]
  return bar(end(-rear), end(0.034), 0.026 * scale)
}

/** The fork: lowers, tubes, yokes, caliper. Its tubes pass the yokes at their true place, so that a raised tube stands out on top. */
export function ForkSide({
  shape,
  fork,
  offset,
  projection,
}: {
  shape: BikeShape
  fork: Fork
  offset: number
  projection: Projection
}) {
  const { spot, scale } = projection
  const [axle, seal, lower, upper, top] = [
    shape.frontAxle,
    shape.seal,
    shape.lowerYoke,
    shape.upperYoke,
    shape.tubeTop,
  ].map(spot) as [Spot, Spot, Spot, Spot, Spot]
  const [ux, uy] = direction(axle, upper)
  const tube = fork.tubeDiameter * scale
  const outer = Math.max(tube * 1.35, 0.054 * scale)
  const behind = (height: number, distance: number): Spot => [
    axle[0] + (ux * height + uy * distance) * scale,
    axle[1] + (uy * height - ux * distance) * scale,
  ]
  const caliper = [behind(0.09, 0.085), behind(0.17, 0.105), behind(0.19, 0.05), behind(0.1, 0.03)]
  const tubes = fork.upsideDown
    ? bar(axle, seal, tube * 0.95) + bar(seal, top, outer)
    : bar(seal, top, tube)
  const lowers = bar(behind(-0.03, 0), fork.upsideDown ? behind(0.045, 0) : seal, outer)
  const yokes = [lower, upper].map((at) => yoke(at, [ux, uy], scale, offset + 0.032)).join('')
  return (
    <g>
      <path class="metal" d={outline(caliper)} />
      <path class="now fill" d={tubes} />
      <path class="now solid" d={lowers + yokes} />
      <circle class="now paper" cx={round(axle[0])} cy={round(axle[1])} r={round(0.013 * scale)} />
    </g>
  )
}
