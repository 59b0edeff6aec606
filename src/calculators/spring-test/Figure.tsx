import { middle } from '../../units/interval.ts'
import type { Say } from '../../units/say.ts'
import type springTest from './statement.ts'
import type { Picture } from './solve.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Chart } from '../../drawing/Chart.tsx'
import type { Band, Point, XY } from '../../drawing/Chart.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof springTest, Picture>['now']

type Miss = readonly [length: number, force: number, miss: number]
const missesOf = ({ output }: State): Miss[] =>
  output.misses.map(([length, force, miss]) => [Number(length), Number(force), Number(miss)])

/** The 95 % band of the fitted line, where the readings say something of it. */
function bandOf({ picture }: State): Band[] {
  const known = picture.line.flatMap(([length, force], index) => {
    const half = picture.half[index]
    return half === null || half === undefined ? [] : [{ length, force, half }]
  })
  if (known.length < 2) return []
  return [
    {
      low: known.map(({ length, force, half }): XY => [length, force - half]),
      high: known.map(({ length, force, half }): XY => [length, force + half]),
      as: 'now',
    },
  ]
}

/** "9.04 N/mm", or "7.97 then 12.01 N/mm" where the spring has two. */
function rateText({ output }: State, say: Say): string {
  const first = middle(output.rate) ?? 0
  const second = middle(output.secondRate)
  return second === null
    ? say.quantity(first, 'N/mm', 2)
    : `${say.number(first, 'N/mm', 2)} then ${say.quantity(second, 'N/mm', 2)}`
}

function readingsOf(state: State, as: 'now' | 'before', say: Say): Point[] {
  const { lengthPlusMinus, forcePlusMinus } = state.input
  return missesOf(state).map(([length, force, miss]) => ({
    x: length,
    y: force,
    as,
    says: `${say.quantity(force, 'N', 0)} at ${say.quantity(length, 'mm', 1)}, off by ${say.change(miss, 'N', 1)}`,
    xRange: [length - lengthPlusMinus, length + lengthPlusMinus],
    yRange: [force - forcePlusMinus, force + forcePlusMinus],
  }))
}

function Misses({ now, say, prefix }: Omit<FigureProps<typeof springTest, Picture>, 'before'>) {
  const misses = missesOf(now)
  const { forcePlusMinus } = now.input
  const worst = Math.max(forcePlusMinus, ...misses.map(([, , miss]) => Math.abs(miss)), 1e-9) * 1.15
  return (
    <Chart
      prefix={`${prefix}-misses`}
      say={say}
      takeaway={`What each reading misses the fit by, at most ${say.quantity(Math.abs(middle(now.output.worst) ?? 0), 'N', 1)}.`}
      caption="What each reading misses the fit by, magnified. A bow here means a rate that changes; a jumble means scatter. Shaded: the ± of a force."
      height={190}
      x={{ label: 'length', unit: 'mm' }}
      y={{ label: 'miss', unit: 'N', domain: [-worst, worst], ticks: 4 }}
      spans={
        forcePlusMinus > 0
          ? [{ axis: 'y', from: -forcePlusMinus, to: forcePlusMinus, as: 'soft' }]
          : []
      }
      rules={[{ axis: 'y', at: 0, as: 'now' }]}
      points={misses.map(([length, , miss]) => ({
        x: length,
        y: miss,
        as: 'now',
        says: `${say.change(miss, 'N', 1)} at ${say.quantity(length, 'mm', 1)}`,
      }))}
      table={{
        caption: 'The misses',
        columns: [`length, ${say.symbol('mm')}`, `miss, ${say.symbol('N')}`],
        rows: misses.map(([length, , miss]) => [
          say.number(length, 'mm', 1),
          say.number(miss, 'N', 1),
        ]),
      }}
    />
  )
}

/** Readings with their ±, the fit with its band, and below what each reading misses it by. */
export default function SpringTestFigure({
  now,
  before,
  say,
  prefix,
}: FigureProps<typeof springTest, Picture>) {
  const rate = rateText(now, say)
  const misses = missesOf(now)
  return (
    <div class="figs">
      <View id="chart">
        <Chart
          prefix={prefix}
          say={say}
          takeaway={`Force against length, ${misses.length} readings and the fit: ${rate}.`}
          caption={`Force against length, with the fit${now.picture.half[0] === null ? '' : ' and its 95 % band'}. Its steepness is the rate, ${rate}.`}
          x={{ label: 'length', unit: 'mm' }}
          y={{ label: 'force', unit: 'N', include: [0] }}
          bands={bandOf(now)}
          curves={[
            ...(before
              ? [{ points: before.picture.line, as: 'before' as const, label: 'before' }]
              : []),
            { points: now.picture.line, as: 'now', label: rate },
          ]}
          points={[
            ...(before ? readingsOf(before, 'before', say) : []),
            ...readingsOf(now, 'now', say),
          ]}
          table={{
            caption: 'The readings and the fit',
            columns: [
              `length, ${say.symbol('mm')}`,
              `force, ${say.symbol('N')}`,
              `fit, ${say.symbol('N')}`,
            ],
            rows: misses.map(([length, force, miss]) => [
              say.number(length, 'mm', 1),
              say.number(force, 'N', 0),
              say.number(force - miss, 'N', 0),
            ]),
          }}
        />
      </View>
      <View id="misses">
        <Misses now={now} say={say} prefix={prefix} />
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
SpringTestFigure.views = [
  { id: 'chart', name: 'Force' },
  { id: 'misses', name: 'Misses' },
] satisfies readonly ViewName[]
