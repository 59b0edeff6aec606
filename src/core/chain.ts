import { DomainError, nonNegative, positive, record, representable, wholeNumber } from './domain.ts'
import { bracketedRoot } from './root.ts'

/** Two sprockets and a chain: pitch [m] and numbers of teeth. */
export interface Sprockets {
  pitch: number
  frontTeeth: number
  rearTeeth: number
}

/**
 * The way of a chain about two sprockets: its length [m] and that in links [1], one straight run
 * [m], the angles that it wraps [rad].
 */
export interface ChainPath {
  length: number
  links: number
  run: number
  frontWrap: number
  rearWrap: number
}

/**
 * Least teeth of a sprocket that a roller chain runs on; below, the pitch polygon is no circle any
 * more. Common practice, no source.
 */
const LEAST_TEETH = 6

/**
 * Diameter [m] of the circle on which a chain's pins lie about a sprocket, pitch [m] and teeth [1]:
 * pitch/sin(π/teeth). Refuses a pitch not above 0 and fewer than 6 teeth. Source: ISO 606.
 */
export function sprocketPitchDiameter({ pitch, teeth }: { pitch: number; teeth: number }): number {
  return positive('pitch', pitch) / Math.sin(Math.PI / wholeNumber('teeth', teeth, LEAST_TEETH))
}

/**
 * Radii [m] on which a chain runs in the mean over a tooth: one pitch for each tooth. It is the
 * pitch circle's, less one or two tenths of a millimetre.
 */
export function runningRadii(sprockets: Sprockets): { front: number; rear: number } {
  const { pitch, frontTeeth, rearTeeth } = record('sprockets', sprockets)
  const radius = (name: string, teeth: number): number =>
    (wholeNumber(name, teeth, LEAST_TEETH) * positive('pitch', pitch)) / (2 * Math.PI)
  return { front: radius('frontTeeth', frontTeeth), rear: radius('rearTeeth', rearTeeth) }
}

/**
 * The way of a taut chain about two sprockets whose centres lie a distance apart [m]: both straight
 * runs √(C² − (R − r)²) and both wraps, on the radii on which the chain runs in the mean. Exact for
 * a belt on those radii; a chain of links differs by what its polygon moves, hundredths of a
 * millimetre. Refuses sprockets that overlap. Source: the rule for two circles; the handbook's
 * formula for links is its series (Bhandari, ch. 14).
 */
export function chainPath(drive: Sprockets & { centreDistance: number }): ChainPath {
  const { front, rear } = runningRadii(drive)
  const distance = positive('centreDistance', drive.centreDistance)
  if (distance <= front + rear)
    throw new DomainError('centreDistance', distance, 'must leave room between the sprockets')
  const tilt = Math.asin((rear - front) / distance)
  const run = distance * Math.cos(tilt)
  const frontWrap = Math.PI - 2 * tilt
  const rearWrap = Math.PI + 2 * tilt
  const length = representable('length', 2 * run + rear * rearWrap + front * frontWrap)
  return { length, links: length / drive.pitch, run, frontWrap, rearWrap }
}

/**
 * Distance of the sprocket centres [m] at which a chain of so many links is taut; refuses a chain
 * too short to go about both. Source: `chainPath`.
 */
export function chainCentreDistance(drive: Sprockets & { links: number }): number {
  const { front, rear } = runningRadii(drive)
  const length = positive('links', drive.links) * drive.pitch
  const excess = (centreDistance: number): number =>
    chainPath({ ...drive, centreDistance }).length - length
  const least = (front + rear) * (1 + 1e-9)
  if (excess(least) > 0)
    throw new DomainError('links', drive.links, 'must be enough to go about both sprockets')
  return bracketedRoot(excess, least, length)
}

/**
 * What a chain is longer than its taut way [m] when its lower run can be moved up and down by
 * `slack` in all [m] at the middle of a straight run [m], by hand: pulled into a triangle either
 * way. √(run² + slack²) − run. Refuses a run not above 0 and a slack below 0. Source: Pythagoras.
 */
export function chainExcess({ run, slack }: { run: number; slack: number }): number {
  const free = nonNegative('slack', slack)
  return (free * free) / (Math.hypot(positive('run', run), free) + run)
}

/**
 * How far the middle of a straight run [m] can be moved up and down in all [m], with so much chain
 * [m] more than its taut way: the inverse of `chainExcess`. 0 where the excess is 0 or below: the
 * chain is tight. Refuses a run not above 0. Source: Pythagoras.
 */
export function midRunSlack({ run, excess }: { run: number; excess: number }): number {
  const spare = Math.max(0, representable('excess', excess))
  return Math.sqrt(spare * (spare + 2 * positive('run', run)))
}

/**
 * Sag [m] at the middle of a run between level ends [m] that hangs by its own weight, with so much
 * chain [m] more: the parabola's first two terms, √(3·span·excess/8). Source: Beer and Johnston,
 * Statics, ch. 7.
 */
export function hangingSag({ span, excess }: { span: number; excess: number }): number {
  return Math.sqrt((3 * positive('span', span) * nonNegative('excess', excess)) / 8)
}
