import type { JSX } from 'preact'
import { useRef } from 'preact/hooks'
import type { Handle } from '../../src/drawing/handles.ts'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { tidy } from '../../src/machine/fields.ts'
import { displayUnit } from '../../src/units/choice.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { convert, fromSI, toSI } from '../../src/units/units.ts'
import { Range } from './Range.tsx'
import { sliderScale } from './steps.ts'
import type { CalculatorState } from './useCalculator.ts'

/** A handle as the stage holds it. */
export interface Held {
  input: QuantityInput
  /** the input's value, in its definition's unit */
  value: number
  /** the middle of the grip on the stage [px] */
  x: number
  y: number
  axis: 'x' | 'y'
  /** how far the part moves as the input grows [px per SI unit] */
  pull: number
}

interface HandProps {
  handle: Handle<LooseFigureProps>
  held: Held
  state: CalculatorState
  /** it is taken in hand, or let go */
  take(taken: boolean): void
}

type Pointed = JSX.TargetedPointerEvent<HTMLElement>
type PointerHandlers = Pick<
  JSX.DOMAttributes<HTMLElement>,
  'onPointerDown' | 'onPointerMove' | 'onPointerUp' | 'onPointerCancel' | 'onLostPointerCapture'
>

/** The stop of the slider that is nearest to a value in SI; in the definition's unit, as the slider itself gives it. */
function nearestStop(input: QuantityInput, si: number, choice: UnitChoice): number {
  const unit = displayUnit(input.unit, choice)
  const { low, high, step } = sliderScale(input, choice)
  const places = Math.round((fromSI(si, unit) - low) / step)
  const last = Math.floor((high - low) / step + 1e-9)
  const stop = low + Math.min(last, Math.max(0, places)) * step
  return tidy(convert(tidy(stop), unit, input.unit))
}

/** What a drag does: the part follows the pointer by as much as the pointer has moved since it took hold, on the stops of the row's slider. */
function useDrag({
  held: { input, value, axis, pull },
  handle,
  state,
  take,
}: HandProps): PointerHandlers {
  const drag = useRef<{ pointer: number; at: number; si: number; pull: number } | null>(null)
  const along = (event: Pointed): number => (axis === 'x' ? event.clientX : event.clientY)
  const end = (): void => {
    if (drag.current === null) return
    drag.current = null
    state.endGesture()
    take(false)
  }
  return {
    onPointerDown(event) {
      if (event.button !== 0 || drag.current !== null) return
      event.preventDefault()
      event.currentTarget.setPointerCapture(event.pointerId)
      event.currentTarget.querySelector('input')?.focus({ preventScroll: true })
      const si = toSI(value, input.unit)
      drag.current = { pointer: event.pointerId, at: along(event), si, pull }
      take(true)
    },
    onPointerMove(event) {
      const from = drag.current
      if (from === null || event.pointerId !== from.pointer) return
      const moved = along(event) - from.at
      const next = nearestStop(input, from.si + moved / from.pull, state.choice)
      if (moved !== 0 && next !== state.given[handle.input]) state.set(handle.input, next)
    },
    onPointerUp: end,
    onPointerCancel: end,
    onLostPointerCapture: end,
  }
}

/** One handle: a grip beside its part, with a native slider within, which keys and screen readers move. */
export function Hand(props: HandProps): JSX.Element {
  const { handle, held, state } = props
  const { side, input: id } = handle
  const stay = (event: Event): void => event.preventDefault()
  return (
    <div
      class={`hand ${side} along-${held.axis}`}
      data-handle={id}
      style={{ left: `${held.x.toFixed(1)}px`, top: `${held.y.toFixed(1)}px` }}
      onMouseDown={stay}
      onTouchStart={stay}
      {...useDrag(props)}
    >
      <span class="lead" />
      <span class="grip" />
      <Range
        id={id}
        input={held.input}
        state={state}
        value={held.value}
        label={`${held.input.label}, on the drawing`}
      />
    </div>
  )
}
