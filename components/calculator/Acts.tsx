import type { JSX } from 'preact'
import type { CalculatorState } from './useCalculator.ts'

/** What one can do with a change: take it back, keep it to compare with, see it happen. */
export function Acts({ state, prefix }: { state: CalculatorState; prefix: string }): JSX.Element {
  const forget = (): void => {
    state.release()
    state.focus(`${prefix}-hold`)
  }
  return (
    <div class="act acts needs-script">
      <button
        type="button"
        class="sign"
        data-do="undo"
        aria-label="Undo"
        title="Undo"
        aria-disabled={state.undo === null}
        onClick={() => state.undo?.()}
      >
        ↶
      </button>
      <button
        type="button"
        class="sign"
        data-do="redo"
        aria-label="Redo"
        title="Redo"
        aria-disabled={state.redo === null}
        onClick={() => state.redo?.()}
      >
        ↷
      </button>
      <button
        type="button"
        data-do="play"
        aria-disabled={state.play === null}
        title="From before to now, once"
        onClick={() => state.play?.()}
      >
        Play once
      </button>
      <button type="button" id={`${prefix}-hold`} data-do="hold" onClick={state.hold}>
        Hold as “before”
      </button>
      {state.held && (
        <button type="button" data-do="forget" onClick={forget}>
          Forget “before”
        </button>
      )}
      <button type="button" data-do="reset" onClick={state.reset}>
        Reset
      </button>
    </div>
  )
}
