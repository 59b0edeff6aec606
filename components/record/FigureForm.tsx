import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import type { FigureDefinition } from '../../src/bikes/figure.ts'
import { readQuantity, rangeText, fieldSymbol } from '../../src/machine/fields.ts'
import type { QuantityInput } from '../../src/machine/statement.ts'
import { SOURCES } from '../../src/record/records.ts'
import type { Figure, Source } from '../../src/record/records.ts'
import { isWorkedOut } from '../../src/record/workedOut.ts'
import type { WorkedFigure } from '../../src/record/workedOut.ts'
import { readNumber } from '../../src/units/number.ts'
import type { Quantity } from '../../src/units/units.ts'
import { convert, units } from '../../src/units/units.ts'
import { displayUnit } from '../../src/units/choice.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import type { Say } from '../../src/units/say.ts'
import { today } from './data.ts'
import { keepFigure } from './keepFigure.ts'
import type { BikeProps } from './props.ts'

/** The figure as a field of a calculator would ask for it. */
const inputOf = ({ label, unit, range, digits }: FigureDefinition): QuantityInput => ({
  kind: 'quantity',
  label,
  quantity: units[unit].quantity as Quantity,
  unit,
  range,
  step: 10 ** -digits,
})

export interface FigureProps extends BikeProps {
  definition: FigureDefinition
  figure: Figure | WorkedFigure | undefined
  say: Say
}

const SOURCE_TEXT: Record<Source, string> = {
  measured: 'measured',
  manual: 'from the manual',
  label: 'on a label',
  guessed: 'guessed',
}

/** What stands in the form, as it was typed. */
interface Typed {
  value: string
  within: string
  from: Source
  date: string
}

/** The form read as a figure, or what is wrong with it. */
function readForm(
  definition: FigureDefinition,
  { value, within, from, date }: Typed,
  choice: UnitChoice,
): { figure: Figure } | { problem: string } {
  const reading = readQuantity(inputOf(definition), value, choice)
  if ('problem' in reading) return reading
  const half = within.trim() === '' ? null : readNumber(within)
  if (half !== null && ('problem' in half || half.value < 0))
    return {
      problem: `±: “${within.trim()}” is not a number above 0. Leave it empty if nobody has said`,
    }
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date)) return { problem: 'Choose the day from which you know it' }
  const shown = displayUnit(definition.unit, choice)
  const plusMinus = half === null ? {} : { plusMinus: convert(half.value, shown, definition.unit) }
  return { figure: { value: reading.value as number, ...plusMinus, from, date } }
}

/** A figure written by hand, with its ±, where it comes from, and the day. */
export function FigureForm(props: FigureProps & { done(): void }): JSX.Element {
  const { definition, figure, say, done } = props
  const shown = displayUnit(definition.unit, say.choice)
  const inField = (value: number | undefined): string =>
    value === undefined ? '' : String(Number(convert(value, definition.unit, shown).toPrecision(6)))
  const old = figure && !isWorkedOut(figure) ? figure : undefined
  const [typed, setTyped] = useState<Typed>({
    value: inField(old?.value),
    within: inField(old?.plusMinus),
    from: old?.from ?? 'measured',
    date: today(),
  })
  const [problem, setProblem] = useState('')
  const save = async (): Promise<void> => {
    const reading = readForm(definition, typed, say.choice)
    if ('problem' in reading) return setProblem(reading.problem)
    await keepFigure(props, definition, reading.figure)
    done()
  }
  const name = `figure-${definition.id.replace('.', '-')}`
  return (
    <form
      class="figure-form"
      onSubmit={(event) => {
        event.preventDefault()
        void save()
      }}
    >
      <Fields
        {...props}
        typed={typed}
        describedBy={`${name}-problem ${name}-range`}
        wrong={problem !== ''}
        type={(change) => setTyped((now) => ({ ...now, ...change }))}
      />
      <p class="hint" id={`${name}-range`}>
        {rangeText(inputOf(definition), say.choice)}
      </p>
      <p class="error" id={`${name}-problem`} hidden={problem === ''}>
        {problem}
      </p>
      <p class="act">
        <button type="submit" data-do="save-figure">
          Write it down
        </button>
        <button type="button" onClick={done}>
          Leave it
        </button>
        {old && (
          <button type="button" onClick={() => void keepFigure(props, definition, null).then(done)}>
            Unknown again
          </button>
        )}
      </p>
    </form>
  )
}

interface FieldsProps extends FigureProps {
  typed: Typed
  describedBy: string
  wrong: boolean
  type(change: Partial<Typed>): void
}

function Fields({ definition, say, typed, describedBy, wrong, type }: FieldsProps): JSX.Element {
  const symbol = fieldSymbol(inputOf(definition), say.choice)
  return (
    <>
      <label>
        Value{symbol && ` (${symbol})`}
        <input
          type="text"
          name="value"
          inputMode="decimal"
          autocomplete="off"
          autofocus
          value={typed.value}
          aria-invalid={wrong ? 'true' : undefined}
          aria-describedby={describedBy}
          onInput={(event) => type({ value: event.currentTarget.value })}
        />
      </label>
      <label>
        ±
        <input
          type="text"
          name="plusMinus"
          inputMode="decimal"
          autocomplete="off"
          placeholder="not said"
          value={typed.within}
          onInput={(event) => type({ within: event.currentTarget.value })}
        />
      </label>
      <label>
        How you know it
        <select
          name="from"
          onChange={(event) => type({ from: event.currentTarget.value as Source })}
        >
          {SOURCES.map((source) => (
            <option key={source} value={source} selected={source === typed.from}>
              {SOURCE_TEXT[source]}
            </option>
          ))}
        </select>
      </label>
      <label>
        Day
        <input
          type="date"
          name="date"
          value={typed.date}
          onInput={(event) => type({ date: event.currentTarget.value })}
        />
      </label>
    </>
  )
}
