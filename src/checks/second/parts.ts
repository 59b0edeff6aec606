import {
  bikeFromScales,
  forceNeeded,
  forkCurve,
  forkCurveForce,
  forkCurveFrom,
  forkForce,
  forkForceFromAxleLoad,
  forkRate,
  forkTravel,
  frontShareFromScales,
  gasCurve,
  gasCurveForce,
  gasCurveFrom,
  gasCurveRate,
  groundTrail,
  heldTravel,
  pose,
  randomStream,
  ratioCurve,
  rearTravel,
  rearWheelForce,
  rearWheelRate,
  solveStance,
  springForce,
  springForceAt,
  springFromSags,
  springLimit,
  springRate,
  travelAtStroke,
  withSprings,
} from '../../core/index.ts'
import type { CoilGroup } from '../../core/index.ts'
import { drawBike } from './bikes.ts'
import type { Drawn } from './bikes.ts'
import { forkPush, shockPush, stackForce, stroke } from './laws.ts'
import { FINDING } from './findParts.ts'
import { read, settle } from './settle.ts'

/** One function of the core beside the second method's own way to the same number. */
export interface Part {
  name: string
  core(drawn: Drawn): number
  other(drawn: Drawn): number
}

const USED = 0.05
const FAST = { exponent: 1.4 }
const STEP = 1e-6
const slope = (f: (x: number) => number, at: number): number =>
  (f(at + STEP) - f(at - STEP)) / (2 * STEP)
const groupsOf = ({ bike }: Drawn): readonly CoilGroup[] => bike.rear.spring
const gasOf = ({ loadCase }: Drawn) => loadCase.gasState

/** Wheel force of the rear by work: what all shocks push, times the stroke that a movement of the wheel makes. */
const rearByWork = ({ bike: { rear } }: Drawn, used: number): number =>
  shockPush(rear, used) * slope((x) => stroke(rear, x), used)

/** Deflection at which a stack is all closed: where more force no longer moves it. */
const closedBy = (groups: readonly CoilGroup[]): number =>
  groups.reduce((sum, { closes }) => sum + (closes ?? 1), 0)

/** A stack of which every group closes. */
const closing = (drawn: Drawn): CoilGroup[] =>
  groupsOf(drawn).map(({ rate, closes }) => ({ rate, closes: closes ?? 0.05 }))

/** The bike settled at rest with its rider, by the second method. */
const atRest = ({ bike, loadCase: { payload = [] } }: Drawn): Drawn => ({
  bike,
  loadCase: { payload },
})

const SPRINGS: readonly Part[] = [
  {
    name: 'springForce',
    core: (drawn) => springForce(groupsOf(drawn), USED),
    other: (drawn) => stackForce(groupsOf(drawn), USED),
  },
  {
    name: 'springRate',
    core: (drawn) => springRate(groupsOf(drawn), USED),
    other: (drawn) => slope((x) => stackForce(groupsOf(drawn), x), USED),
  },
  {
    name: 'springLimit',
    core: (drawn) => springLimit(closing(drawn)) ?? Number.NaN,
    other: (drawn) => closedBy(closing(drawn)),
  },
  {
    name: 'forkForce',
    core: (drawn) => forkForce(drawn.bike.fork, USED, gasOf(drawn)),
    other: (drawn) => forkPush(drawn.bike.fork, USED, gasOf(drawn)),
  },
  {
    name: 'forkRate',
    core: (drawn) => forkRate(drawn.bike.fork, USED, gasOf(drawn)),
    other: (drawn) => slope((x) => forkPush(drawn.bike.fork, x, gasOf(drawn)), USED),
  },
  {
    name: 'forkTravel',
    core: ({ bike: { fork } }) => forkTravel(fork, forkPush(fork, USED)),
    other: () => USED,
  },
  {
    name: 'gasCurveRate',
    core: ({ bike: { fork } }) => {
      const { gas } = fork.legs[0]!
      return gasCurveRate(gasCurve(gas!, fork.travel), USED)
    },
    other: ({ bike: { fork } }) => {
      const airAlone = { travel: fork.travel, legs: [{ ...fork.legs[0]!, spring: [], preload: 0 }] }
      return slope((x) => forkPush(airAlone, x), USED)
    },
  },
  {
    name: 'gasCurveFrom',
    core: ({ bike: { fork } }) =>
      gasCurveForce(gasCurveFrom(gasCurve(fork.legs[0]!.gas!, fork.travel, FAST), 0.03), USED),
    other: ({ bike: { fork } }) => {
      const airAlone = { travel: fork.travel, legs: [{ ...fork.legs[0]!, spring: [], preload: 0 }] }
      return forkPush(airAlone, USED, { ...FAST, from: 0.03 })
    },
  },
  {
    name: 'forkCurveFrom',
    core: ({ bike: { fork } }) => forkCurveForce(forkCurveFrom(forkCurve(fork, FAST), 0.03), USED),
    other: ({ bike: { fork } }) => forkPush(fork, USED, { ...FAST, from: 0.03 }),
  },
  {
    name: 'heldTravel',
    core: (drawn) =>
      heldTravel((x) => shockPush(drawn.bike.rear, x), 0.1, shockPush(drawn.bike.rear, USED)),
    other: () => USED,
  },
  {
    name: 'travelAtStroke',
    core: ({ bike: { rear } }) =>
      travelAtStroke(ratioCurve(rear.motionRatio, rear.travel), stroke(rear, USED)),
    other: () => USED,
  },
  {
    name: 'rearWheelForce',
    core: ({ bike: { rear } }) => rearWheelForce(rear, USED),
    other: (drawn) => rearByWork(drawn, USED),
  },
  {
    name: 'rearWheelRate',
    core: ({ bike: { rear } }) => rearWheelRate(rear, USED),
    other: (drawn) => (rearByWork(drawn, USED + 1e-4) - rearByWork(drawn, USED - 1e-4)) / 2e-4,
  },
  {
    name: 'rearTravel',
    core: (drawn) => rearTravel(drawn.bike.rear, rearByWork(drawn, USED)),
    other: () => USED,
  },
]

