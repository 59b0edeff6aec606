import type { Restated } from './state.ts'

const CHANGES = [
  'forkPreloadChange',
  'tubeRaise',
  'forkRate',
  'oilHeightChange',
  'rearPreloadChange',
  'rearRate',
  'shockLengthChange',
]

export const findChange: Restated = {
  calculator: 'find-change',
  rules: [
    {
      output: 'verdict',
      // ways are counted where they meet every aim; the nearest changes something; a bike that is there, or that nothing brings nearer, has no change to show
      must(state) {
        if (state.told('ways')!.value > 0) return 'ways'
        return CHANGES.some((id) => state.told(id) !== null) ? 'nearest' : 'there or none'
      },
    },
  ],
}
