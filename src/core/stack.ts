import { finite, list, nonNegative, positive, record, representable } from './domain.ts'

/** What fills a fork tube from the spring's seat to the cap, at full extension. All lengths in metres. */
export interface StackParts {
  /** from where the cap seats to where the spring sits [m] */
  tubeDepth: number
  /** how far the cap and its adjuster, fully out, reach below the cap's seat [m]; negative if the stack rises into the cap */
  capReach: number
  /** free length of the spring [m] */
  springLength: number
  /** thickness of each washer [m] */
  washers?: readonly number[]
}

/** One setting of the adjuster: what it adds, the preload it gives, and whether the spring hangs loose there. */
export interface StackSetting {
  setting: number
  preload: number
  loose: boolean
}

function filled({ tubeDepth, capReach, springLength, washers = [] }: StackParts): number {
  const thickness = list('washers', washers).reduce(
    (sum, washer) => sum + nonNegative('washers', washer),
    0,
  )
  return (
    positive('springLength', springLength) +
    thickness +
    finite('capReach', capReach) -
    positive('tubeDepth', tubeDepth)
  )
}

/**
 * Preload [m] at each setting [m, how far the adjuster is wound in] of a fork's stack: spring + spacer + washers + cap reach + setting − tube depth.
 * Below 0 the spring is loose at full extension: a result, not an error. Refuses lengths below 0; a setting and a cap reach may have either sign.
 */
export function forkStack(
  stack: StackParts & { spacerLength: number; settings: readonly number[] },
): StackSetting[] {
  const fixed = filled(record('stack', stack)) + nonNegative('spacerLength', stack.spacerLength)
  return list('settings', stack.settings).map((setting) => {
    const preload = representable('preload', fixed + finite('settings', setting))
    return { setting, preload, loose: preload < 0 }
  })
}

/**
 * Spacer length [m] that gives the wanted preload [m] at a setting [m]. Below 0 means that even without a spacer the stack is too long by that much.
 * Refuses what `forkStack` refuses.
 */
export function spacerFor(stack: StackParts & { setting: number; preload: number }): number {
  return representable(
    'spacerLength',
    finite('preload', stack.preload) -
      finite('setting', stack.setting) -
      filled(record('stack', stack)),
  )
}

/** Travel [m] of a screw along its axis after a number of turns (either sign) of a thread with this pitch [m]; refuses a pitch of 0 or below. Source: ISO 261. */
export function turnsToTravel(screw: { turns: number; pitch: number }): number {
  record('screw', screw)
  return representable('travel', finite('turns', screw.turns) * positive('pitch', screw.pitch))
}

/**
 * Pitches [m] of common ISO metric threads, coarse without a suffix, fine with it. One turn travels one pitch. Source: ISO 261.
 */
export const METRIC_THREAD_PITCHES: Readonly<Record<string, number>> = {
  M3: 0.5e-3,
  M4: 0.7e-3,
  M5: 0.8e-3,
  M6: 1e-3,
  M8: 1.25e-3,
  M8x1: 1e-3,
  M10: 1.5e-3,
  'M10x1.25': 1.25e-3,
  M10x1: 1e-3,
  M12: 1.75e-3,
  'M12x1.5': 1.5e-3,
  'M12x1.25': 1.25e-3,
  M12x1: 1e-3,
  M14: 2e-3,
  'M14x1.5': 1.5e-3,
  M20: 2.5e-3,
  'M20x1.5': 1.5e-3,
  M20x1: 1e-3,
}
