import { aboard } from '../../bikes/aboard.ts'
import { bikeOf } from '../../bikes/bikes.ts'
import { inSI } from '../../bikes/inSI.ts'
import type { BikeSheet } from '../../bikes/sheet.ts'
import { STANDARD_GRAVITY } from '../../core/index.ts'
import type { Bike, LoadCase } from '../../core/index.ts'
import { chainBySupport, largestAt } from './chain.ts'
import { choosing } from './choosing.ts'
import type { OneCase } from './oneCase.ts'
import { rideInSteps } from './quarter.ts'
import { halve } from './searches.ts'
import { placeAt } from './settle.ts'
import { tell } from './told.ts'
import type { Told } from './told.ts'

const MM = 1e-3

/** The chain calculator’s default drive, read before and after the back was raised by 10 mm. */
function chainCase(): OneCase {
  const drive = {
    pitch: 0.0254 * 0.625,
    frontTeeth: 16,
    rearTeeth: 44,
    armLength: 0.57,
    axleHeight: -0.09,
    frontSprocket: { x: 0.075, z: 0.005 },
  }
  const chain = chainBySupport(drive, { slack: 0.035, at: 0.02 })
  const [from, to, now] = [-0.01, 0.12, 0.01]
  const tightest = largestAt(chain.way, from, to)
  const growth = chain.way(tightest) - chain.way(now)
  return {
    calculator: 'chain-slack',
    given: {},
    core: ['slackAt', 'leastSlack', 'tightestTravel', 'chainExcess', 'midRunSlack'],
    others: {
      tightest: chain.slack(tightest),
      slackNow: chain.slack(now),
      hanging: chain.slack(from),
      full: chain.slack(to),
      least: chain.takenUp(now, growth),
      growth,
      run: chain.run(now),
    },
    // 40,000 directions leave a nanometre of the way, and a slack takes a hundred times that
    allowed: 1e-6,
  }
}

/** A bike on tyres that give way, settled and given way to in turn. */
function onTyres(
  bike: Bike,
  loadCase: LoadCase,
  rate: number,
  at: Told,
): { told: Told; bike: Bike } {
  let { frontLoad, rearLoad } = at
  const { geometry } = bike
  for (let round = 0; ; round++) {
    const squashed = {
      ...bike,
      geometry: {
        ...geometry,
        frontRadius: geometry.frontRadius - (frontLoad - at.frontLoad) / rate,
        rearRadius: geometry.rearRadius - (rearLoad - at.rearLoad) / rate,
      },
    }
    const told = tell({ bike: squashed, loadCase })
    if (round === 8) return { told, bike: squashed }
    ;({ frontLoad, rearLoad } = told)
  }
}

/** A place on the ground, in the chassis drawing: the turn undone by two unit steps. */
function inChassis(place: ReturnType<typeof placeAt>, at: { x: number; z: number }) {
  const [o, u] = [place({ x: 0, z: 0 }), place({ x: 1, z: 0 })]
  const [cos, sin] = [u.x - o.x, u.z - o.z]
  const [x, z] = [at.x - o.x, at.z - o.z]
  return { x: x * cos + z * sin, z: z * cos - x * sin }
}

/** Height of a point of a bike that rolls on round tyres, by turning it about the middle of the round. */
const rolled = (height: number, halfWidth: number, crown: number, roll: number): number =>
  crown + (height - crown) * Math.sin(Math.PI / 2 - roll) - halfWidth * Math.sin(roll)

/** The roll at which a height comes to 0. */
const touching = (height: (roll: number) => number): number =>
  halve((roll) => height(roll) > 0, [0, 1.2], 45)

function leanCase(sheet: BikeSheet): OneCase {
  const spec = inSI(sheet)
  const [height, halfWidth, ahead, crown, rate] = [0.3, 0.36, 0.62, 0.07, 150e3]
  const bike = bikeOf(spec)
  const measured = tell({ bike, loadCase: { payload: aboard(spec, { rider: 80 }) } })
  const part = inChassis(placeAt(bike, [measured.frontTravel, measured.rearTravel]), {
    x: ahead,
    z: height,
  })
  const payload = aboard(spec, { rider: 80, passenger: 70 })
  const standing = (lean: number) => {
    const { told, bike: there } = onTyres(bike, { payload, lean }, rate, measured)
    return { told, z: placeAt(there, [told.frontTravel, told.rearTravel])(part).z }
  }
  const upright = standing(0)
  const centre = upright.told.centreHeight - crown
  const effective = (roll: number): number =>
    Math.atan((centre * Math.sin(roll)) / (crown + centre * Math.cos(roll)))
  const low = touching((roll) => rolled(standing(effective(roll)).z, halfWidth, crown, roll))
  const there = standing(effective(low))
  return {
    calculator: 'lean-clearance',
    given: {},
    core: ['leanToTouch', 'touchAngle', 'rolledHeight', 'effectiveLean', 'toChassis'],
    others: {
      roll: low,
      rigid: touching((roll) => rolled(upright.z, halfWidth, crown, roll)),
      heightNow: upright.z,
      squat: upright.z - there.z,
      effective: effective(low),
      sideways: STANDARD_GRAVITY * Math.tan(effective(low)),
      frontTravel: there.told.frontTravel,
      rearTravel: there.told.rearTravel,
    },
  }
}

/** The damping calculator’s own bike end over a step, a bump and waves. */
function rideCases(): OneCase[] {
  const height = 20 * MM
  const period = 1 / (40 / 3.6)
  const common = { sprungMass: 112, unsprungMass: 28, wheelRate: 22e3, sag: 0.038, tyreRate: 180e3 }
  const damper = (speed: number): number => (speed > 0 ? 700 : 1500) * speed
  const hump = (time: number): number =>
    (height * (1 - Math.cos((2 * Math.PI * time) / period))) / 2
  const roads = {
    step: (time: number) =>
      time < period ? (height * (1 - Math.cos((Math.PI * time) / period))) / 2 : height,
    bump: (time: number) => (time < period ? hump(time) : 0),
    waves: hump,
  }
  return Object.entries(roads).map(([road, of]) => {
    const { travel, body, load, time } = rideInSteps({ ...common, damper, road: of }, 2.5)
    const end = road === 'step' ? height : 0
    const last = body.findLastIndex((at) => Math.abs(at - end) > 0.05 * height)
    const half = travel.slice(travel.length >> 1)
    return {
      calculator: 'damping',
      given: { road, height: 20, law: 'linear' },
      core: ['rideOver'],
      others: {
        rest: travel[0]!,
        peakTravel: Math.max(...travel),
        leastLoad: Math.min(...load),
        ...(road === 'step' ? { overshoot: Math.max(...body) - height } : {}),
        ...(road === 'waves'
          ? { meanTravel: half.reduce((sum, at) => sum + at, 0) / half.length }
          : { settling: time[last + 1]! }),
      },
      // the calculator’s steps are held to 1e-5 of 10 mm each, which adds up to a few hundredths of a millimetre, and a load to a share of it
      allowed: 1e-4,
    }
  })
}

/** States of calculators of which each has its own way round. */
export const oneByOne = (roadster: BikeSheet): OneCase[] => [
  chainCase(),
  leanCase(roadster),
  ...rideCases(),
  ...choosing(roadster),
]
