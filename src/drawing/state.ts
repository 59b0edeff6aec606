/** Which of the two states a part belongs to; `plain` parts belong to neither. */
export type State = 'now' | 'before' | 'plain'

/** A place on the drawing, in units of its viewBox. */
export type Spot = readonly [x: number, y: number]

/** One decimal place of a viewBox unit is a tenth of a pixel on a phone: enough, and it keeps the markup short. */
export const round = (value: number): number => Math.round(value * 100) / 100

/** "x,y x,y …" for a polygon. */
export const spots = (points: readonly Spot[]): string =>
  points.map(([x, y]) => `${round(x)},${round(y)}`).join(' ')

/** The same as a closed path, so that several of one look can be one part of the drawing. */
export const outline = (points: readonly Spot[]): string =>
  `M${points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}Z`

/** Viewbox unit vector from one spot to another; along x when they coincide. */
export function direction([x0, y0]: Spot, [x1, y1]: Spot): Spot {
  const length = Math.hypot(x1 - x0, y1 - y0)
  return length === 0 ? [1, 0] : [(x1 - x0) / length, (y1 - y0) / length]
}
