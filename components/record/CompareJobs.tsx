import type { JSX } from 'preact'
import { useState } from 'preact/hooks'
import type { Taken } from '../../src/record/carry.ts'
import { readingUnit, showValue } from '../../src/record/reading.ts'
import { readingsOf } from '../../src/record/readingsOf.ts'
import type { JobRecord } from '../../src/record/records.ts'
import { dayText, kindTitle } from './data.ts'
import type { BikeProps } from './props.ts'

interface Side {
  label: string
  unit: string
  mean: number
}

/** The last value of each reading in a job; before and after the work are two. */
const lastOf = (job: JobRecord, all: readonly Taken[]): Map<string, Side> =>
  new Map(
    readingsOf([job], all).map(({ spec, mean }) => [
      spec.id,
      { label: spec.label, unit: spec.unit, mean: mean.mean },
    ]),
  )

interface Props extends BikeProps {
  jobs: readonly JobRecord[]
}

/** Any two jobs of a bike side by side: what was read in both. */
export function CompareJobs(props: Props): JSX.Element | null {
  const { jobs } = props
  const [one, setOne] = useState(jobs[1]?.id ?? '')
  const [other, setOther] = useState(jobs[0]?.id ?? '')
  const [before, after] = [one, other].map((id) => jobs.find((job) => job.id === id))
  if (jobs.length < 2) return null
  return (
    <section class="card compare-jobs" aria-labelledby="two-jobs" data-compare>
      <h2 id="two-jobs">Two jobs side by side</h2>
      <p class="act">
        <Pick {...props} label="First" value={one || jobs[1]!.id} choose={setOne} />
        <Pick {...props} label="Second" value={other || jobs[0]!.id} choose={setOther} />
      </p>
      <Both {...props} before={before ?? jobs[1]!} after={after ?? jobs[0]!} />
    </section>
  )
}

function Pick({
  jobs,
  data,
  label,
  value,
  choose,
}: Props & { label: string; value: string; choose(id: string): void }): JSX.Element {
  return (
    <label>
      {label}{' '}
      <select onChange={(event) => choose(event.currentTarget.value)}>
        {jobs.map(({ id, opened, kind }) => (
          <option key={id} value={id} selected={id === value}>
            {dayText(opened)}, {kindTitle(data, kind).toLowerCase()}
          </option>
        ))}
      </select>
    </label>
  )
}

function Both({
  data,
  say,
  before,
  after,
}: Props & { before: JobRecord; after: JobRecord }): JSX.Element {
  const [was, is] = [lastOf(before, data.taken), lastOf(after, data.taken)]
  const shared = [...was].filter(([id, { unit }]) => is.get(id)?.unit === unit)
  if (shared.length === 0) return <p>No reading was taken in both.</p>
  return (
    <div class="scroll" tabIndex={0} role="region" aria-labelledby="two-jobs">
      <table class="book-table">
        <thead>
          <tr>
            <th scope="col">Reading</th>
            <th scope="col">{dayText(before.opened)}</th>
            <th scope="col">{dayText(after.opened)}</th>
            <th scope="col">Change</th>
          </tr>
        </thead>
        <tbody>
          {shared.map(([id, { label, unit, mean }]) => {
            const now = is.get(id)!.mean
            const shown = readingUnit(unit, say.choice)
            return (
              <tr key={id}>
                <th scope="row">{label}</th>
                <td class="was">{showValue(mean, unit, shown)}</td>
                <td class="is">{showValue(now, unit, shown)}</td>
                <td>{`${now > mean ? '+' : ''}${showValue(now - mean, unit, shown)}`}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}
