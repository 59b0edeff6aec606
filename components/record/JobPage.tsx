import type { JSX } from 'preact'
import type { Taken } from '../../src/record/carry.ts'
import { bookOfJob, bookOfPart } from '../../src/record/jobSheets.ts'
import { pairs } from '../../src/record/pairs.ts'
import { apartText, meanOf, readingUnit, showValue, unitSymbol } from '../../src/record/reading.ts'
import type { Entry } from '../../src/record/reading.ts'
import type { JobRecord, PartRecord } from '../../src/record/records.ts'
import { jobIn } from '../../src/record/store/bookStore.ts'
import { tickState } from '../../src/record/sheet.ts'
import { Confirm } from './Confirm.tsx'
import { dayText, kindTitle, procedureTitle, today } from './data.ts'
import { JobWords } from './JobWords.tsx'
import type { BikeProps } from './props.ts'

export interface JobProps extends BikeProps {
  job: JobRecord
}

/** What was typed, with its units. */
export const typedText = (entries: readonly Entry[]): string =>
  entries
    .filter(({ typed }) => typed.trim() !== '')
    .map(({ typed, unit }) =>
      unitSymbol(unit) === '' ? typed : `${typed}\u00a0${unitSymbol(unit)}`,
    )
    .join(' · ')

function Rows({
  part,
  own,
  say,
}: Pick<JobProps, 'say'> & { part: PartRecord; own: readonly Taken[] }): JSX.Element {
  const known = new Set(own.map(({ spec }) => spec.id))
  const lost = Object.keys(part.readings).filter((id) => !known.has(id))
  return (
    <table class="book-table">
      <thead>
        <tr>
          <th scope="col">Reading</th>
          <th scope="col">As written</th>
          <th scope="col">Value or mean</th>
          <th scope="col">Day</th>
        </tr>
      </thead>
      <tbody>
        {own.map(({ spec }) => {
          const reading = Object.hasOwn(part.readings, spec.id) ? part.readings[spec.id] : undefined
          if (!reading) return null
          const mean = meanOf(spec, reading.boxes)
          const shown = readingUnit(spec.unit, say.choice)
          return (
            <tr key={spec.id} data-reading={`${part.id}.${spec.id}`}>
              <th scope="row">{spec.label}</th>
              <td class="free">{typedText(reading.boxes)}</td>
              <td class="is">
                {mean && (apartText(mean, spec, shown) || showValue(mean.mean, spec.unit, shown))}
              </td>
              <td>{reading.at === null ? 'undated' : dayText(reading.at)}</td>
            </tr>
          )
        })}
        {lost.map((id) => (
          <tr key={id} data-reading={`${part.id}.${id}`} data-lost>
            <th scope="row">
              {ofCard(part) ? id.replaceAll('.', ' ') : `${id}, from an earlier edition`}
            </th>
            <td class="free">{typedText(part.readings[id]?.boxes ?? [])}</td>
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Whether a part holds what a card keeps beside its steps: gates, initials, torques. */
const ofCard = ({ procedure }: PartRecord): boolean => procedure.startsWith('job.')

function Sheet({ data, say, part }: JobProps & { part: PartRecord }): JSX.Element {
  const steps = data.procedures.find(({ id }) => id === part.procedure)?.steps ?? []
  const book = bookOfPart(part)
  const states = steps.map(([id, hash]) => tickState(book, part.procedure, id, hash))
  const done = states.filter((state) => state === 'ticked').length
  const changed = states.filter((state) => state === 'changed').length
  const times = /\.(\d+)$/.exec(part.id)?.[1]
  return (
    <section class="book-sheet" data-sheet={part.id}>
      <h3>
        {ofCard(part) ? (
          'Hold points, initials and torques'
        ) : (
          <a href={`${data.base}procedures/${part.procedure}/`}>
            {procedureTitle(data, part.procedure)}
          </a>
        )}
        {times && <small> once more ({times})</small>}
      </h3>
      <p class="also">
        {done} of {steps.length} steps ticked{changed > 0 && `, ${changed} changed since`}
      </p>
      {Object.keys(part.readings).length > 0 && (
        <div class="scroll" tabIndex={0} role="region" aria-label={`Readings of ${part.id}`}>
          <Rows
            part={part}
            own={data.taken.filter(({ procedure }) => procedure === part.procedure)}
            say={say}
          />
        </div>
      )}
    </section>
  )
}

function Pairs({ data, job, say }: JobProps): JSX.Element | null {
  const found = pairs(data.taken, bookOfJob(job))
  if (found.length === 0) return null
  return (
    <section data-pairs aria-labelledby="before-and-after">
      <h2 id="before-and-after">Before and after</h2>
      <div class="scroll" tabIndex={0} role="region" aria-labelledby="before-and-after">
        <table class="book-table">
          <thead>
            <tr>
              <th scope="col">Reading</th>
              <th scope="col">Before</th>
              <th scope="col">After</th>
              <th scope="col">Change</th>
            </tr>
          </thead>
          <tbody>
            {found.map(({ id, label, unit, before, after }) => {
              const shown = readingUnit(unit, say.choice)
              const change = showValue(after - before, unit, shown)
              return (
                <tr key={id}>
                  <th scope="row">{label}</th>
                  <td class="was">{showValue(before, unit, shown)}</td>
                  <td class="is">{showValue(after, unit, shown)}</td>
                  <td>{after > before ? `+${change}` : change}</td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </div>
    </section>
  )
}

/** One job: its words, its readings part by part, before and after. */
export function JobPage(props: JobProps): JSX.Element {
  const { bike, job, data, state } = props
  const write = async (what: string, change: (job: JobRecord) => JobRecord | null): Promise<void> =>
    state.change(`${bike.name}: ${what}`, async (shelf) => {
      const now = await jobIn(shelf, job.id)
      return now ? [{ store: 'jobs', id: job.id, record: change(now) }] : []
    })
  return (
    <article class="job-record" data-job={job.id}>
      <p class="kicker on-screen">
        <a href={`${data.base}record/`}>Bench book</a> ·{' '}
        <a href={`?bike=${bike.id}`}>{bike.name}</a>
      </p>
      <h1>{kindTitle(data, job.kind)}</h1>
      <p class="lede">
        {bike.name}, opened {dayText(job.opened)}
        {job.closed === null ? '' : `, shut ${dayText(job.closed)}`}
      </p>
      <JobWords {...props} write={write} />
      <p class="act needs-script">
        <button
          type="button"
          data-do="close-job"
          onClick={() =>
            void write(job.closed === null ? 'job shut' : 'job opened again', (now) => ({
              ...now,
              closed: now.closed === null ? today() : null,
            }))
          }
        >
          {job.closed === null ? 'Shut the job' : 'Open it again'}
        </button>
        <button type="button" onClick={() => print()}>
          Print
        </button>
        <Confirm
          question="Delete this job and its readings? You can take it back under “Last changes”."
          yes="Delete it"
          no="Keep it"
          act={() =>
            void write('job deleted', () => null).then(() => location.assign(`?bike=${bike.id}`))
          }
        >
          Delete the job
        </Confirm>
      </p>
      <Pairs {...props} />
      <h2>Readings and ticks</h2>
      {job.parts.length === 0 && <p>Nothing was written yet.</p>}
      {job.parts.map((part) => (
        <Sheet key={part.id} {...props} part={part} />
      ))}
    </article>
  )
}