/** The springs of a fork with two equal straight ones, and where it then stands alone and with its rider, by the second method. */
function equalSprings(drawn: Drawn) {
  const bike = withSprings(drawn.bike, 9000, 0.015)
  const rider = atRest({ ...drawn, bike })
  const alone: Drawn = { bike, loadCase: {} }
  return { bike, rider, sags: [settle(alone).frontTravel, settle(rider).frontTravel] as const }
}

function sagsOf(drawn: Drawn) {
  const { bike, rider, sags } = equalSprings(drawn)
  return (
    springFromSags({
      bike: drawn.bike,
      cases: { static: {}, rider: rider.loadCase },
      staticSag: sags[0],
      riderSag: sags[1],
    }).rate / (bike.fork.legs[0]?.spring[0]?.rate ?? Number.NaN)
  )
}

/** The same machine as two scales would tell it, its settled travels read, settled again by the second method. */
function weighedAgain(drawn: Drawn): number {
  const stance = solveStance(drawn.bike)
  const { frontLoad, rearLoad, frontTravel, rearTravel: rear, centreOfGravity } = stance
  const bike = bikeFromScales({
    ...drawn.bike,
    reading: {
      frontLoad,
      rearLoad,
      frontTravel,
      rearTravel: rear,
      centreOfGravityHeight: centreOfGravity.z,
    },
  })
  return settle({ bike, loadCase: {} }).frontTravel
}

const BIKES: readonly Part[] = [
  {
    name: 'pose',
    core: ({ bike }) => pose(bike.geometry, USED, USED).trail,
    other: ({ bike }) => read(bike, [USED, USED]).trail,
  },
  {
    name: 'groundTrail',
    core: ({ bike: { geometry } }) =>
      groundTrail({
        frontRadius: geometry.frontRadius,
        rake: pose(geometry, USED, USED).rake,
        forkOffset: geometry.forkOffset,
      }),
    other: ({ bike }) => read(bike, [USED, USED]).trail,
  },
  {
    name: 'forceNeeded',
    core: (drawn) =>
      forceNeeded(drawn.bike, atRest(drawn).loadCase, settle(atRest(drawn)).frontTravel),
    other: (drawn) => forkPush(drawn.bike.fork, settle(atRest(drawn)).frontTravel),
  },
  {
    name: 'forkForceFromAxleLoad',
    core: (drawn) => {
      const { frontLoad, rake } = solveStance(drawn.bike, atRest(drawn).loadCase)
      return forkForceFromAxleLoad({
        wheelLoad: frontLoad,
        unsprungMass: drawn.bike.frontUnsprungMass,
        rake,
      })
    },
    other: (drawn) => forkPush(drawn.bike.fork, settle(atRest(drawn)).frontTravel),
  },
  { name: 'springFromSags', core: sagsOf, other: () => 1 },
  {
    name: 'springForceAt',
    core: (drawn) => {
      const { bike, rider, sags } = equalSprings(drawn)
      return springForceAt(bike, rider.loadCase, sags[1])
    },
    other: (drawn) => {
      const { sags } = equalSprings(drawn)
      return stackForce([{ rate: 9000 }], 0.015 + sags[1])
    },
  },
  {
    name: 'withSprings',
    core: (drawn) => forkForce(withSprings(drawn.bike, 9000, 0.015).fork, USED),
    other: (drawn) => {
      const legs = drawn.bike.fork.legs.map((leg) => ({
        ...leg,
        spring: [{ rate: 9000 }],
        preload: 0.015,
      }))
      return forkPush({ ...drawn.bike.fork, legs }, USED)
    },
  },
  {
    name: 'bikeFromScales',
    core: weighedAgain,
    other: ({ bike }) => settle({ bike, loadCase: {} }).frontTravel,
  },
  {
    name: 'frontShareFromScales',
    core: ({ bike }) => {
      const { frontLoad: front, rearLoad: rear } = solveStance(bike)
      return frontShareFromScales({ front, rear })
    },
    // where the centre lies between the contacts
    other: ({ bike }) => {
      const { centreOfGravity, wheelbase } = solveStance(bike)
      return centreOfGravity.x / wheelbase
    },
  },
]

/** One function and how far it lies from the second method's number at the most [share]. */
export interface PartRun {
  name: string
  apart: number
}

/** What differences of a micrometre leave of a slope, and two searches of each other [share]. */
export const PART_ALLOWED = 1e-5

/** Compares single functions of the core with the second method's own way, over so many random bikes that stand between their stops. */
export function runParts(count: number): PartRun[] {
  const next = randomStream(20261127)
  const drawn: Drawn[] = []
  while (drawn.length < count) {
    const one = drawBike(next)
    const stances = [{}, atRest(one).loadCase].map((loadCase) => solveStance(one.bike, loadCase))
    if (stances.every(({ frontStop, rearStop }) => frontStop === 'none' && rearStop === 'none'))
      drawn.push(one)
  }
  return [...SPRINGS, ...BIKES, ...FINDING].map(({ name, core, other }) => ({
    name,
    apart: drawn.reduce((worst, one) => {
      const [ours, theirs] = [core(one), other(one)]
      const off = Math.abs(ours - theirs) / Math.abs(theirs)
      return off <= worst ? worst : off
    }, 0),
  }))
}
