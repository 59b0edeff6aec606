import type { Restated } from './state.ts'

export const springTest: Restated = {
  calculator: 'spring-test',
  rules: [
    {
      output: 'kind',
      // through two readings any line goes; a spring of two rates has three figures of its own, and the choice between both takes two readings more
      must(state) {
        const count = state.table('rows').length
        if (state.chosen('fit') === 'line') return count === 2 ? 'one-slope' : 'one-rate'
        if (state.told('closesAt') !== null) return 'two-rates'
        return count <= 4 ? 'too-few' : 'no-reason'
      },
    },
  ],
}
