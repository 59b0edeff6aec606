import type stance from './statement.ts'
import type { Picture } from './solve.ts'
import type { EndCurve } from './solve.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Aboard } from '../../drawing/Aboard.tsx'
import { Chart } from '../../drawing/Chart.tsx'
import type { ChartProps } from '../../drawing/Chart.tsx'
import { Details } from '../../drawing/Details.tsx'
import { partHandles, Parts } from './Parts.tsx'
import { SideView } from '../../drawing/SideView.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type Props = FigureProps<typeof stance, Picture>
const ROW = 8

function table(
  now: EndCurve,
  before: EndCurve | null,
  say: Props['say'],
  caption: string,
): ChartProps['table'] {
  const newton = (value: number | undefined): string =>
    value === undefined ? '' : say.quantity(value, 'N', 0)
  const rows = now.points.flatMap((point, index) =>
    index % ROW === 0 ? [{ point, was: before?.points[index] }] : [],
  )
  return {
    caption,
    columns: ['Travel used', ...(before ? ['Before'] : []), 'Now'],
    rows: rows.map(({ point, was }) => [
      say.quantity(point[0], 'mm', 0),
      ...(before ? [newton(was?.[1])] : []),
      newton(point[1]),
    ]),
  }
}

/** The force of one end against its travel, before and now, with the place where the end stands. */
function EndChart({
  end,
  now,
  before,
  say,
  prefix,
}: {
  end: 'front' | 'rear'
  now: EndCurve
  before: EndCurve | null
  say: Props['say']
  prefix: string
}) {
  const where =
    end === 'front' ? 'Front: force of both legs along the fork' : 'Rear: force at the wheel'
  const told = `${where}. It stands at ${say.quantity(now.at[0], 'mm', 1)} of ${say.quantity(now.limit, 'mm', 0)}, carrying ${say.quantity(now.at[1], 'N', 0)}.`
  const point = (curve: EndCurve, as: 'now' | 'before') => ({
    x: curve.at[0],
    y: curve.at[1],
    as,
    label: as,
    says: `${as}: ${say.quantity(curve.at[0], 'mm', 1)} deep, ${say.quantity(curve.at[1], 'N', 0)}`,
  })
  return (
    <Chart
      prefix={prefix}
      say={say}
      takeaway={told}
      caption={told}
      height={186}
      x={{
        label: `${end} travel used`,
        unit: 'mm',
        domain: [0, Math.max(now.limit, before?.limit ?? 0)],
      }}
      y={{ label: 'force', unit: 'N', include: [0] }}
      curves={[
        ...(before ? [{ points: before.points, as: 'before' as const }] : []),
        { points: now.points, as: 'now' as const },
      ]}
      points={[...(before ? [point(before, 'before')] : []), point(now, 'now')]}
      table={table(now, before, say, where)}
    />
  )
}

/** The whole bike to scale with its ghost, the two magnified places, and the two force curves with where each end stands. */
export default function StanceFigure(props: Props) {
  const { now, before, say, prefix } = props
  const { bike, front, rear } = now.picture
  const was = before?.picture ?? null
  const trail = say.quantity(bike.pose.trail, 'mm', 1)
  const told = was
    ? `Trail goes from ${say.quantity(was.bike.pose.trail, 'mm', 1)} to ${trail}.`
    : `Trail ${trail}.`
  return (
    <div class="figs">
      <View id="bike">
        <SideView
          now={bike}
          before={was && was.bike}
          say={say}
          prefix={prefix}
          label={`The whole bike from the side, to scale. ${told}`}
          caption={`To scale. The arrows are the wheel loads.${was ? ' Solid: now. Dashed: before.' : ''}`}
        >
          {(view) => <Aboard places={bike.aboard ?? []} projection={view} say={say} />}
        </SideView>
      </View>
      <View id="parts" closeUp>
        <Parts {...props} prefix={`${prefix}-parts`} />
      </View>
      <View id="details">
        <Details
          now={bike}
          before={was && was.bike}
          say={say}
          label={`The leg at the mark and the ground at the front tyre, magnified. ${told}`}
          caption={told}
        />
      </View>
      <View id="front">
        <EndChart
          end="front"
          now={front}
          before={was && was.front}
          say={say}
          prefix={`${prefix}-front`}
        />
      </View>
      <View id="rear">
        <EndChart
          end="rear"
          now={rear}
          before={was && was.rear}
          say={say}
          prefix={`${prefix}-rear`}
        />
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
StanceFigure.views = [
  {
    id: 'bike',
    name: 'Bike',
    shows: ['bike', 'situation', 'deceleration', 'lean', 'rider', 'passenger', 'luggage'],
  },
  {
    id: 'parts',
    name: 'Parts',
    shows: ['forkPreloadChange', 'tubeRaise', 'rearPreloadChange'],
  },
  {
    id: 'details',
    name: 'Ground',
    shows: ['tubeRaise', 'frontRadiusChange', 'shockLengthChange', 'rearRadiusChange'],
  },
  {
    id: 'front',
    name: 'Front',
    shows: [
      'forkPreloadChange',
      'forkRateChange',
      'oilHeightChange',
      'forkRate',
      'forkPreload',
      'airHeight',
    ],
  },
  {
    id: 'rear',
    name: 'Rear',
    shows: ['rearPreloadChange', 'rearRateChange', 'rearRate', 'rearPreload', 'motionRatio'],
  },
] satisfies readonly ViewName[]

StanceFigure.handles = partHandles
