import type wheelLoads from '../../src/calculators/wheel-loads.ts'
import type { FigureProps } from './props.ts'
import { SideView } from './kit/SideView.tsx'
import { Aboard } from './kit/Aboard.tsx'

/** The loaded bike with its two load arrows, and each person or load at the place where its weight acts. */
export default function WheelLoadsFigure({ now, before, say, prefix }: FigureProps<typeof wheelLoads>) {
  const { loads, aboard = [] } = now.picture
  const told = `Front ${say.quantity(loads?.front ?? 0, 'kg load', 1)}, rear ${say.quantity(loads?.rear ?? 0, 'kg load', 1)}.`
  return (
    <div class="figs">
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
    </div>
  )
}
