import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import { newJob, LOOSE } from '../../src/record/records.ts'
import type { JobRecord } from '../../src/record/records.ts'
import { bikeIn, newId } from '../../src/record/store/bookStore.ts'
import { dayText, kindTitle, today } from './data.ts'
import type { BikeProps } from './props.ts'

/** How much a job holds. */
function amount({ parts }: JobRecord): string {
  const readings = parts.reduce((sum, { readings: all }) => sum + Object.keys(all).length, 0)
  const ticks = parts.reduce((sum, { ticks: all }) => sum + Object.keys(all).length, 0)
  return `${readings} ${readings === 1 ? 'reading' : 'readings'}, ${ticks} ${ticks === 1 ? 'tick' : 'ticks'}`
}

/** A bike's jobs by date, and a new one. */
export function Jobs(props: BikeProps & { jobs: readonly JobRecord[] }): JSX.Element {
  const { bike, data, state, jobs } = props
  const [kind, setKind] = useState(data.kinds[0]?.id ?? LOOSE)
  const open = async (): Promise<void> => {
    const job = newJob(newId(), { bike: bike.id, kind, opened: today() })
    await state.change(
      `${bike.name}: job opened, ${kindTitle(data, kind).toLowerCase()}`,
      async (shelf) => {
        const now = (await bikeIn(shelf, bike.id)) ?? bike
        return [
          { store: 'bikes', id: bike.id, record: { ...now, job: job.id } },
          { store: 'jobs', id: job.id, record: job },
        ]
      },
      'Opened. Procedures and job cards write to it.',
    )
  }
  return (
    <section class="card jobs-card" aria-labelledby="jobs">
      <h2 id="jobs">Jobs</h2>
      {jobs.length === 0 && (
        <p>None yet. What you write in a procedure or on a job card opens one by itself.</p>
      )}
      <ul role="list" class="jobs">
        {jobs.map((job) => (
          <li key={job.id} data-job={job.id}>
            <span>{dayText(job.opened)}</span>
            <span>
              <a href={`?bike=${bike.id}&job=${job.id}`}>
                <b>{kindTitle(data, job.kind)}</b>
              </a>
              , {amount(job)}
            </span>
            <span>
              {job.closed === null ? (job.id === bike.job ? 'open' : 'open, set aside') : '✓ shut'}
            </span>
          </li>
        ))}
      </ul>
      <p class="act new-job needs-script">
        <label>
          <span class="hidden">Kind of the new job</span>
          <select name="kind" onChange={(event) => setKind(event.currentTarget.value)}>
            {[...data.kinds, { id: LOOSE, title: 'Procedures one by one' }].map(({ id, title }) => (
              <option key={id} value={id} selected={id === kind}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <button type="button" data-do="new-job" onClick={() => void open()}>
          Open a new job
        </button>
      </p>
    </section>
  )
}
