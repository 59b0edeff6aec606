import { finite, nonNegative, oneOf, positive, record } from './domain.ts'

/**
 * A road that is flat up to the wheel's place at time 0. `step`: rises by `height` [m] over `length` [m] along half a cosine (length 0: a sharp
 * edge, met at time 0). `bump`: one full cosine hump. `waves`: humps without end. `height` is from trough to crest, below 0 for a drop or a dip.
 * Travelled at `speed` [m/s]; at 0 the wheel stays where the road is flat.
 */
export interface Profile {
  kind: 'step' | 'bump' | 'waves'
  height: number
  length: number
  speed: number
}

/** A road against time: its height [m], when its formula changes [s], and the time in which it makes one rise or hump [s]. */
export interface Road {
  height(time: number): number
  changes: number[]
  period: number
}

/** The road that a profile gives; refuses lengths and speeds below 0, and a bump or waves of length 0. */
export function roadOf(profile: Profile): Road {
  const kind = oneOf('profile.kind', record('profile', profile).kind, ['step', 'bump', 'waves'])
  const height = finite('profile.height', profile.height)
  const length =
    kind === 'step'
      ? nonNegative('profile.length', profile.length)
      : positive('profile.length', profile.length)
  const speed = nonNegative('profile.speed', profile.speed)
  if (speed === 0 || height === 0) return { height: () => 0, changes: [], period: Infinity }
  const period = length / speed
  if (period === 0) return { height: () => height, changes: [], period: Infinity }
  const angle = (kind === 'step' ? Math.PI / 2 : Math.PI) / period
  // Asked for one time twice in a row: at a step's end, and where a sample is taken.
  let asked = NaN
  let found = 0
  // sin² keeps its digits where 1 − cos loses them.
  const rise = (time: number): number => {
    if (time !== asked) {
      asked = time
      found = height * Math.sin(angle * time) ** 2
    }
    return found
  }
  if (kind === 'waves') return { height: rise, changes: [], period }
  const after = kind === 'step' ? height : 0
  return { height: (time) => (time < period ? rise(time) : after), changes: [period], period }
}
