import { DomainError, nonNegative, positive, record } from './domain.ts'
import { findBalance, type Found } from './newton.ts'
import { type Scene, withRadii } from './scene.ts'

/**
 * A tyre as a spring between rim and ground: stiffness square to the ground [N/m], and the wheel
 * load [N] under which the radius of the geometry was measured (0 or absent: a free radius).
 * Published models of road motorcycles take 115 to 180 kN/m.
 */
export interface TyreSpring {
  stiffness: number
  load?: number
}

/** The tyres of a bike; one that is absent keeps the radius of the geometry. */
export interface Tyres {
  front?: TyreSpring
  rear?: TyreSpring
}

/**
 * How far each tyre is squashed beyond the radius of the geometry [m]; below 0 where it carries
 * less than when that was measured.
 */
export interface TyreSquash {
  front: number
  rear: number
}

// Each round leaves the load's share of change: the load moves by some hundredths of what a radius does to a tyre, so six rounds are enough.
const ROUNDS = 60
/**
 * Squash counts as settled within this [m]: a tenth of a picometre, far below what a load of 1e-6 N
 * moves.
 */
const SETTLED = 1e-13

function squashOf(name: string, tyre: TyreSpring | undefined, load: number): number {
  if (tyre === undefined) return 0
  const stiffness = positive(`${name}.stiffness`, record(name, tyre).stiffness)
  // a tyre cannot pull on the ground
  return (Math.max(0, load) - nonNegative(`${name}.load`, tyre.load ?? 0)) / stiffness
}

function radiusUnder(name: string, radius: number, squash: number, stiffness: unknown): number {
  if (squash < radius) return radius - squash
  throw new DomainError(
    `${name}.stiffness`,
    stiffness,
    'must be enough to carry the wheel load clear of the axle',
  )
}

/** Loads on the wheels of a balance found [N]. */
export const loadsOf = (scene: Scene, { balance }: Found): { front: number; rear: number } => ({
  front: scene.frontMass * scene.gravity + balance.frontBeyond,
  rear: scene.rearMass * scene.gravity + balance.rearBeyond,
})

/**
 * The balance of a scene on tyres that squash: loads, and the radii under them, in turn until
 * neither moves. Refuses a stiffness not above 0, or so low that the wheel load would press the
 * axle to the ground.
 */
export function balanceOnTyres(
  rigid: Scene,
  tyres: Tyres,
): { scene: Scene; found: Found; squash: TyreSquash } {
  const { front, rear } = record('tyres', tyres)
  let squash: TyreSquash = { front: 0, rear: 0 }
  let scene = rigid
  let found = findBalance(scene)
  for (let round = 0; round < ROUNDS; round++) {
    const loads = loadsOf(scene, found)
    const next = {
      front: squashOf('tyres.front', front, loads.front),
      rear: squashOf('tyres.rear', rear, loads.rear),
    }
    const moved = Math.max(Math.abs(next.front - squash.front), Math.abs(next.rear - squash.rear))
    squash = next
    scene = withRadii(
      rigid,
      radiusUnder('tyres.front', rigid.body.frontRadius, next.front, front?.stiffness),
      radiusUnder('tyres.rear', rigid.body.rearRadius, next.rear, rear?.stiffness),
    )
    found = findBalance(scene)
    if (moved <= SETTLED) return { scene, found, squash }
  }
  throw new DomainError('tyres', tyres, 'must be stiff enough for the bike to come to rest on them')
}
