import { above, below } from './state.ts'
import type { Restated, State } from './state.ts'

/** Areas of the roadster's tube (43 mm outside) and bore (38 mm) [mm²]; 56 cm³ of spring, spacer and cap stand in the bore, as the card's assumptions say. */
const TUBE = (Math.PI / 4) * 43 ** 2
const BORE = (Math.PI / 4) * 38 ** 2
const IN_THE_BORE = 56e3

/** Travel at which oil fills the leg [mm]: the air of the collapsed leg, as a column of the tube's area, above the stop, or below it where there is too little. */
function fullOfOil(state: State): number {
  if (state.chosen('gas') === 'none') return Infinity
  return state.is('travel') + (BORE * state.is('airHeight') - IN_THE_BORE) / TUBE
}

/** What both springs push with at full extension, less the top-out spring against them [N]. */
function firstForce(state: State): number {
  const springs = 2 * state.is('rate') * state.is('preload')
  if (state.chosen('topOut') === 'none') return springs
  const length = Math.min(state.is('topOutLength'), state.is('travel'))
  return springs - state.is('topOutRate') * length
}

export const preloadVersusRate: Restated = {
  calculator: 'preload-versus-rate',
  rules: [
    {
      output: 'where',
      must(state) {
        const used = state.told('travelUsed')!.value
        const lock = fullOfOil(state)
        // a load that the first force just carries leaves it there
        if (!above(state.is('load'), Math.max(0, firstForce(state)))) return 'top-stop'
        // over the last tenth before oil fills a leg the air is ten times as stiff as at the start
        if (!above(lock, state.is('travel'))) {
          if (above(used, 0.9 * lock)) return 'oil-stop'
        } else if (!below(used, state.is('travel'))) return 'full-travel'
        const pushed = state.chosen('topOut') === 'fitted' && below(used, state.is('topOutLength'))
        return pushed ? 'top-out' : 'between'
      },
    },
  ],
}
