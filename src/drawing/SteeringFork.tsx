import { round } from './state.ts'
import type { Spot } from './state.ts'

/** Heights along the leg above the tyre [m], and widths: drawing sizes, which no result depends on. */
const LOWER = 0.17
const UPPER = 0.34
const TOP = 0.38
const SLIDER = 0.045
const TUBE = 0.043
const YOKE = 0.028

interface SteeringForkProps {
  /** the front axle on the drawing, and the tyre's radius [m] */
  axle: Spot
  radius: number
  /** from the vertical [rad]; axle ahead of the steering axis, at right angles to it [m] */
  rake: number
  forkOffset: number
  /** viewBox units per metre */
  scale: number
}

/** A place in the fork's own frame: `ahead` of the leg and `up` along it from the axle [m], on the drawing. */
export function onFork({
  axle: [x, y],
  rake,
  scale,
}: Pick<SteeringForkProps, 'axle' | 'rake' | 'scale'>): (ahead: number, up: number) => Spot {
  const [sin, cos] = [Math.sin(rake), Math.cos(rake)]
  return (ahead, up) => [x + (ahead * cos - up * sin) * scale, y - (ahead * sin + up * cos) * scale]
}

/** Where the yokes hold the axis, up the leg from the axle [m]. */
export const yokesAt = (radius: number): { lower: number; upper: number; top: number } => ({
  lower: radius + LOWER,
  upper: radius + UPPER,
  top: radius + TOP,
})

/**
 * A front fork from the side with its two yokes, and between them the steering head with its bearings: the steering axis runs through the bearings,
 * and the legs stand ahead of it by the offset.
 */
export function SteeringFork(props: SteeringForkProps) {
  const { radius, forkOffset } = props
  const at = onFork(props)
  const { lower, upper, top } = yokesAt(radius)
  const seal = radius + 0.04
  const box = (ahead: readonly [number, number], up: readonly [number, number]): string =>
    `M${[at(ahead[0], up[0]), at(ahead[1], up[0]), at(ahead[1], up[1]), at(ahead[0], up[1])].map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}Z`
  const yoke = (height: number): string =>
    box(
      [Math.min(0, -forkOffset) - 0.032, Math.max(0, -forkOffset) + 0.034],
      [height - YOKE / 2, height + YOKE / 2],
    )
  const bearing = (height: number): string =>
    box([-forkOffset - 0.03, -forkOffset + 0.03], [height - 0.011, height + 0.011])
  const [bottomRace, topRace] = [lower + YOKE / 2 + 0.012, upper - YOKE / 2 - 0.012]
  return (
    <g class="steering-fork">
      <path class="now fill" d={box([-TUBE / 2, TUBE / 2], [seal - 0.02, top])} />
      <path
        class="now fill slider"
        d={box([-SLIDER / 2 - 0.006, SLIDER / 2 + 0.006], [-0.03, seal])}
      />
      <path class="metal" d={box([-forkOffset - 0.022, -forkOffset + 0.022], [lower, upper])} />
      <path class="now solid" d={yoke(lower) + yoke(upper)} />
      <path class="bearing" d={bearing(bottomRace) + bearing(topRace)} />
    </g>
  )
}

/** The middle of one head bearing's near face, for a label. */
export const lowerBearing = (
  props: Pick<SteeringForkProps, 'axle' | 'rake' | 'scale' | 'forkOffset' | 'radius'>,
): Spot => onFork(props)(-props.forkOffset - 0.024, yokesAt(props.radius).lower + YOKE / 2 + 0.012)
