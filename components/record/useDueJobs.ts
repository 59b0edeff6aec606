import { useEffect, useRef } from 'preact/hooks'
import type { PartProps } from './props.ts'
import { today } from './data.ts'

const daysBetween = (from: string, to: string): number =>
  Math.floor((Date.parse(to) - Date.parse(from)) / 86_400_000)

/** Deletes jobs that have been shut for longer than the shop has set, and says so. It is a change like any other, and can be taken back. */
export function useDueJobs({ whole, state }: Pick<PartProps, 'whole' | 'state'>): void {
  const done = useRef(false)
  const { deleteAfter } = whole.settings
  useEffect(() => {
    if (done.current || deleteAfter === null) return
    done.current = true
    const due = whole.jobs.filter(
      ({ closed }) => closed !== null && daysBetween(closed, today()) > deleteAfter,
    )
    if (due.length === 0) return
    const what = `${due.length} ${due.length === 1 ? 'job' : 'jobs'} deleted that had been shut for more than ${deleteAfter} days, as set here`
    void state.change(
      what,
      () => Promise.resolve(due.map(({ id }) => ({ store: 'jobs', id, record: null }))),
      `${what}. You can take that back under “Last changes”.`,
    )
    // once a visit, with the jobs that were read first
  }, [deleteAfter])
}
