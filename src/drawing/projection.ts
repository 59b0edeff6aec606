import type { Chassis } from './bikeShape.ts'
import type { Outline } from './bodywork.ts'
import { round } from './state.ts'
import type { Spot } from './state.ts'

interface Point {
  x: number
  z: number
}

/** From metres on the ground frame to the drawing: x to the right, z up. */
export interface Projection {
  /** viewBox units per metre */
  scale: number
  ground: number
  spot(point: Point): Spot
  /** an outline of the chassis frame, written once; `stand` moves it to where the chassis stands */
  path(outline: Outline): string
  stand(chassis: Chassis): string
}

// a turn of half a degree moves a part a metre away by 9 mm: six decimals keep it within a thousandth of a millimetre
const fine = (value: number): number => Math.round(value * 1e6) / 1e6

/** A projection with its origin, the rear contact, at `origin` [viewBox units] and `scale` [units per metre]. */
export function projection(scale: number, [x0, y0]: Spot): Projection {
  const spot = ({ x, z }: Point): Spot => [x0 + x * scale, y0 - z * scale]
  const written = ({ x, z }: Point): string => `${round(x * scale)} ${round(-z * scale)}`
  return {
    scale,
    ground: y0,
    spot,
    path: (outline) =>
      outline.map(({ to, points }) => to + points.map(written).join(' ')).join(' '),
    stand(chassis) {
      const [x, y] = spot(chassis)
      const [cos, sin] = [fine(chassis.cos), fine(chassis.sin)]
      return `matrix(${cos} ${-sin} ${sin} ${cos} ${round(x)} ${round(y)})`
    },
  }
}

/** The scale [units per metre] at which a bike of this wheelbase and these radii [m] fills a width; the same before and after a change. */
export function bikeScale(
  {
    wheelbase,
    frontRadius,
    rearRadius,
  }: { wheelbase: number; frontRadius: number; rearRadius: number },
  width: number,
): number {
  return width / (wheelbase + frontRadius + rearRadius)
}
