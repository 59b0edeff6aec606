import { middle } from '../../src/calculators/interval.ts'
import type rateFromSag from '../../src/calculators/rate-from-sag.ts'
import type { Say } from '../../src/calculators/say.ts'
import type { FigureProps } from './index.ts'
import { Chart } from './kit/Chart.tsx'
import type { Curve, Point, XY } from './kit/Chart.tsx'

type State = FigureProps<typeof rateFromSag>['now']

function readingsOf({ picture }: State, as: 'now' | 'before', say: Say): Point[] {
  const { length, force } = picture.limits
  const reading = (name: string, { sag, force: at }: { sag: number; force: number }): Point => ({
    x: sag, y: at, as, label: as === 'now' ? name : undefined,
    says: `${name}: ${say.quantity(at, 'N', 0)} at ${say.quantity(sag, 'mm', 1)} of sag`,
    xRange: [sag - length, sag + length],
    yRange: [at - force, at + force],
  })
  return [reading('bike alone', picture.static), reading('with rider', picture.rider)]
}

const lineOf = ({ picture }: State): XY[] => picture.line.map(({ sag, force }): XY => [sag, force])

/** The springs next on the shelf, drawn through the reading of the bike alone. */
const neighboursOf = ({ picture, input, output }: State, say: Say): Curve[] =>
  picture.neighbours.map((points, index): Curve => {
    const leg = (middle(output.perLeg) ?? 0) + (index === 0 ? -1 : 1) * input.step
    return { points, as: 'soft', label: say.quantity(leg, 'N/mm', 1) }
  })

/** The line through two readings, how far their ± lets it swing, and the neighbours it would have to be told from. */
export default function RateFromSagFigure({ now, before, say, prefix }: FigureProps<typeof rateFromSag>) {
  const { picture, output, input } = now
  const rate = say.quantity(middle(output.perLeg) ?? 0, 'N/mm', 2)
  const top = Math.max(...picture.line.map(({ force, error }) => force + error))
  return (
    <Chart
      prefix={prefix}
      say={say}
      takeaway={`Two readings and the line through them, ${rate} each leg, give or take ${say.quantity(middle(output.within) ?? 0, 'N/mm', 2)}: ${String(output.verdict)}.`}
      caption={`The line through two readings is the fork’s rate. Shaded: where it may lie, about 95 %. Dotted: springs ${say.quantity(input.step, 'N/mm', 1)} softer and stiffer. Where they stay in the shade, a tape can’t name the spring.`}
      height={280}
      x={{ label: 'sag', unit: 'mm', domain: [0, picture.line.at(-1)!.sag] }}
      y={{ label: 'load along the fork', unit: 'N', domain: [0, top * 1.02] }}
      bands={[{ low: picture.line.map(({ sag, force, error }): XY => [sag, force - error]), high: picture.line.map(({ sag, force, error }): XY => [sag, force + error]), as: 'now' }]}
      curves={[...(before ? [{ points: lineOf(before), as: 'before' as const, label: 'before' }] : []), { points: lineOf(now), as: 'now', label: `${rate} each leg` }, ...neighboursOf(now, say)]}
      points={[...(before ? readingsOf(before, 'before', say) : []), ...readingsOf(now, 'now', say)]}
      table={{
        caption: 'The readings, as loads and sags',
        columns: ['reading', `sag, ${say.symbol('mm')}`, `load, ${say.symbol('N')}`],
        rows: [['bike alone', picture.static] as const, ['with rider', picture.rider] as const].map(([name, { sag, force }]) => [name, say.number(sag, 'mm', 1), say.number(force, 'N', 0)]),
      }}
    />
  )
}
