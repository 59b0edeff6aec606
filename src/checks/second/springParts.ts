import {
  forkCurve,
  forkCurveForce,
  forkCurveFrom,
  forkForce,
  forkRate,
  forkTravel,
  gasCurve,
  gasCurveForce,
  gasCurveFrom,
  gasCurveRate,
  heldTravel,
  ratioCurve,
  rearTravel,
  rearWheelForce,
  rearWheelRate,
  springForce,
  springLimit,
  springRate,
  travelAtStroke,
} from '../../core/index.ts'
import type { CoilGroup } from '../../core/index.ts'
import type { Drawn } from './bikes.ts'
import { forkPush, shockPush, stackForce, stroke } from './laws.ts'
import type { Part } from './part.ts'

/** The used travel at which single functions are compared [m]. */
export const USED = 0.05
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

/** Springs, forks and rears by themselves. */
export const SPRINGS: readonly Part[] = [
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
