import type wheelLoads from './statement.ts'
import type { Picture } from './solve.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { SideView } from '../../drawing/SideView.tsx'
import { Aboard } from '../../drawing/Aboard.tsx'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

/** The loaded bike with its two load arrows, and each person or load at the place where its weight acts. */
export default function WheelLoadsFigure({
  now,
  before,
  say,
  prefix,
}: FigureProps<typeof wheelLoads, Picture>) {
  const { loads, aboard = [] } = now.picture
  const told = `Front ${say.quantity(loads?.front ?? 0, 'kg load', 1)}, rear ${say.quantity(loads?.rear ?? 0, 'kg load', 1)}.`
  return (
    <div class="figs">
      <View id="all">
        <SideView
          now={now.picture}
          before={before && before.picture}
          say={say}
          prefix={prefix}
          small={false}
          label={`The bike from the side with its wheel loads as arrows. ${told}`}
          caption={`To scale, arrows as long as the loads. ${told}${aboard.length > 0 ? ' Each cross is where a mass acts, its plumb line dotted.' : ''}${before ? ' Dashed: before.' : ''}`}
        >
          {(view) => <Aboard places={aboard} projection={view} say={say} />}
        </SideView>
      </View>
    </div>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
WheelLoadsFigure.views = [{ id: 'all', name: 'Bike' }] satisfies readonly ViewName[]
