import { above, below } from './state.ts'
import type { Restated, State, Told } from './state.ts'

/** Pitch of the threads by name [mm]: what stands after the × (ISO 261). */
const pitchOf = (state: State): number =>
  state.chosen('thread') === 'measured'
    ? state.is('pitch')
    : Number(state.chosen('thread').split('x')[1])

export const forkStack: Restated = {
  calculator: 'fork-stack',
  rules: [
    {
      output: 'settings',
      column: 3,
      must(state) {
        const washers = state.table('washers').reduce((sum, [thickness]) => sum + thickness!, 0)
        const parts = state.is('springLength') + state.is('spacerLength') + washers
        const room = state.is('tubeDepth') - state.is('capReach')
        const solid = state.maybe('solidLength')
        return state.cells('settings').map(([turns]) => {
          const squeezed = parts + (turns as Told).value * pitchOf(state) - room
          // a spring that just fills its room is held; one squeezed just to its solid length too
          if (below(squeezed, 0)) return 'loose'
          const most = solid === undefined ? Infinity : state.is('springLength') - solid
          return above(squeezed, most) ? 'solid' : 'held'
        })
      },
    },
  ],
}
