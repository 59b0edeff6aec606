import { useMemo, useState } from 'preact/hooks'
import type { ComponentChildren } from 'preact'
import type { BikePicture } from '../bikes/picture.ts'
import type { Say } from '../units/say.ts'
import { bikeShape, exaggerated } from './bikeShape.ts'
import { BikeNow } from './BikeNow.tsx'
import { Exaggerate, EXAGGERATION } from './Exaggerate.tsx'
import { followed } from './followed.tsx'
import { Ghost } from './Ghost.tsx'
import { bikeScale, projection } from './projection.ts'
import type { Projection } from './projection.ts'
import { belowGround, longestArrow } from './sideViewScale.ts'
import { SideDimensions } from './SideDimensions.tsx'

interface SideViewProps {
  now: BikePicture
  before?: BikePicture | null
  say: Say
  prefix: string
  /** the takeaway, for readers who don't see the drawing */
  label: string
  caption: ComponentChildren
  /** which dimensions stand below the ground */
  dimensions?: boolean
  /** whether the change may be too small to see, so that the switch is offered */
  small?: boolean
  /** anything more, drawn over the bike in the same projection */
  children?: (projection: Projection) => ComponentChildren
}

export const VIEW_WIDTH = 360
const MARGIN = 8
const GROUND = 178
/** With people aboard, whose places and names stand above the bike. */
const GROUND_ABOARD = 196

const groundOf = ({ aboard }: BikePicture): number => (aboard?.length ? GROUND_ABOARD : GROUND)

/** Viewbox units per metre of a side view: fixed by the bike as quoted, so that it does not breathe while a control moves. */
export function sideViewScale({ geometry }: BikePicture): number {
  const { datum, wheelbase } = geometry
  return bikeScale(
    {
      wheelbase,
      frontRadius: datum.frontRadius ?? geometry.frontRadius,
      rearRadius: datum.rearRadius ?? geometry.rearRadius,
    },
    VIEW_WIDTH - 2 * MARGIN,
  )
}

/** The projection of a side view: the rear contact stands where the rear tyre touches the left margin. */
export function sideViewProjection(picture: BikePicture): Projection {
  const scale = sideViewScale(picture)
  return projection(scale, [
    MARGIN + (picture.geometry.datum.rearRadius ?? picture.geometry.rearRadius) * scale,
    groundOf(picture),
  ])
}

/** The drawing grows by steps [viewBox units]: one that grew with every newton would be laid out anew, and the page with it, at every move of a slider. */
const GROWS_BY = 12

/** Height of the drawing: room below the ground for the dimensions and the longest arrow. */
function heightOf(
  now: BikePicture,
  before: BikePicture | null | undefined,
  dimensions: boolean,
): number {
  const below = dimensions ? belowGround([now, before]) : longestArrow([now, before])
  return groundOf(now) + Math.ceil(below / GROWS_BY) * GROWS_BY + 4
}

function DrawnView({
  now,
  before,
  say,
  prefix,
  label,
  caption,
  dimensions = true,
  small = true,
  children,
}: SideViewProps) {
  const [large, setLarge] = useState(false)
  const view = sideViewProjection(now)
  const shape = bikeShape(now)
  // at its true size the ghost stands still while a control moves the bike
  const ghost = useMemo(
    () =>
      before && (
        <Ghost
          picture={before}
          shape={exaggerated(shape, bikeShape(before), large ? EXAGGERATION : 1)}
          projection={view}
        />
      ),
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the ghost at its true size hangs on the scale alone
    [before, view.scale, large ? shape : null],
  )
  const height = heightOf(now, before, dimensions)
  return (
    <>
      <figure class="fig">
        <svg viewBox={`0 0 ${VIEW_WIDTH} ${height}`} role="img" aria-label={label}>
          <line class="ground" x1="0" x2={VIEW_WIDTH} y1={view.ground} y2={view.ground} />
          <BikeNow picture={now} shape={shape} projection={view} />
          {ghost}
          {dimensions && (
            <SideDimensions
              now={now}
              before={before ?? null}
              projection={view}
              say={say}
              right={VIEW_WIDTH - 2}
            />
          )}
          {children?.(view)}
        </svg>
        <figcaption>
          {caption}
          {large && ` The change is drawn ${EXAGGERATION} times its size; the figures are true.`}
        </figcaption>
      </figure>
      {before && small && <Exaggerate on={large} set={setLarge} id={`${prefix}-exaggerate`} />}
    </>
  )
}

/** The whole bike from the side, to scale: now solid, before as a dashed ghost, loads as arrows, wheelbase and trail below the ground. */
export const SideView = followed(DrawnView)
