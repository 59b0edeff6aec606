import { dayOf, formatDay } from '../../src/units/words.ts'
import type { BikeSheets } from '../../src/bikes/sheet.ts'
import type { Taken } from '../../src/record/carry.ts'

/** What the page of the book carries: every reading of the site, its procedures and job cards, and the invented bikes. */
export interface PageData {
  taken: readonly Taken[]
  procedures: readonly {
    id: string
    title: string
    steps: readonly (readonly [id: string, hash: string])[]
  }[]
  kinds: readonly { id: string; title: string }[]
  bikes: BikeSheets
  base: string
  edition: string
}

/** What a job is called. */
export const kindTitle = ({ kinds }: PageData, kind: string): string =>
  kinds.find(({ id }) => id === kind)?.title ?? 'Procedures one by one'

export const procedureTitle = ({ procedures }: PageData, id: string): string =>
  procedures.find((each) => each.id === id)?.title ?? id

/** "an invented bike's" name without what the list adds to it. */
export const standInName = ({ bikes }: PageData, id: string): string =>
  (bikes[id]?.name ?? id).replace(/ \(invented\)$/, '').toLowerCase()

/** "12 Mar 2026" of an ISO date. */
export const dayText = (iso: string): string => formatDay(dayOf(iso), 'short')

export const today = (): string => new Date().toISOString().slice(0, 10)
