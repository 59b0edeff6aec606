import { NORMAL_95, STUDENT_95_OF_4 } from './factors.ts'
import { above } from './state.ts'
import type { Restated, State } from './state.ts'

/** Four readings, each by half, each within ±a, anywhere equally likely: together as much as one. */
const ofReadings = (state: State): number =>
  (NORMAL_95 * state.is('readingPlusMinus')) / Math.sqrt(3)

/** Two means of three repeats; the range of three is 1.693 deviations on average. */
const ofRepeats = (state: State): number =>
  STUDENT_95_OF_4 * (state.is('spread') / 1.693) * Math.sqrt(1 / 3 + 1 / 3)

export const marks: Restated = {
  calculator: 'marks',
  rules: [
    {
      output: 'onMark',
      must(state) {
        const moved =
          (state.is('afterLeft') + state.is('afterRight')) / 2 -
          (state.is('beforeLeft') + state.is('beforeRight')) / 2
        const real = moved > 0 ? 'higher' : 'lower'
        const size = Math.abs(moved)
        if (state.chosen('settled') !== 'different')
          return above(size, Math.hypot(ofReadings(state), ofRepeats(state))) ? real : 'on-mark'
        // the band is two readings itself; exact readings leave no edge
        const band = state.is('frictionBand')
        const ofBand = (NORMAL_95 * Math.SQRT2 * state.is('readingPlusMinus')) / Math.sqrt(3)
        const open = Math.hypot(ofReadings(state), ofBand)
        if (above(size - open, band)) return real
        return above(size + open, band) ? 'edge' : 'friction'
      },
    },
  ],
}
