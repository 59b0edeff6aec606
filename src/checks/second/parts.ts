import {
  bikeFromScales,
  forceNeeded,
  forkForce,
  forkForceFromAxleLoad,
  frontShareFromScales,
  groundTrail,
  pose,
  randomStream,
  solveStance,
  springForceAt,
  springFromSags,
  withSprings,
} from '../../core/index.ts'
import { drawBike } from './bikes.ts'
import type { Drawn } from './bikes.ts'
import { FINDING } from './findParts.ts'
import { forkPush, stackForce } from './laws.ts'
import type { Part } from './part.ts'
import { read, settle } from './settle.ts'
import { SPRINGS, USED } from './springParts.ts'

/** The bike settled at rest with its rider, by the second method. */
const atRest = ({ bike, loadCase: { payload = [] } }: Drawn): Drawn => ({
  bike,
  loadCase: { payload },
})

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
