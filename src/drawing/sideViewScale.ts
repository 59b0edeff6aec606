import type { BikePicture } from '../bikes/picture.ts'

/** Load arrows [viewBox units per newton]: 12 units per kN. */
export const LOAD_SCALE = 0.012

/** Rows below the ground [viewBox units]: the wheelbase's line and the trail's, then the baseline of what is written beside the arrows. */
export const ROWS = { wheelbase: 13, trail: 11, letters: 38 }

/** The longest load arrow of these pictures [viewBox units]. */
export const longestArrow = (pictures: readonly (BikePicture | null | undefined)[]): number =>
  Math.max(
    0,
    ...pictures.flatMap((picture) =>
      picture?.loads ? [picture.loads.front, picture.loads.rear] : [],
    ),
  ) * LOAD_SCALE

/** What the drawing needs below the ground: two rows, or the longest arrow [viewBox units]. */
export const belowGround = (pictures: readonly (BikePicture | null | undefined)[]): number =>
  Math.max(ROWS.letters, longestArrow(pictures))
