import { above, below } from './state.ts'
import type { Restated, State, Told } from './state.ts'

const travelOf = (state: State): number =>
  state.chosen('from') === 'invented' ? state.bike('bike').fork.travel : state.is('ownTravel')

export const chooseRate: Restated = {
  calculator: 'choose-rate',
  rules: [
    {
      output: 'rows',
      column: 8,
      must(state) {
        const travel = travelOf(state)
        return state.cells('rows').map((row) => {
          const [, preload, alone, , , left, bind, ride] = row.map((cell) => cell as Told | null)
          const share = (100 * alone!.value) / travel
          const missed: readonly (readonly [string, boolean])[] = [
            ['no-preload', preload === null],
            ['static-below', below(share, state.is('staticLow'))],
            ['static-above', above(share, state.is('staticHigh'))],
            ['bottoms', bottoms(row as (Told | null)[], travel)],
            // the worst stroke decides: the lower end of what is left
            ['reserve', below(left!.low, state.is('reserve'))],
            ['coil-bind', bind !== null && below(bind!.value, 0)],
            ['unused', above(left!.low, state.is('unused'))],
            ['little-preload', preload != null && below(preload.value, state.is('leastPreload'))],
            ['stiff', ride != null && above(ride.value, state.is('stiffest'))],
          ]
          return missed.flatMap(([code, holds]) => (holds ? [code] : [])).join(' ')
        })
      },
    },
  ],
}

/** On its stop by the settled dive: all the travel is used, or all that the coils leave. */
function bottoms([, , , braking, , , bind]: readonly (Told | null)[], travel: number): boolean {
  const last = Math.min(travel, travel + (bind?.value ?? 0))
  return !below(braking!.value, last)
}
