import {
  groundTrail,
  METRIC_THREAD_PITCHES,
  propagate,
  STANDARD_GRAVITY,
  turnsToTravel,
  tyreRadius,
  wheelLoads,
} from '../core/index.ts'
import { call } from './call.ts'

interface RollOut {
  rollOut: number
  turns: number
  headAngle: number
  forkOffset: number
  uncertainty: { rollOut: number; headAngle: number; forkOffset: number }
}

/** Trail of a bicycle from what was measured on it: the way that its front wheel rolls in some turns, the head angle from the ground, the offset. */
function measuredTrail({ rollOut, turns, headAngle, forkOffset, uncertainty }: RollOut) {
  const trail = ([way = 0, angle = 0, offset = 0]: number[]): number =>
    groundTrail({
      frontRadius: way / (2 * Math.PI * turns),
      rake: Math.PI / 2 - angle,
      forkOffset: offset,
    })
  const { value, uncertainty: spread } = propagate(
    trail,
    [rollOut, headAngle, forkOffset],
    [uncertainty.rollOut, uncertainty.headAngle, uncertainty.forkOffset],
  )
  return { trail: value, uncertainty: spread }
}

type Vehicle = Parameters<typeof wheelLoads>[0] & { gravity: number }

/** Loads under a book's own g: they grow with it, once the deceleration is counted in it. */
function loadsUnder({ gravity, deceleration = 0, ...vehicle }: Vehicle) {
  const scale = gravity / STANDARD_GRAVITY
  const { front, rear } = wheelLoads({ ...vehicle, deceleration: deceleration / scale })
  return { front: front * scale, rear: rear * scale }
}

/** The acceleration at which the front wheel carries nothing: its load falls in a straight line. */
function liftingAcceleration(vehicle: Vehicle): number {
  const atRest = loadsUnder({ ...vehicle, deceleration: 0 }).front
  const perUnit = atRest - loadsUnder({ ...vehicle, deceleration: -1 }).front
  return atRest / perUnit
}

/** The deceleration, as a share of g, at which the rear wheel carries nothing on a slope: its load falls in a straight line. */
function liftingBraking(vehicle: {
  masses: Vehicle['masses']
  wheelbase: number
  slope?: number
}): number {
  const loadAt = (deceleration: number): number => wheelLoads({ ...vehicle, deceleration }).rear
  return loadAt(0) / (loadAt(0) - loadAt(STANDARD_GRAVITY))
}

function pitchOf(thread: string): number {
  return turnsToTravel({ turns: 1, pitch: METRIC_THREAD_PITCHES[thread] ?? Number.NaN })
}

export const geometry = {
  groundTrail: call(['groundTrail'], groundTrail),
  measuredTrail: call(['groundTrail', 'propagate'], measuredTrail),
  wheelLoads: call(['wheelLoads'], loadsUnder),
  liftingAcceleration: call(['wheelLoads'], liftingAcceleration),
  liftingBraking: call(['wheelLoads'], liftingBraking),
  tyreDiameter: call(['tyreRadius'], ({ marking }: { marking: string }) => 2 * tyreRadius(marking)),
  /** ISO 724's rules for the basic diameters, with the core's pitch. */
  thread: call(
    ['METRIC_THREAD_PITCHES', 'turnsToTravel'],
    ({ thread, diameter }: { thread: string; diameter: number }) => ({
      pitch: pitchOf(thread),
      pitchDiameter: diameter - ((3 * Math.sqrt(3)) / 8) * pitchOf(thread),
      minorDiameter: diameter - ((5 * Math.sqrt(3)) / 8) * pitchOf(thread),
    }),
  ),
}
