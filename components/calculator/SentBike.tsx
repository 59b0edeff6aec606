import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import { figuresInCode } from '../../src/bikes/ownBike.ts'
import { readBikeCode } from '../../src/bikes/bikeCode.ts'
import type { BikeSheets } from '../../src/bikes/sheet.ts'
import { newBike } from '../../src/record/records.ts'
import type { BikeRecord } from '../../src/record/records.ts'
import { changeRecords, newId } from '../../src/record/store/bookStore.ts'
import { bikeInputOf, standInName } from './bikeFill.ts'
import type { CalculatorState } from './useCalculator.ts'

interface Props {
  state: CalculatorState
  standIns: BikeSheets
  own: readonly BikeRecord[]
}

/** A bike that came with a link: said to be one, and kept only when the reader asks. */
export function SentBike({ state, standIns }: Props): JSX.Element | null {
  const [note, setNote] = useState('')
  const input = bikeInputOf(state.definition)
  const code = input === null ? '' : String(state.given[input])
  const read = readBikeCode(code, Object.keys(standIns))
  if (!read || !code.includes(';') || state.ownBikes.some((bike) => bike.code === code)) return null
  const count = Object.keys(read.numbers).length
  const keep = async (): Promise<void> => {
    const date = new Date().toISOString().slice(0, 10)
    const bike: BikeRecord = {
      ...newBike(newId(), { name: 'A bike from a link', like: read.like, made: date }),
      figures: Object.fromEntries(
        Object.entries(figuresInCode(code, standIns)).map(([id, value]) => [
          id,
          { value, from: 'guessed', date, of: 'a link' },
        ]),
      ),
    }
    await changeRecords({ what: 'bike kept from a link' }, () =>
      Promise.resolve([{ store: 'bikes', id: bike.id, record: bike }]),
    )
    setNote(
      'Kept in your bench book, as “A bike from a link”. Its figures are marked as guessed: nobody here has measured them.',
    )
  }
  return (
    <div class="sent-bike">
      <p class="note">
        A bike from a link: the {standInName(standIns[read.like]!)} with {count}{' '}
        {count === 1 ? 'figure' : 'figures'} of its own. {note}
      </p>
      {note === '' && (
        <button type="button" class="plain" data-do="keep-bike" onClick={() => void keep()}>
          Keep this bike
        </button>
      )}
    </div>
  )
}
