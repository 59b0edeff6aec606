import { above } from './state.ts'
import type { Restated, State } from './state.ts'

/** What a force in one leg squeezes off all lengths of its spring [mm], each until its coils touch. */
const squeezed = (state: State, force: number): number =>
  state.table('groups').reduce((sum, [rate, closes]) => sum + Math.min(closes!, force / rate!), 0)

export const progressiveSpring: Restated = {
  calculator: 'progressive-spring',
  rules: [
    {
      output: 'closings',
      column: 3,
      must: (state) =>
        state
          .table('groups')
          .map(([rate, closes]) => rate! * closes!)
          .sort((a, b) => a - b)
          .map((force) => {
            const travel = squeezed(state, force) - state.is('preload')
            if (!above(travel, 0)) return 'preload'
            if (above(travel, state.is('travel'))) return 'never'
            // two legs carry the load
            const carries = (load: string): boolean => !above(2 * force, state.is(load))
            if (carries('staticLoad')) return 'bike'
            if (carries('riderLoad')) return 'rider'
            return carries('brakingLoad') ? 'braking' : 'deeper'
          }),
    },
  ],
}
