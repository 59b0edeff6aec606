import type { ComponentType, JSX } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { CHOSEN_EVENT, chosenBike } from '../../src/record/store/chosen.ts'
import type { CalculatorState } from './useCalculator.ts'

/** What a card does with the reader's bike. Its script is fetched once there is one, or a link brings one. */
export function OwnBike({ state }: { state: CalculatorState }): JSX.Element | null {
  const [Panel, setPanel] = useState<ComponentType<{ state: CalculatorState }> | null>(null)
  const [next, setNext] = useState<ComponentType<{ state: CalculatorState }> | null>(null)
  const sent = Object.values(state.given).some((value) => String(value).includes(';'))
  useEffect(() => {
    const load = (): void => {
      if (sent || chosenBike())
        void import('./OwnBikePanel.tsx').then((found) => setPanel(() => found.OwnBikePanel))
    }
    load()
    document.addEventListener(CHOSEN_EVENT, load)
    return () => document.removeEventListener(CHOSEN_EVENT, load)
  }, [sent])
  const Next = next
  return (
    <div class="own-bike needs-script">
      {Panel && <Panel state={state} />}
      {Next ? (
        <Next state={state} />
      ) : (
        <button
          type="button"
          class="plain"
          data-do="go-on"
          onClick={() => void import('./GoOn.tsx').then((found) => setNext(() => found.GoOn))}
        >
          Go on with these numbers
        </button>
      )}
    </div>
  )
}
