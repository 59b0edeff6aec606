import { below } from './state.ts'
import type { Restated, State } from './state.ts'

/** Where an end stands: on a stop only where its share of the travel is at an end and a force is left over for the stop, which no number of the card shows. */
function against(state: State, end: 'front' | 'rear'): string {
  const share = state.told(`${end}TravelShare`)!.value
  if (!below(share, 100)) return 'bottomed'
  return share <= 0 ? 'extended' : 'none'
}

export const stance: Restated = {
  calculator: 'stance',
  rules: [
    { output: 'frontStop', must: (state) => against(state, 'front') },
    { output: 'rearStop', must: (state) => against(state, 'rear') },
  ],
}
