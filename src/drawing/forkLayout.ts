/** What a fork leg in section is drawn from. Lengths in metres; depths count down from where the cap seats. */
export interface ForkLeg {
  /** outer diameter of the tube that slides [m] */
  tubeDiameter: number
  /** inner diameter of the tube that holds spring and oil [m] */
  boreDiameter: number
  /** from where the cap seats to where the spring sits, at full extension [m] */
  tubeDepth: number
  /** full travel [m] */
  travel: number
  /** used travel [m]; absent: fully extended */
  used?: number
  /** how far cap and adjuster reach below the cap's seat [m], adjuster setting included; below 0 the stack rises into the cap */
  capReach: number
  /** thickness of each washer [m], between spacer and spring */
  washers: readonly number[]
  /** 0: none [m] */
  spacerLength: number
  /** free length [m], wire and coils; null: the spring is out */
  spring: { freeLength: number; wireDiameter?: number; coils?: number } | null
  /** depth of the oil's surface [m]; absent: no oil drawn */
  oilDepth?: number
  /** wide tube on top, as in an upside-down fork */
  upsideDown?: boolean
  /** a damper rod stands on the bottom and carries the spring; a cartridge hangs its own rod from the cap; 'none' in a leg without a damper */
  damper?: 'rod' | 'cartridge' | 'none'
  /** the cap is off */
  open?: boolean
}

/** A piece of the stack between two depths [m]. */
export interface Piece {
  from: number
  to: number
}

/** Where everything stands, as depths [m] below the cap's seat. */
export interface ForkLayout {
  /** the tube with the cap */
  upper: Piece
  /** the tube with the axle */
  lower: Piece
  seat: number
  cap: Piece
  washers: Piece[]
  spacer: Piece | null
  spring: Piece | null
  /** space above a loose spring [m]; 0 when it is held */
  gap: number
}

// Invented but fair proportions of what no input tells: tube below the spring's seat, overlap of the tubes at full extension, foot below them.
const BELOW_SEAT = 0.045
const OVERLAP = 0.11
const FOOT = 0.03

function tubesOf(leg: ForkLeg): { upper: Piece; lower: Piece } {
  const used = leg.used ?? 0
  const end = leg.tubeDepth + BELOW_SEAT
  return {
    upper: { from: 0, to: end },
    lower: { from: end - OVERLAP - used, to: end + leg.travel + FOOT - used },
  }
}

/** Places every part of a leg, from its lengths alone. A spring shorter than its space is drawn at its free length on its seat, with the gap above. */
export function layoutFork(leg: ForkLeg): ForkLayout {
  const seat = leg.tubeDepth - (leg.used ?? 0)
  const washers: Piece[] = []
  let depth = leg.capReach
  const spacer = leg.spacerLength > 0 ? { from: depth, to: depth + leg.spacerLength } : null
  depth += Math.max(0, leg.spacerLength)
  for (const thickness of leg.washers) {
    washers.push({ from: depth, to: depth + thickness })
    depth += thickness
  }
  const space = seat - depth
  const spring = leg.spring && {
    from: seat - Math.max(0, Math.min(space, leg.spring.freeLength)),
    to: seat,
  }
  const gap = spring ? Math.max(0, spring.from - depth) : 0
  return {
    ...tubesOf(leg),
    seat,
    cap: { from: Math.min(0, leg.capReach), to: leg.capReach },
    washers,
    spacer,
    spring,
    gap,
  }
}
