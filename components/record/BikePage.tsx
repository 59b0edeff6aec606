import type { JSX } from 'preact'
import { repeated } from '../../src/record/series.ts'
import { chooseBike } from '../../src/record/store/bookStore.ts'
import { CompareJobs } from './CompareJobs.tsx'
import { Confirm } from './Confirm.tsx'
import { dayText, kindTitle, standInName } from './data.ts'
import { Figures } from './Figures.tsx'
import { Jobs } from './Jobs.tsx'
import { OfflineOffer } from './Offline.tsx'
import type { BikeProps, PartProps } from './props.ts'
import { ReadingChart } from './ReadingChart.tsx'

/** One bike: its figures, its jobs, and what was read more than once. */
export function BikePage(props: BikeProps): JSX.Element {
  const { bike, data, whole, say } = props
  const jobs = whole.jobs.filter((job) => job.bike === bike.id)
  const open = jobs.find(({ id, closed }) => id === bike.job && closed === null)
  const first = jobs.at(-1)
  const since = first
    ? ` · ${jobs.length} ${jobs.length === 1 ? 'job' : 'jobs'} since ${dayText(first.opened)}`
    : ''
  return (
    <article class="bike-page" data-bike={bike.id}>
      <p class="kicker on-screen">
        <a href={`${data.base}record/`}>Bench book</a>
      </p>
      <header>
        <h1>{bike.name}</h1>
        <p class="soft">
          most like the {standInName(data, bike.like)}
          {since}
        </p>
      </header>
      <OfflineOffer />
      {open && (
        <a class="resume on-screen" href={resumeAddress(props, open.kind)}>
          <span>
            <b>Open: {kindTitle(data, open.kind).toLowerCase()}.</b> Since {dayText(open.opened)}
          </span>
          <b aria-hidden="true">›</b>
        </a>
      )}
      <div class="bike-grid">
        <Figures {...props} />
        <div class="bike-side">
          <Jobs {...props} jobs={jobs} />
          <ReadingCharts series={repeated(jobs, data.taken)} say={say} />
          <CompareJobs {...props} jobs={jobs} />
        </div>
      </div>
      <BikeActs {...props} />
    </article>
  )
}

const resumeAddress = ({ data }: PartProps, kind: string): string =>
  data.kinds.some(({ id }) => id === kind) ? `${data.base}jobs/${kind}/` : `${data.base}procedures/`

function ReadingCharts({
  series,
  say,
}: Pick<PartProps, 'say'> & { series: ReturnType<typeof repeated> }): JSX.Element | null {
  if (series.length === 0) return null
  return (
    <section class="card" aria-labelledby="repeated">
      <h2 id="repeated">
        Read more than once <small>dot: the middle; bar: how far it spread, pushed to lifted</small>
      </h2>
      {series.map((each) => (
        <ReadingChart key={each.id} series={each} say={say} />
      ))}
    </section>
  )
}

function BikeActs({ bike, data, state, whole }: BikeProps): JSX.Element {
  const jobs = whole.jobs.filter((job) => job.bike === bike.id)
  const remove = async (): Promise<void> => {
    await state.change(`bike deleted: ${bike.name}, with ${jobs.length} jobs`, () =>
      Promise.resolve([
        { store: 'bikes', id: bike.id, record: null },
        ...jobs.map(({ id }) => ({ store: 'jobs', id, record: null }) as const),
      ]),
    )
    if (whole.chosen === bike.id) await chooseBike(null)
    location.assign(`${data.base}record/`)
  }
  return (
    <p class="act needs-script">
      <button
        type="button"
        data-do="choose"
        aria-pressed={whole.chosen === bike.id}
        onClick={() => void chooseBike(whole.chosen === bike.id ? null : bike).then(state.read)}
      >
        {whole.chosen === bike.id ? 'Chosen on every page' : 'Choose this bike'}
      </button>
      <button type="button" onClick={() => print()}>
        Print
      </button>
      <Confirm
        question={`Delete ${bike.name} and its ${jobs.length} jobs? You can take it back under “Last changes”.`}
        yes="Delete it"
        no="Keep it"
        act={() => void remove()}
      >
        Delete this bike
      </Confirm>
    </p>
  )
}
