import { below } from './state.ts'
import type { Restated } from './state.ts'

export const rearRate: Restated = {
  calculator: 'rear-rate',
  rules: [
    {
      output: 'stands',
      // the sag ends at the stops: where it lies on one, by the reading itself or by an end of its ±
      must(state) {
        const { low, value, high } = state.told('riderSag')!
        const travel = state.is('travel')
        if (!below(value, travel)) return 'bottomed'
        if (value <= 0) return 'topped-out'
        if (!below(high, travel)) return 'may-bottom'
        return low <= 0 ? 'may-top-out' : 'between'
      },
    },
  ],
}
