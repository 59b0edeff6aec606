/*
 * What the calculators call little, enough or too much, once for all of them. Each stands with its reason; a remark or a hint that goes by one says the reason too.
 */

/** Less in hand on the brakes than this one bump can use up [m]: a worn road is rough by about as much. Common practice, no published source. */
export const BUMP_ON_BRAKES = 10e-3

/** More in hand than this on the hardest braking is never used [m]: one bump on the brakes, and the 5 mm that friction may hide. A judgement. */
export const ROOM_ENOUGH = 15e-3

/** A front with a higher ride frequency is called too stiff for a road [Hz]; the fitted springs of the invented bikes make 2.2 to 2.4. A judgement, no published source. */
export const STIFF_RIDE = 2.7
