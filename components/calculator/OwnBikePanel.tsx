import type { JSX } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { FIGURES } from '../../src/bikes/figures.ts'
import { standInFigures } from '../../src/bikes/figuresFor.ts'
import { bikeCode } from '../../src/bikes/ownBike.ts'
import type { BikeSheet, BikeSheets } from '../../src/bikes/sheet.ts'
import { isAsked } from '../../src/machine/evaluate.ts'
import { UNKNOWN } from '../../src/machine/given.ts'
import type { BikeRecord } from '../../src/record/records.ts'
import { loadWhole } from '../../src/record/store/bookStore.ts'
import { onBookChange } from '../../src/record/store/keeper.ts'
import { bikeInputOf, fillFrom, ownFigures, standInName, UNMEASURED } from './bikeFill.ts'
import { KeepResults } from './KeepResults.tsx'
import { SentBike } from './SentBike.tsx'
import { loadStandIns } from './standIns.ts'
import type { CalculatorState } from './useCalculator.ts'

interface Book {
  bikes: readonly BikeRecord[]
  chosen: BikeRecord | null
  standIns: BikeSheets
}

/** Reads the bikes, and again when the book changes. */
function useBikes({ base, bikes }: CalculatorState): Book | null {
  const [book, setBook] = useState<Book | null>(null)
  useEffect(() => {
    const read = async (): Promise<void> => {
      const [whole, standIns] = await Promise.all([loadWhole(), loadStandIns(base, bikes)])
      const chosen = whole.bikes.find(({ id }) => id === whole.chosen) ?? null
      setBook({ bikes: whole.bikes, chosen, standIns })
    }
    void read()
    onBookChange(() => void read())
  }, [base, bikes])
  return book
}

/** “Use my bike”, what of it a card has, and what of the card goes back to it. */
export function OwnBikePanel({ state }: { state: CalculatorState }): JSX.Element | null {
  const book = useBikes(state)
  const { definition } = state
  useEffect(() => {
    if (!book || bikeInputOf(definition) === null) return
    // the chosen one first
    const ordered = [...book.bikes].sort(
      (one, other) => Number(other === book.chosen) - Number(one === book.chosen),
    )
    state.offerBikes(
      ordered.flatMap((bike) => {
        const standIn = book.standIns[bike.like]
        return standIn
          ? [
              {
                code: bikeCode(standIn, ownFigures(bike)),
                name: bike.name,
                use: () => use(state, bike, standIn),
              },
            ]
          : []
      }),
    )
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the state's functions do what they did, whichever render they are of
  }, [book, definition])
  if (!book) return null
  const standIn = book.chosen && book.standIns[book.chosen.like]
  return (
    <>
      {book.chosen && standIn && <Mine state={state} bike={book.chosen} standIn={standIn} />}
      <SentBike state={state} standIns={book.standIns} own={book.bikes} />
    </>
  )
}

function use(state: CalculatorState, bike: BikeRecord, standIn: BikeSheet): void {
  const { values, origins } = fillFrom(state.definition, bike, standIn)
  state.fill(values, origins)
}

interface MineProps {
  state: CalculatorState
  bike: BikeRecord
  standIn: BikeSheet
}

function Mine({ state, bike, standIn }: MineProps): JSX.Element {
  const { values } = fillFrom(state.definition, bike, standIn)
  const takes = Object.keys(values).length > 0
  return (
    <>
      {takes && (
        <button type="button" data-do="use-bike" onClick={() => use(state, bike, standIn)}>
          Use my bike: {bike.name}
        </button>
      )}
      <Count state={state} bike={bike} standIn={standIn} />
      <KeepResults state={state} bike={bike} />
    </>
  )
}

const FEW = 4

/** "rake, wheelbase and 3 more" */
function listed(labels: readonly string[]): string {
  const names = labels.map((label) => label.charAt(0).toLowerCase() + label.slice(1))
  const more = names.length - FEW
  return more > 1 ? `${names.slice(0, FEW).join(', ')} and ${more} more` : names.join(', ')
}

/** How many of the values in sight are the bike's, worked in ranges, or the stand-in's: what is not known is counted, and named. */
function Count({ state, bike, standIn }: MineProps): JSX.Element | null {
  const { definition, given, origins } = state
  const fed = fillFrom(definition, bike, standIn)
  const mine = Object.entries(definition.inputs).filter(
    ([id, input]) =>
      id in fed.values &&
      input.kind === 'quantity' &&
      origins[id]?.startsWith('bike:') &&
      origins[id] !== UNMEASURED &&
      isAsked(input, given),
  )
  const bikeInput = bikeInputOf(definition)
  const isBike = bikeInput !== null && given[bikeInput] === fed.values[bikeInput]
  if (mine.length === 0 && !isBike) return null
  const label = ([, input]: (typeof mine)[number]): string => input.label
  const ranges = mine.filter(([id]) => given[id] === UNKNOWN).map(label)
  const instead = mine
    .filter(([id]) => given[id] !== UNKNOWN && origins[id]?.endsWith('unknown on yours'))
    .map(label)
  const own = mine.length - ranges.length - instead.length
  const still = fed.of.example
    .filter((id) => origins[id] === 'example' && isAsked(definition.inputs[id]!, given))
    .map((id) => definition.inputs[id]!.label)
  const empty = fed.of.example
    .filter((id) => origins[id] === UNMEASURED && isAsked(definition.inputs[id]!, given))
    .map((id) => definition.inputs[id]!.label)
  const figures = ownFigures(bike)
  const sheet = isBike ? standInFigures(figures, FIGURES).map((figure) => figure.label) : []
  const all = isBike ? FIGURES.filter(({ sheet: place }) => place !== undefined).length : 0
  return (
    <p class="note own-count" data-own-count role="status">
      {mine.length > 0 && `${own} of ${mine.length + still.length} values are ${bike.name}’s. `}
      {ranges.length > 0 && `Not known, so that results are ranges: ${listed(ranges)}. `}
      {instead.length > 0 &&
        `From the ${standInName(standIn)}, unknown on yours: ${listed(instead)}. `}
      {still.length > 0 && `Still the example’s, to be read off your bike: ${listed(still)}. `}
      {empty.length > 0 &&
        `Not measured on yours, so that nothing relies on it: ${listed(empty)}. `}
      {isBike &&
        `Of the bike’s sheet ${all - sheet.length} of ${all} figures are ${bike.name}’s; ${
          sheet.length === 0 ? 'none' : `${sheet.length}`
        } ${sheet.length === 1 ? 'is' : 'are'} the ${standInName(standIn)}’s${sheet.length > 0 ? `: ${listed(sheet)}` : ''}. `}
      <a href={`${state.base}record/?bike=${bike.id}`}>Its figures</a>
    </p>
  )
}
