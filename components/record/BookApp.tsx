import type { JSX } from 'preact'
import { useUnitChoice } from '../calculator/useUnitChoice.ts'
import { createSay } from '../../src/units/say.ts'
import { BadRecords } from './BadRecords.tsx'
import { BikePage } from './BikePage.tsx'
import { Changes } from './Changes.tsx'
import type { PageData } from './data.ts'
import { Files } from './Files.tsx'
import { JobPage } from './JobPage.tsx'
import { Offline } from './Offline.tsx'
import { Overview } from './Overview.tsx'
import type { PartProps } from './props.ts'
import { useBook } from './useBook.ts'

/** The bench book: its bikes, one bike, or one job, as the address says. */
export function BookApp({ data }: { data: PageData }): JSX.Element {
  const state = useBook()
  const say = createSay(useUnitChoice(true))
  const { whole, problem, note } = state
  return (
    <div class="bench-book" data-book-ready={whole !== null}>
      {problem && (
        <p class="error keeping" role="alert">
          {problem}
        </p>
      )}
      {whole === null ? (
        <p>Reading the book…</p>
      ) : (
        <>
          <Part data={data} state={state} whole={whole} say={say} />
          <BadRecords state={state} whole={whole} />
          <Files data={data} state={state} whole={whole} />
          <Offline />
          <Changes state={state} whole={whole} />
        </>
      )}
      <p class="book-note" role="status" data-note>
        {note}
      </p>
    </div>
  )
}

function Part(props: PartProps): JSX.Element {
  const query = new URLSearchParams(location.search)
  const { whole, data } = props
  const bike = whole.bikes.find(({ id }) => id === query.get('bike'))
  if (!query.has('bike')) return <Overview {...props} />
  if (!bike)
    return (
      <section>
        <h1>Bench book</h1>
        <p>
          This browser’s book has no such bike: it was deleted, or the address comes from another
          device. <a href={`${data.base}record/`}>All bikes</a>
        </p>
      </section>
    )
  const job = whole.jobs.find(({ id, bike: of }) => id === query.get('job') && of === bike.id)
  return job ? <JobPage {...props} bike={bike} job={job} /> : <BikePage {...props} bike={bike} />
}
