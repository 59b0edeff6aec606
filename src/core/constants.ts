/** Standard acceleration of free fall [m/s²], CGPM 1901 (ISO 80000-3). */
export const STANDARD_GRAVITY = 9.80665

/** Standard atmosphere [Pa], CGPM 1954 (ISO 80000-4). */
export const ATMOSPHERE = 101325

/** A fork's oil after a hard hour [K], 80 °C: the highest that is commonly told (common practice, no source). */
export const WARM_OIL = 353.15
