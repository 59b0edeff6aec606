import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import { FIGURES } from '../../src/bikes/figures.ts'
import { newBike } from '../../src/record/records.ts'
import type { BikeRecord } from '../../src/record/records.ts'
import { chooseBike, newId, saveSettings } from '../../src/record/store/bookStore.ts'
import { withWorkedOut } from '../../src/record/workedOut.ts'
import type { PartProps } from './props.ts'
import { dayText, kindTitle, standInName, today } from './data.ts'
import { useDueJobs } from './useDueJobs.ts'

/** How many of a bike's figures are known. */
export function knownCount(bike: BikeRecord): { known: number; unknown: number } {
  const all = withWorkedOut(bike.figures)
  const asked = FIGURES.filter(({ workedOut }) => !workedOut)
  const known = asked.filter(({ id }) => Object.hasOwn(all, id)).length
  return { known, unknown: asked.length - known }
}

function Card({ bike, data, whole, state }: PartProps & { bike: BikeRecord }): JSX.Element {
  const jobs = whole.jobs.filter((job) => job.bike === bike.id)
  const [last] = jobs
  const { known, unknown } = knownCount(bike)
  const chosen = whole.chosen === bike.id
  return (
    <li class="card bike-card" data-bike={bike.id}>
      <h2>
        <a href={`?bike=${bike.id}`}>{bike.name}</a>
      </h2>
      <p class="soft">most like the {standInName(data, bike.like)}</p>
      <p>
        {known} figures known, {unknown} unknown
      </p>
      <p>
        {last
          ? `Last job: ${kindTitle(data, last.kind).toLowerCase()}, ${last.closed === null ? `open since ${dayText(last.opened)}` : `shut ${dayText(last.closed)}`}`
          : 'No job yet'}
      </p>
      <button
        type="button"
        data-do="choose"
        aria-pressed={chosen}
        onClick={() => void chooseBike(chosen ? null : bike).then(state.read)}
      >
        {chosen ? 'Chosen' : 'Choose this bike'}
      </button>
    </li>
  )
}

function NewBike({ data, state }: PartProps): JSX.Element {
  const [name, setName] = useState('')
  const [like, setLike] = useState('middleweight-roadster')
  const add = async (): Promise<void> => {
    const bike = newBike(newId(), { name: name.trim() || 'My bike', like, made: today() })
    await state.change(`bike added: ${bike.name}`, () =>
      Promise.resolve([{ store: 'bikes', id: bike.id, record: bike }]),
    )
    await chooseBike(bike)
    location.assign(`?bike=${bike.id}`)
  }
  return (
    <form
      class="card new-bike"
      data-new-bike
      onSubmit={(event) => {
        event.preventDefault()
        void add()
      }}
    >
      <h2>A bike of your own</h2>
      <label>
        What you call it
        <input
          type="text"
          name="name"
          maxLength={200}
          autocomplete="off"
          value={name}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      <label>
        Most like
        <select name="like" onChange={(event) => setLike(event.currentTarget.value)}>
          {Object.values(data.bikes).map(({ id, name: title }) => (
            <option key={id} value={id} selected={id === like}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <p class="hint">
        That invented bike’s figures stand in where yours are not known, and every result says so.
      </p>
      <button type="submit" data-do="add-bike">
        Add the bike
      </button>
    </form>
  )
}

function Shop({ whole, state }: PartProps): JSX.Element {
  const { settings } = whole
  const save = (next: typeof settings): void => void saveSettings(next).then(state.read)
  return (
    <details class="shop">
      <summary>On a computer that others use</summary>
      <label class="line">
        <input
          type="checkbox"
          name="names"
          checked={settings.names}
          onChange={(event) => save({ ...settings, names: event.currentTarget.checked })}
        />
        Ask for the customer’s name in a job. It is off until you switch it on: whoever sits at this
        computer can read it.
      </label>
      <label class="line">
        Delete jobs that have been shut for
        <input
          type="text"
          inputMode="numeric"
          name="deleteAfter"
          autocomplete="off"
          value={settings.deleteAfter ?? ''}
          onChange={(event) => {
            const days = Number(event.currentTarget.value)
            save({
              ...settings,
              deleteAfter: Number.isInteger(days) && days > 0 && days <= 3660 ? days : null,
            })
          }}
        />
        days. Empty: never. The book says each time what it deleted, and it can be taken back.
      </label>
    </details>
  )
}

/** All bikes of the book, and a new one. */
export function Overview(props: PartProps): JSX.Element {
  const { whole } = props
  useDueJobs(props)
  return (
    <>
      <h1>Bench book</h1>
      <p class="lede">
        Your bikes, what you know of each, and what was done to it. The calculators open with the
        bike that is chosen here.
      </p>
      {whole.bikes.length > 0 && (
        <ul class="bike-cards" role="list">
          {whole.bikes.map((bike) => (
            <Card key={bike.id} {...props} bike={bike} />
          ))}
        </ul>
      )}
      <NewBike {...props} />
      <Shop {...props} />
    </>
  )
}
