/** Room for one line of letters at their largest [viewBox units]. */
export const LETTERS = 21

/** Load arrows [viewBox units per newton]: 20 units per kN. */
export const LOAD_SCALE = 0.02
