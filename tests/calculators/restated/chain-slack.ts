import type { Restated } from './state.ts'

export const chainSlack: Restated = {
  calculator: 'chain-slack',
  rules: [
    {
      output: 'stands',
      // no slack by the reading itself counts as none, whatever the ± may leave: that is the safe side
      must(state) {
        const { low, value } = state.told('tightest')!
        if (low > 0) return 'slack'
        return value > 0 ? 'may-tighten' : 'tight'
      },
    },
  ],
}
