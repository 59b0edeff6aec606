import { NORMAL_95 } from './factors.ts'
import { above, below } from './state.ts'
import type { Restated } from './state.ts'

/** A tape is read three times, each within ±a, anywhere equally likely (a/√3); sag takes one of them whole and two by half; 1.959964 covers 95 %. */
const ofSag = (a: number): number => NORMAL_95 * Math.sqrt(1 + 1 / 4 + 1 / 4) * (a / Math.sqrt(3))

export const sag: Restated = {
  calculator: 'sag',
  rules: [
    {
      output: 'window',
      must(state) {
        const sunk = state.is('extended') - (state.is('settledDown') + state.is('settledUp')) / 2
        const open = ofSag(state.is('readingPlusMinus'))
        const share = (millimetres: number): number => (100 * millimetres) / state.is('travel')
        const [low, high] = [state.is('windowLow'), state.is('windowHigh')]
        // the ends belong to the window
        if (below(share(sunk + open), low)) return 'less'
        if (above(share(sunk - open), high)) return 'more'
        return below(share(sunk - open), low) || above(share(sunk + open), high) ? 'edge' : 'inside'
      },
    },
  ],
}
