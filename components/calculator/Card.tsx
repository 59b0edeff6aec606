import type { ComponentChildren, ComponentType, JSX } from 'preact'
import { useMemo, useState } from 'preact/hooks'
import type { Calculator } from '../../src/machine/calculator.ts'
import type { Remark } from '../../src/machine/remark.ts'
import type { Input } from '../../src/machine/statement.ts'
import { isAsked } from '../../src/machine/evaluate.ts'
import { useSettled } from '../../src/drawing/useSettled.ts'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import { Acts } from './Acts.tsx'
import { Field } from './Field.tsx'
import { OwnBike } from './OwnBike.tsx'
import { Remarks } from './Remarks.tsx'
import { Results } from './Results.tsx'
import { ResultTables } from './ResultTables.tsx'
import { leadTexts } from './resultText.ts'
import { Share } from './Share.tsx'
import { Stage } from './Stage.tsx'
import { useCalculator } from './useCalculator.ts'
import type { CalculatorState, CardProps } from './useCalculator.ts'
import { useRemarks } from './useRemarks.ts'

/** How long values stand still before a screen reader is told the results [ms]: a moving slider must not flood it. */
const SETTLED = 600

interface Props extends CardProps {
  definition: Calculator
  Figure: ComponentType<LooseFigureProps> | null
  /** what the remarks say on the values that the page opens with */
  told: readonly Remark[]
  /** assumptions and limits, from the page */
  children?: ComponentChildren
}

/** One card per calculator: drawing, controls, results, the sentence that reads them, and what one can do with it. */
export function Card({ definition, Figure, told, children, ...props }: Props): JSX.Element {
  const { mode, prefix, only } = props
  const state = useCalculator(definition, props)
  const limits = useMemo(() => <Limits>{children}</Limits>, [children])
  const remarks = useRemarks(state, told)
  const [hand, setHand] = useState<string | null>(null)
  const takeHand = (event: Event): void => {
    const field = (event.target as Element).closest<HTMLElement>('[data-field]')
    if (field) setHand(field.dataset['field']!)
  }
  return (
    <form
      class="sheet"
      data-calculator={definition.id}
      aria-label={definition.title}
      aria-busy={state.waiting || state.looking || undefined}
      data-waiting={state.waiting || undefined}
      data-looking={state.looking || undefined}
      onSubmit={(event) => event.preventDefault()}
      onKeyDown={(event) => undoByKey(event, state)}
      onFocusIn={takeHand}
      onPointerDown={takeHand}
      onPointerUp={state.endGesture}
      onKeyUp={state.endGesture}
      onChange={state.endGesture}
    >
      <div class="above">
        {definition.notice && <p class="notice">{definition.notice}</p>}
        <LinkProblems state={state} />
      </div>
      <div class="live">
        <Stage
          state={state}
          Figure={Figure}
          prefix={prefix}
          hand={hand}
          reading={remarks.find(({ kind }) => kind === 'reading')?.text ?? ''}
        />
        <Panel state={state} prefix={prefix} only={only} mode={mode} />
      </div>
      {!only && (
        <>
          <div class="after">
            <Remarks state={state} remarks={remarks} />
            <Share state={state} embed={mode === 'embed'} />
            {limits}
          </div>
          <ResultTables state={state} />
        </>
      )}
    </form>
  )
}

/** The rows of controls, what one can do with a change, and the change sheet. */
function Panel({
  state,
  prefix,
  only,
  mode,
}: Pick<Props, 'prefix' | 'only' | 'mode'> & { state: CalculatorState }): JSX.Element {
  const { refusal } = state.evaluation
  const leads = leadTexts(state)
  const announced = useSettled(leads.join('. '), { start: '', pause: SETTLED })
  return (
    <div class="panel">
      <Controls state={state} prefix={prefix} only={only} />
      <p class="hidden" role="status">
        {announced}
      </p>
      {refusal && (
        <p class="error" role="alert">
          {refusal}
        </p>
      )}
      <Stale state={state} />
      <Acts state={state} prefix={prefix} />
      {!only && mode !== 'embed' && <OwnBike state={state} />}
      {state.dropped && (
        <p class="note">
          A value is yours now, so the example’s “before” is gone. Hold these values as “before” to
          compare from here.
        </p>
      )}
      {!only && <Results state={state} />}
    </div>
  )
}

/** Ctrl+Z and Ctrl+Y, or with the command key, while the focus is in the card. */
function undoByKey(event: KeyboardEvent, { undo, redo }: CalculatorState): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return
  const key = event.key.toLowerCase()
  const step = key === 'y' || (key === 'z' && event.shiftKey) ? redo : key === 'z' ? undo : null
  if (step === null) return
  event.preventDefault()
  step()
}

function LinkProblems({ state }: { state: CalculatorState }): JSX.Element | null {
  if (state.linkProblems.length === 0) return null
  return (
    <ul class="link-problems error" role="alert">
      {state.linkProblems.map((problem) => (
        <li key={problem}>{problem}.</li>
      ))}
    </ul>
  )
}

/** While a field can't be read, results stay those of the last good value: say so. */
function Stale({ state }: { state: CalculatorState }): JSX.Element | null {
  const texts = Object.values(state.errors)
  if (texts.length === 0) return null
  return <p class="stale">{texts.join('. ')}. The results below are for the value before.</p>
}

function Controls({
  state,
  prefix,
  only,
}: Pick<Props, 'prefix' | 'only'> & { state: CalculatorState }): JSX.Element {
  const asked = Object.entries(state.definition.inputs).filter(
    ([id, input]) => isAsked(input, state.given) && (!only || only.includes(id)),
  )
  const fields = (more: boolean): JSX.Element[] =>
    asked
      .filter(([, input]) => (input.more === true) === more)
      .map(([id, input]: [string, Input]) => (
        <Field key={id} id={id} input={input} state={state} prefix={prefix} />
      ))
  const further = fields(true)
  const hasError = asked.some(
    ([id, input]) => input.more && (state.errors[id] ?? state.evaluation.problems[id]),
  )
  return (
    <div class="controls">
      {fields(false)}
      {further.length > 0 && (
        <details class="more" open={hasError || undefined}>
          <summary>More values</summary>
          {further}
        </details>
      )}
    </div>
  )
}

function Limits({ children }: { children: ComponentChildren }): JSX.Element {
  return (
    <details class="limits">
      <summary>What this assumes and leaves out</summary>
      {children}
    </details>
  )
}
