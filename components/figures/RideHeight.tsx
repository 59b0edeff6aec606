import type rideHeight from '../../src/calculators/ride-height.ts'
import type { FigureProps } from './props.ts'
import { Details } from './kit/Details.tsx'
import { SideView } from './kit/SideView.tsx'

/** The bike before and after a change of height: the whole of it to scale, then the two places where the change can be seen. */
export default function RideHeightFigure({ now, before, say, prefix }: FigureProps<typeof rideHeight>) {
  const trail = say.quantity(now.picture.pose.trail, 'mm', 1)
  const was = before && say.quantity(before.picture.pose.trail, 'mm', 1)
  const told = was === null ? `Trail ${trail}.` : `Trail goes from ${was} to ${trail}.`
  return (
    <div class="figs">
      <SideView
        now={now.picture}
        before={before && before.picture}
        say={say}
        prefix={prefix}
        label={`The bike from the side, to scale. ${told}`}
        caption={before ? 'To scale. Solid: now. Dashed: before. The arrows are the wheel loads.' : 'To scale. The arrows are the wheel loads.'}
      />
      <Details
        now={now.picture}
        before={before && before.picture}
        say={say}
        label={`The leg at the mark and the ground at the front tyre, magnified. ${told}`}
        caption={told}
      />
    </div>
  )
}
