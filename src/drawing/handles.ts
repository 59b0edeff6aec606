import type { ChartProps, XY } from './chartTypes.ts'
import { layOut } from './chartScale.ts'
import type { Spot } from './state.ts'

/** Where a handle is on its drawing. */
export interface HandlePlace {
  /** the place on the part that it moves [viewBox units] */
  spot: Spot
  /** how far that place moves along the handle's axis as the input grows [viewBox units per SI unit]; below zero where it moves to the left or up */
  perUnit: number
}

/** A part of a drawing that can be pulled. The stage lays a handle over it where the scale is large enough for a finger. */
export interface Handle<P> {
  /** the input that it moves */
  input: string
  /** the view in which it is, by its id */
  view: string
  axis: 'x' | 'y'
  /** the side of the part on which its grip is */
  side: 'left' | 'right' | 'above' | 'below'
  /** what to pull, with its article */
  part: string
  /** its place in a state; null where the state's drawing does not show the part */
  at(props: P): HandlePlace | null
}

/** A handle's place on a chart, at a point in SI. The chart's axis must be linear and must not change its ends as the input moves. */
export function placeOnChart(props: ChartProps, axis: 'x' | 'y', [x, y]: XY): HandlePlace {
  const { frame } = layOut(props)
  const along = axis === 'x' ? frame.x : frame.y
  return { spot: [frame.x(x), frame.y(y)], perUnit: along(1) - along(0) }
}
