/**
 * What the spring of one leg of a road fork commonly has [N/mm] (common practice, no source). People also quote the rate of the pair; a
 * number past this range whose half lies in it is asked about, and never changed unasked.
 */
export const RATE_OF_ONE_LEG = [6, 13] as const
