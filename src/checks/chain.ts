import {
  bounceAndPitch,
  chainAt,
  chainCentreDistance,
  type ChainDrive,
  chainPath,
  hangingSag,
  sprocketPitchDiameter,
} from '../core/index.ts'
import { call } from './call.ts'

/** A drive as a paper on chains gives it: from the arm's length, the distance of pivot and engine sprocket, the angle between both, and pitch radii. */
interface ArmAndSprockets {
  armLength: number
  pivotToSprocket: number
  angleBetween: number
  frontRadius: number
  rearRadius: number
}

/** Teeth so many, and a pitch so short, that the chain runs on circles of these radii. */
const FINE = 10000

function chainRun(given: ArmAndSprockets) {
  const pitch = (2 * Math.PI * given.rearRadius) / FINE
  const drive: ChainDrive = {
    pitch,
    rearTeeth: FINE,
    frontTeeth: Math.round((FINE * given.frontRadius) / given.rearRadius),
    armLength: given.armLength,
    axleHeight: 0,
    frontSprocket: {
      x: given.pivotToSprocket * Math.cos(given.angleBetween),
      z: given.pivotToSprocket * Math.sin(given.angleBetween),
    },
  }
  const { centreDistance, run, armAngle, lowerRunAngle } = chainAt(drive, 0)
  return { centreDistance, run, lowerToArm: lowerRunAngle - armAngle }
}

export const chain = {
  chainPath: call(['chainPath'], chainPath),
  chainCentreDistance: call(['chainCentreDistance', 'chainPath'], chainCentreDistance),
  sprocketPitchDiameter: call(['sprocketPitchDiameter'], sprocketPitchDiameter),
  hangingSag: call(['hangingSag'], hangingSag),
  chainRun: call(['chainAt'], chainRun),
  bounceAndPitch: call(['bounceAndPitch'], bounceAndPitch),
}
