import type { Complex } from '../../core/index.ts'

/** What a motion does, in words of what moves. `topple` is the weave before it swings: at walking pace it only falls. */
export type Motion = 'weave' | 'topple' | 'fall' | 'back'

export interface NamedMode {
  motion: Motion
  /** [1/s], above 0 it grows */
  growth: number
  /** [rad/s], 0 without a swing */
  swing: number
}

/**
 * Names the four eigenvalues [1/s, rad/s] of a bicycle by what moves: a pair that swings weaves; of those that do not, the quickest to die out is the front
 * steering itself back and the next the slow fall; two left over topple. Source: Meijaard et al. 2007, section 5 (castering, capsize, weave).
 */
export function nameModes(modes: readonly Complex[]): NamedMode[] {
  const swinging = modes
    .filter(({ im }) => im > 1e-9)
    .map(({ re, im }): NamedMode => ({ motion: 'weave', growth: re, swing: im }))
  const straight = modes.filter(({ im }) => Math.abs(im) <= 1e-9).sort((a, b) => a.re - b.re)
  const named = straight.map(({ re }, place): NamedMode => ({
    motion: place === 0 ? 'back' : place === 1 ? 'fall' : 'topple',
    growth: re,
    swing: 0,
  }))
  return [...swinging, ...named.reverse()]
}
