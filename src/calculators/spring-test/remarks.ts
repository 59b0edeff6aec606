import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { estimate } from '../../units/interval.ts'
import type statement from './statement.ts'

type Context = RemarkContext<typeof statement>

/** A bow is told from scatter when the misses in the middle and at both ends part by more than twice the ± of a force: chance seldom does that at three places. */
export const BOW = 2

/** A rate known worse than this does not tell a spring from its neighbour on the shelf: they commonly step by 5 % (common practice, no source). */
export const NEIGHBOURS = 0.05

/** What readings on a straight line may show for a bow by rounding [N]. */
const ROUNDING = 1e-6

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length)

/** How far the ends stand above the middle [N], readings in order of length: positive for a spring that stiffens. */
export function bowOf(misses: readonly (readonly unknown[])[]): number {
  const sorted = [...misses]
    .sort((a, b) => Number(a[0]) - Number(b[0]))
    .map((row) => Number(row[2]))
  const third = Math.max(1, Math.floor(sorted.length / 3))
  return (
    mean([...sorted.slice(0, third), ...sorted.slice(-third)]) - mean(sorted.slice(third, -third))
  )
}

function oneRate({ input, output, say }: Context): Remark[] {
  const rate = estimate(output.rate) ?? 0
  const within = estimate(output.within) ?? 0
  const given = `${say.quantity(rate, 'N/mm', 2)}, give or take ${say.quantity(within * rate, 'N/mm', 2)}: ${say.quantity(within, '%', 1)} of it.`
  const all: Remark[] = [{ kind: 'reading', text: given }]
  if (input.rows.length < 3)
    return [
      ...all,
      {
        kind: 'next',
        text: 'Two readings give a slope and no warning. Take six: their scatter shows how far to trust it.',
      },
    ]
  const bow = bowOf(output.misses)
  if (input.rows.length >= 5 && bow > Math.max(BOW * input.forcePlusMinus, ROUNDING)) {
    all.push({
      kind: 'next',
      text: `The ends stand ${say.quantity(bow, 'N', 0)} above the middle, which is more than the readings’ ±. That is a bow, not scatter: look for two rates.`,
    })
  } else if (within > NEIGHBOURS / 2) {
    all.push({
      kind: 'next',
      text: `That is too wide to tell it from a neighbour ${say.quantity(NEIGHBOURS, '%', 0)} away. Take more readings, further apart: the ± shrinks with the stretch that they span.`,
    })
  } else {
    // two rates, each with this ±: their difference has √2 of it
    const apart = say.quantity(Math.SQRT2 * within * rate, 'N/mm', 2)
    all.push({
      kind: 'next',
      text: `Test the other spring of the pair on a fresh sheet. With a ± like this one, the two are different where their rates lie more than ${apart} apart, which is 1.4 times the ±.`,
    })
  }
  return all
}

function twoRates({ output, say }: Context): Remark[] {
  if (output.kind !== 'two-rates') {
    const why =
      output.kind === 'too-few'
        ? 'Two rates take at least five readings.'
        : 'One rate through the free length scatters no worse than two would: an F test at 5 % sees no reason for a second.'
    return [
      {
        kind: 'reading',
        text: `${why} The single rate is ${say.quantity(estimate(output.rate) ?? 0, 'N/mm', 2)}.`,
      },
    ]
  }
  return [
    {
      kind: 'reading',
      text: `It starts at ${say.quantity(estimate(output.rate) ?? 0, 'N/mm', 2)}. After ${say.quantity(estimate(output.closesAt) ?? 0, 'mm', 0)} of squeeze the close coils touch, and the open ones alone give ${say.quantity(estimate(output.secondRate) ?? 0, 'N/mm', 2)}.`,
    },
    {
      kind: 'next',
      text: 'Take both to the progressive-spring calculator. It shows which of them works where the bike rides.',
    },
  ]
}

/** What a test tells, and what to do next. */
export const remarks = (context: Context): readonly Remark[] =>
  context.input.fit === 'two' ? twoRates(context) : oneRate(context)

export default defineRemarks<typeof statement>(remarks)
