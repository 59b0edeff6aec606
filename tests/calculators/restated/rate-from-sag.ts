import { above } from './state.ts'
import type { Restated } from './state.ts'

export const rateFromSag: Restated = {
  calculator: 'rate-from-sag',
  rules: [
    {
      output: 'verdict',
      ofRange: true,
      // springs a step apart: only one lies within the ± where that is half a step or less
      must(state) {
        const leg = state.told('springPerLeg') ?? state.told('perLeg')!
        if (above(leg.high - leg.low, state.is('step'))) return 'not-apart'
        return state.chosen('gas') === 'none' ? 'air-first' : 'apart'
      },
    },
  ],
}
