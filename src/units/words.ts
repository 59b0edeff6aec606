/* Counts, lists and days as the site's prose writes them: in British English whatever the browser's language. */

const LANGUAGE = 'en-GB'

const plurals = new Intl.PluralRules(LANGUAGE)

/** The word that goes with a count: `one` of it, or `more`. */
export const plural = (count: number, one: string, more = `${one}s`): string =>
  plurals.select(count) === 'one' ? one : more

/** "1 row", "3 rows" */
export const counted = (count: number, one: string, more?: string): string =>
  `${count} ${plural(count, one, more)}`

const both = new Intl.ListFormat(LANGUAGE, { type: 'conjunction' })
const either = new Intl.ListFormat(LANGUAGE, { type: 'disjunction' })

/** "a, b and c" */
export const listAll = (words: readonly string[]): string => both.format(words)
/** "a, b or c" */
export const listAny = (words: readonly string[]): string => either.format(words)

const day = (year?: 'numeric'): Intl.DateTimeFormat =>
  new Intl.DateTimeFormat(LANGUAGE, { day: 'numeric', month: 'short', year, timeZone: 'UTC' })
const days = { short: day('numeric'), ofYear: day() }

/** The day of an ISO date. A 30 February counts on, as calendars do. */
export function dayOf(iso: string): Date {
  const [year = 0, month = 1, date = 1] = iso.split('-').map(Number)
  return new Date(Date.UTC(year, month - 1, date))
}

/** A day [its midnight in UTC]: "12 Mar 2026" or "12 Mar". */
export const formatDay = (date: Date, as: keyof typeof days): string => days[as].format(date)
