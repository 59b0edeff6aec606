import type rideHeight from './statement.ts'
import type { Picture } from './solve.ts'
import { Amount, amountPlace } from './Amount.tsx'
import type { Handle } from '../../drawing/handles.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Details } from '../../drawing/Details.tsx'
import { SideView } from '../../drawing/SideView.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

/** The bike before and after a change of height: the whole of it to scale, then the two places where the change can be seen. */
export default function RideHeightFigure({
  now,
  before,
  say,
  prefix,
}: FigureProps<typeof rideHeight, Picture>) {
  const trail = say.quantity(now.picture.pose.trail, 'mm', 1)
  const was = before && say.quantity(before.picture.pose.trail, 'mm', 1)
  const told = was === null ? `Trail ${trail}.` : `Trail goes from ${was} to ${trail}.`
  return (
    <div class="figs">
      <View id="bike">
        <SideView
          now={now.picture}
          before={before && before.picture}
          say={say}
          prefix={prefix}
          label={`The bike from the side, to scale. ${told}`}
          caption={
            before
              ? 'To scale. Solid: now. Dashed: before. The arrows are the wheel loads.'
              : 'To scale. The arrows are the wheel loads.'
          }
        />
      </View>
      <View id="details">
        <Details
          now={now.picture}
          before={before && before.picture}
          say={say}
          label={`The leg at the mark and the ground at the front tyre, magnified. ${told}`}
          caption={told}
        />
      </View>
      <View id="part">
        <Amount now={now} before={before} say={say} prefix={`${prefix}-part`} />
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
RideHeightFigure.views = [
  { id: 'bike', name: 'Bike', shows: ['bike', 'rider'] },
  { id: 'details', name: 'Mark and ground', shows: ['amount'] },
  { id: 'part', name: 'Part', shows: ['amount', 'by'] },
] satisfies readonly ViewName[]

/** What can be pulled: the part that is changed, by its edge. */
RideHeightFigure.handles = [
  { input: 'amount', view: 'part', axis: 'y', side: 'right', part: 'the part', at: amountPlace },
] satisfies readonly Handle<FigureProps<typeof rideHeight, Picture>>[]
