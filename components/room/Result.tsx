import type { ComponentType, JSX } from 'preact'
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { fitLettering } from '../../src/drawing/fitLettering.ts'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import { FrontView } from '../../src/drawing/View.tsx'
import type { Staged } from '../../src/drawing/View.tsx'
import type { Calculator } from '../../src/machine/calculator.ts'
import { defaultsOf, evaluate } from '../../src/machine/evaluate.ts'
import type { Given } from '../../src/machine/given.ts'
import type { Exercise } from '../../src/machine/question.ts'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { createSay } from '../../src/units/say.ts'
import type { Say } from '../../src/units/say.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { toSI } from '../../src/units/units.ts'
import type { Shown } from './asked.ts'
import { leadOfRoom } from './leadOfRoom.ts'
import { sliderOf } from './slider.ts'

interface ResultProps {
  calculator: Calculator
  exercises: readonly Exercise[]
  Figure: ComponentType<LooseFigureProps>
  shown: Shown
  choice: UnitChoice
}

/** Height of lettering in a room’s drawing [px]: 28 px of a picture two metres wide are 20 minutes of arc from five metres. */
const LETTERING = [28, 0, 28] as const

/** The drawing and its one slider, with the first result. */
export function Result({ calculator, exercises, Figure, shown, choice }: ResultProps): JSX.Element {
  const id = useMemo(() => sliderOf(calculator, shown, exercises), [calculator, shown, exercises])
  const [given, setGiven] = useState<Given>({ ...defaultsOf(calculator), ...shown.given })
  const place = useRef<HTMLDivElement>(null)
  const say = useMemo(() => createSay(choice), [choice])
  const { now, before } = useMemo(
    () => evaluate(calculator, given, { bikes: shown.bikes, choice }, shown.held, say),
    [calculator, given, shown, choice, say],
  )
  const views = (Figure as Staged<LooseFigureProps>).views
  const [front, setFront] = useState(views?.[0]?.id ?? 'all')
  useLayoutEffect(() => {
    if (place.current) fitLettering(place.current, LETTERING)
  })
  return (
    <section class="room-result" aria-label="Result">
      <p class="room-lead" role="status">
        {now
          ? leadOfRoom(calculator, { now, before, say, asks: shown.asks })
          : 'These values don’t go together.'}
      </p>
      <div class="room-figure" ref={place} data-figure>
        <FrontView.Provider value={front}>
          {now && <Figure now={now} before={before} say={say} prefix="room-fig" />}
        </FrontView.Provider>
      </div>
      {views && views.length > 1 && (
        <div class="room-views" role="group" aria-label="Which drawing">
          {views.map((view) => (
            <button
              key={view.id}
              type="button"
              aria-pressed={front === view.id}
              onClick={() => setFront(view.id)}
            >
              {view.name}
            </button>
          ))}
        </div>
      )}
      {id !== null && (
        <Slider
          input={calculator.inputs[id] as QuantityInput}
          value={Number(given[id])}
          text={writtenInput(calculator.inputs[id] as QuantityInput, Number(given[id]), say)}
          set={(value) => setGiven({ ...given, [id]: value })}
        />
      )}
    </section>
  )
}

/** A value as its slider can set it: to the decimals of its step. */
function writtenInput({ unit, step }: QuantityInput, value: number, say: Say): string {
  const digits = /\.(\d+)/.exec(String(step))?.[1]?.length ?? 0
  return say.quantity(toSI(value, unit), unit, digits)
}

interface SliderProps {
  input: QuantityInput
  value: number
  text: string
  set(value: number): void
}

function Slider({ input, value, text, set }: SliderProps): JSX.Element {
  return (
    <label class="room-slider">
      <span>
        {input.label} <b>{text}</b>
      </span>
      <input
        type="range"
        min={input.range[0]}
        max={input.range[1]}
        step={input.step}
        value={value}
        aria-valuetext={text}
        onInput={(event) => set(Number(event.currentTarget.value))}
      />
    </label>
  )
}
