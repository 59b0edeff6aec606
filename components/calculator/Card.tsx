import type { ComponentChildren, ComponentType, JSX } from 'preact'
import { useMemo, useRef } from 'preact/hooks'
import type { Calculator, Input, Remark } from '../../src/calculators/define.ts'
import { isAsked } from '../../src/calculators/evaluate.ts'
import { useFollowed } from '../figures/kit/useFollowed.ts'
import { useSettled } from '../figures/kit/useSettled.ts'
import type { FigureProps } from '../figures/props.ts'
import { Field } from './Field.tsx'
import { Remarks } from './Remarks.tsx'
import { leadTexts, Results, ResultTables } from './Results.tsx'
import { Share } from './Share.tsx'
import { useCalculator } from './useCalculator.ts'
import type { CalculatorState, CardProps } from './useCalculator.ts'

/** How long values stand still before a screen reader is told the results [ms]: a moving slider must not flood it. */
const SETTLED = 600

interface Props extends CardProps {
  definition: Calculator
  Figure: ComponentType<FigureProps<unknown>> | null
  /** what the remarks say on the values that the page opens with */
  told: readonly Remark[]
  /** assumptions and limits, from the page */
  children?: ComponentChildren
}

/** One card per calculator: drawing, controls, results, the sentence that reads them, and what one can do with it. */
export function Card({ definition, Figure, told, children, ...props }: Props): JSX.Element {
  const { mode, prefix } = props
  const state = useCalculator(definition, props)
  const latest = useRef(state)
  latest.current = state
  const { refusal } = state.evaluation
  const leads = leadTexts(state)
  const announced = useSettled(leads.join('. '), { start: '', pause: SETTLED })
  const held = state.held !== null
  const share = useMemo(() => <Share latest={latest} held={held} embed={mode === 'embed'} />, [held, mode])
  const limits = useMemo(() => <Limits>{children}</Limits>, [children])
  return (
    <form class="sheet" data-calculator={definition.id} aria-label={definition.title} onSubmit={(event) => event.preventDefault()}>
      {definition.notice && <p class="notice">{definition.notice}</p>}
      <LinkProblems state={state} />
      <Drawing state={state} Figure={Figure} prefix={prefix} />
      <div class="panel">
        <Controls state={state} prefix={prefix} />
        {leads[0] && (
          <p class="lead-line" aria-hidden="true">
            {leads[0]}
          </p>
        )}
        <p class="hidden" role="status">
          {announced}
        </p>
        {refusal && (
          <p class="error" role="alert">
            {refusal}
          </p>
        )}
        <Stale state={state} />
        <Results state={state} />
        <Remarks state={state} told={told} />
        {share}
        {limits}
      </div>
      <ResultTables state={state} />
    </form>
  )
}

function Drawing({ state, Figure, prefix }: Pick<Props, 'Figure' | 'prefix'> & { state: CalculatorState }): JSX.Element {
  const place = useRef<HTMLDivElement>(null)
  const { now, before } = useFollowed(state.evaluation, place)
  const drawn = useMemo(
    () =>
      now && Figure ? (
        <Figure now={now as never} before={before as never} say={state.say} prefix={`${prefix}-fig`} />
      ) : (
        <p class="no-picture">No drawing while the values can’t be computed.</p>
      ),
    [now, before],
  )
  return (
    <div class="draw" ref={place}>
      {drawn}
    </div>
  )
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

function Controls({ state, prefix }: { state: CalculatorState; prefix: string }): JSX.Element {
  const asked = Object.entries(state.definition.inputs).filter(([, input]) => isAsked(input, state.given))
  const fields = (more: boolean): JSX.Element[] =>
    asked
      .filter(([, input]) => (input.more === true) === more)
      .map(([id, input]: [string, Input]) => <Field key={id} id={id} input={input} state={state} prefix={prefix} />)
  const further = fields(true)
  const hasError = asked.some(([id, input]) => input.more && (state.errors[id] ?? state.evaluation.problems[id]))
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
