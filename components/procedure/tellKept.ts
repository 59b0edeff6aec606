import type { Open } from '../../src/record/store/openJob.ts'

/** Says for which bike the page keeps what is written, and since when its job is open. */
export function tellKept(root: ParentNode, { bike, job }: Open): void {
  const place = root.querySelector<HTMLElement>('[data-kept-for]')
  if (!place) return
  place.hidden = bike === null
  place.textContent =
    bike === null
      ? ''
      : job === null
        ? `Kept for ${bike.name}, in a new job.`
        : `Kept for ${bike.name}, in the job opened on ${job.opened}.`
}
