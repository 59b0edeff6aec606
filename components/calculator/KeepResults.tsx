import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import { keptFrom } from '../../src/bikes/figures.ts'
import type { FigureDefinition } from '../../src/bikes/figure.ts'
import type { Cell } from '../../src/machine/cells.ts'
import type { BikeRecord, Figure } from '../../src/record/records.ts'
import { bikeIn, changeRecords, undoLast } from '../../src/record/store/bookStore.ts'
import { isInterval } from '../../src/units/interval.ts'
import type { Say } from '../../src/units/say.ts'
import { fromSI, toSI, units } from '../../src/units/units.ts'
import { sourceText } from './bikeFill.ts'
import type { CalculatorState } from './useCalculator.ts'

const tidy = (value: number): number => Number(value.toPrecision(6))

/** A result as a figure; null where it is a range without a middle, or out of what the figure can be. */
function figureFrom(
  cell: Cell | undefined,
  { unit, range }: FigureDefinition,
  of: string,
): Figure | null {
  const middle = typeof cell === 'number' ? cell : isInterval(cell) ? cell.value : undefined
  if (middle === undefined) return null
  const value = tidy(fromSI(middle, unit))
  if (value < range[0] || value > range[1]) return null
  const half = isInterval(cell) ? (cell.high - cell.low) / 2 / units[unit].factor : 0
  const date = new Date().toISOString().slice(0, 10)
  return { value, ...(half > 0 ? { plusMinus: tidy(half) } : {}), from: 'measured', date, of }
}

interface Props {
  state: CalculatorState
  bike: BikeRecord
}

/** Whether any value in sight is not the example's: an example's result is nobody's figure. */
const isReaders = ({ given, origins }: CalculatorState): boolean =>
  Object.keys(given).some((id) => origins[id] !== 'example')

interface Offer {
  of: FigureDefinition
  figure: Figure
}

/** The results in sight that are figures of a bike. */
function offersOf({ definition, evaluation, given }: CalculatorState): Offer[] {
  const output = evaluation.now?.output
  if (!output) return []
  return keptFrom(definition.id).flatMap(({ output: id, when, figure: of }) => {
    const fits = Object.entries(when).every(([input, value]) => given[input] === value)
    const figure = fits ? figureFrom(output[id] as Cell, of, `calculator ${definition.id}`) : null
    return figure ? [{ of, figure }] : []
  })
}

const text = (say: Say, { unit, digits }: FigureDefinition, { value, plusMinus }: Figure): string =>
  `${say.quantity(toSI(value, unit), unit, digits)}${plusMinus === undefined ? '' : ` ± ${say.number(toSI(plusMinus, unit), unit, Math.max(1, digits))}`}`

const lower = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1)

async function keep({ state, bike }: Props, { of, figure }: Offer): Promise<string> {
  const what = `${bike.name}: ${lower(of.label)} kept from “${state.definition.title}”`
  const kept = await changeRecords({ what }, async (shelf) => {
    const now = await bikeIn(shelf, bike.id)
    if (!now) return []
    const figures = { ...now.figures, [of.id]: figure }
    return [{ store: 'bikes', id: bike.id, record: { ...now, figures } }]
  })
  return kept
    ? `Kept: ${lower(of.label)}, ${text(state.say, of, figure)}.`
    : 'It could not be kept: the browser’s store is full.'
}

/** Takes results back to the bike, one tap each; what would be replaced is said on the button. */
export function KeepResults(props: Props): JSX.Element | null {
  const { state, bike } = props
  const [note, setNote] = useState('')
  const offers = isReaders(state) ? offersOf(state) : []
  if (offers.length === 0) return null
  return (
    <div class="keep-results">
      {offers.map((offer) => {
        const { of, figure } = offer
        const old = Object.hasOwn(bike.figures, of.id) ? bike.figures[of.id] : undefined
        return (
          <button
            key={of.id}
            type="button"
            class="plain"
            data-do="keep"
            data-figure={of.id}
            onClick={() => void keep(props, offer).then(setNote)}
          >
            Keep {text(state.say, of, figure)} as my bike’s {lower(of.label)}
            {old && `, in place of ${text(state.say, of, old)} (${sourceText(old)})`}
          </button>
        )
      })}
      <p class="note" role="status">
        {note}{' '}
        {note.startsWith('Kept') && (
          <button
            type="button"
            class="plain"
            data-do="undo-keep"
            onClick={() => void undoLast().then((what) => setNote(what ? 'Taken back.' : ''))}
          >
            Take it back
          </button>
        )}
      </p>
    </div>
  )
}
