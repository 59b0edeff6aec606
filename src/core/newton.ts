import { type Balance, balanceAt, balanceSlopes, blankBalance } from './balance.ts'
import { heldTravel, lastTravel, type TravelLimit } from './fork.ts'
import type { Scene } from './scene.ts'

/** Used travels of both ends [m]. */
export interface Travels {
  front: number
  rear: number
}

/** A balance found: the used travels [m], everything at them, and how often the forces had to be worked out. */
export interface Found extends Travels {
  balance: Balance
  evaluations: number
}

// Newton needs 4 to 8 rounds; a search that takes more is going in circles between two corners of the spring laws.
const ROUNDS = 15

/**
 * The pair of travels at which both ends balance, each held to 0…limit.
 * Newton with exact slopes on the ends that are free to move; if that goes in circles, a bracketed search inside a bracketed search. `start` are the
 * travels [m] of a bike much like this one, from which it takes fewer rounds.
 */
export function findBalance(scene: Scene, start?: Partial<Travels>): Found {
  const { fork, rear } = scene
  const found: Found = {
    front: startIn(start?.front, fork.limit),
    rear: startIn(start?.rear, rear.limit),
    balance: blankBalance(),
    evaluations: 0,
  }
  return newton(scene, found) ? found : bracketed(scene, found)
}

const startIn = (travel: number | undefined, limit: TravelLimit): number =>
  travel === undefined ? 0.3 * limit.travel : heldTo(travel, lastTravel(limit))

// Rounding in the sums grows with the forces in them.
function tolerance(scene: Scene): number {
  return 1e-9 + 1e-13 * scene.total * (scene.gravity + scene.deceleration)
}

function newton(scene: Scene, found: Found): boolean {
  const { balance } = found
  const lastFront = lastTravel(scene.fork.limit)
  const lastRear = scene.rear.limit.travel
  const close = tolerance(scene)
  for (let round = 0; round < ROUNDS; round++) {
    balanceAt(scene, found.front, found.rear, balance)
    found.evaluations++
    const frontHeld = isHeld(found.front, balance.front, lastFront)
    const rearHeld = isHeld(found.rear, balance.rear, lastRear)
    if (
      (frontHeld || Math.abs(balance.front) <= close) &&
      (rearHeld || Math.abs(balance.rear) <= close)
    )
      return true
    balanceSlopes(scene, found.front, found.rear, balance)
    step(found, frontHeld, rearHeld, scene.fork.limit, lastRear)
    if (!(Number.isFinite(found.front) && Number.isFinite(found.rear))) return false
  }
  return false
}

// An end stands on its stop when it is there and the unbalanced force presses it against it.
function isHeld(travel: number, unbalanced: number, last: number): boolean {
  return (travel <= 0 && unbalanced <= 0) || (travel >= last && unbalanced >= 0)
}

function step(
  found: Found,
  frontHeld: boolean,
  rearHeld: boolean,
  frontLimit: TravelLimit,
  lastRear: number,
): void {
  const { front, rear, frontPerFront, frontPerRear, rearPerFront, rearPerRear } = found.balance
  if (frontHeld) {
    found.rear = heldTo(found.rear - rear / rearPerRear, lastRear)
  } else if (rearHeld) {
    found.front = forkStep(found.front, -front / frontPerFront, frontLimit)
  } else {
    const determinant = frontPerFront * rearPerRear - frontPerRear * rearPerFront
    found.front = forkStep(
      found.front,
      (rear * frontPerRear - front * rearPerRear) / determinant,
      frontLimit,
    )
    found.rear = heldTo(
      found.rear + (front * rearPerFront - rear * frontPerFront) / determinant,
      lastRear,
    )
  }
}

function heldTo(travel: number, last: number): number {
  return travel < 0 ? 0 : travel > last ? last : travel
}

// The force grows without bound towards a lock, so a step past it goes half the way instead.
function forkStep(from: number, step: number, limit: TravelLimit): number {
  if (limit.cause === 'locked' && from + step >= limit.travel) return (from + limit.travel) / 2
  return heldTo(from + step, limit.travel)
}

function bracketed(scene: Scene, found: Found): Found {
  const { balance } = found
  const evaluate = (front: number, rear: number): Balance => {
    balanceAt(scene, front, rear, balance)
    found.evaluations++
    return balance
  }
  const rearFor = (front: number): number =>
    heldTravel((rear) => -evaluate(front, rear).rear, scene.rear.limit.travel, 0)
  found.front = heldTravel(
    (front) => -evaluate(front, rearFor(front)).front,
    lastTravel(scene.fork.limit),
    0,
  )
  found.rear = rearFor(found.front)
  evaluate(found.front, found.rear)
  return found
}
