import { type Aim, type ChangeWanted, findChange, type Way } from '../../src/core/index.ts'
import { stream } from './bikes.ts'

/* What a search must keep to whatever bike and aims it is given; each gives what is wrong, nothing if all is well. */

/** Shuffles a list by a stream of numbers. */
const shuffled = <T>(all: readonly T[], next: () => number): T[] =>
  all
    .map((one) => ({ one, at: next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ one }) => one)

/** The same search with aims, means and rates in another order. */
export function reordered(search: ChangeWanted, seed: number): ChangeWanted {
  const next = stream(seed)
  return {
    ...search,
    aims: shuffled(search.aims, next),
    means: shuffled(search.means, next).map((mean) =>
      mean.rates ? { ...mean, rates: shuffled(mean.rates, next) } : mean,
    ),
  }
}

/** Whether another order of aims, means and rates gives the same ways, to the last digit. */
export function orderFaults(search: ChangeWanted, seed: number): string[] {
  const [one, other] = [findChange(search), findChange(reordered(search, seed))]
  return JSON.stringify(one) === JSON.stringify(other) ? [] : ['another order gives other ways']
}

const changes = ({ change }: Way): number => Object.keys(change).length

/** Whether the best way costs no more once one aim is widened by so much either way. */
export function wideningFaults(search: ChangeWanted, which: number, by: number): string[] {
  const aims = search.aims.map((aim, i): Aim =>
    i === which % search.aims.length ? { ...aim, low: aim.low - by, high: aim.high + by } : aim,
  )
  const [narrow, wide] = [findChange(search), findChange({ ...search, aims })]
  if (!narrow.meets) return []
  if (!wide.meets) return ['a wider aim is met by no way']
  const [a, b] = [narrow.ways[0]!, wide.ways[0]!]
  if (b.work !== a.work) return b.work < a.work ? [] : ['a wider aim takes more work']
  if (changes(b) !== changes(a)) return changes(b) < changes(a) ? [] : ['… more changes']
  // rounding of a sum of shares
  return b.size <= a.size + 1e-12 ? [] : ['a wider aim takes larger changes']
}
