/* Why a sag lies elsewhere than it was worked out: each cause with the millimetres that it would explain, the one that explains most first. */

/** What is known of a fork whose sag was read again. Lengths in mm, rates in N/mm, each leg. */
export interface SagFacts {
  /** friction band of the readings after the work: after a lift less after a push */
  band?: number | undefined
  /** the largest spread among the readings, three of a kind */
  spread?: number | undefined
  /** sag that was worked out */
  predicted: number
  /** rate of the springs that were fitted */
  rate?: number | undefined
  /** turns of the preload adjusters that were set, and that were worked out */
  turnsSet?: number | undefined
  turnsWanted?: number | undefined
  /** height that one turn gives */
  perTurn?: number | undefined
  /** spacers as cut, left and right, and as worked out */
  spacerLeft?: number | undefined
  spacerRight?: number | undefined
  spacerWanted?: number | undefined
  /** oil height as it is less what the manual gives */
  oilOff?: number | undefined
}

/** A cause, the most that it explains [mm], whether that comes from this sheet's own readings, and what to look at. */
export interface Reason {
  cause: 'friction' | 'adjuster' | 'spacer' | 'label' | 'load' | 'reading' | 'air' | 'tyre'
  explains: number
  fromSheet: boolean
  look: string
}

/** Steps in which fork springs are sold [N/mm], and an adjuster's height a turn [mm]: common, no source. */
const RATE_STEP = 0.5
const PER_TURN = 1
/** A rider's dress and tank that differ by this much [kg] are common; nearly half of it stands on the front wheel. */
const LOAD_OFF = 5
const FRONT_PART = 0.45
const GRAVITY = 9.80665
/** Sag that 10 mm of oil height change at a rider's sag [mm]: the roadster's, from the oil height calculator. */
const SAG_PER_OIL = 0.05

const known = (...values: (number | undefined)[]): boolean =>
  values.every((value) => value !== undefined && Number.isFinite(value))

function spacerReason(facts: SagFacts): Reason {
  const { spacerLeft, spacerRight, spacerWanted } = facts
  const look =
    'Measure both spacers against what was worked out, and look down the tubes for a washer that has tilted.'
  if (!known(spacerLeft, spacerWanted))
    return { cause: 'spacer', explains: 1, fromSheet: false, look }
  const mean = (spacerLeft! + (spacerRight ?? spacerLeft!)) / 2
  return { cause: 'spacer', explains: Math.abs(mean - spacerWanted!), fromSheet: true, look }
}

function adjusterReason({ turnsSet, turnsWanted, perTurn = PER_TURN }: SagFacts): Reason {
  const look = 'Count both adjusters again from fully out. Left and right must agree.'
  return known(turnsSet, turnsWanted)
    ? {
        cause: 'adjuster',
        explains: Math.abs(turnsSet! - turnsWanted!) * perTurn,
        fromSheet: true,
        look,
      }
    : { cause: 'adjuster', explains: perTurn, fromSheet: false, look }
}

/** Every cause with what it would explain of a sag that misses, likeliest first. A tyre moves the bike and not the fork, so it comes last. */
export function reasonsFor(facts: SagFacts): Reason[] {
  const { band, spread, predicted, rate, oilOff } = facts
  const reasons: Reason[] = [
    {
      cause: 'friction',
      explains: (band ?? 6) / 2,
      fromSheet: band !== undefined,
      look: 'Free the axle clamp, bounce the fork and read both ways again. The fork rests anywhere within its band.',
    },
    adjusterReason(facts),
    spacerReason(facts),
    {
      cause: 'label',
      explains: rate ? (predicted * RATE_STEP) / rate : 2,
      fromSheet: rate !== undefined,
      look: 'Read both springs’ labels again, each and not the pair. One step in rate moves the sag by about this much.',
    },
    {
      cause: 'load',
      explains: rate ? (LOAD_OFF * GRAVITY * FRONT_PART) / (2 * rate) : 1.2,
      fromSheet: false,
      look: 'Weigh the rider in the gear of today, and compare the fuel. Five kilograms move it by about this much.',
    },
    {
      cause: 'reading',
      explains: (spread ?? 2) / 2,
      fromSheet: spread !== undefined,
      look: 'Read once more between the same two edges, the brake off and the feet on the pegs.',
    },
    {
      cause: 'air',
      explains: Math.abs(oilOff ?? 10) * SAG_PER_OIL,
      fromSheet: oilOff !== undefined,
      look: 'Compare the oil height with the manual’s. At rest the air adds little, so this alone seldom explains a miss.',
    },
    {
      cause: 'tyre',
      explains: 0,
      fromSheet: true,
      look: 'A softer or another tyre moves the bike and not the fork, so it explains nothing of a length read along the tube.',
    },
  ]
  return reasons.sort((a, b) => b.explains - a.explains)
}
