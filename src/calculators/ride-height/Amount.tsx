import type rideHeight from './statement.ts'
import type { Picture } from './solve.ts'
import { Dimension } from '../../drawing/Dimension.tsx'
import type { HandlePlace } from '../../drawing/handles.ts'
import {
  PART_EDGE,
  PART_FOOT,
  partEdge,
  PartMoved,
  partName,
  partPlace,
  partWidth,
} from '../../drawing/PartMoved.tsx'
import type { FigureProps } from '../../drawing/props.ts'
import { round } from '../../drawing/state.ts'

type Props = FigureProps<typeof rideHeight, Picture>

const MIDDLE = 176

/** Where the amount can be pulled. */
export const amountPlace = ({ now: { input } }: Props): HandlePlace =>
  partPlace(input.by, input.amount, MIDDLE)

/** The part that is changed, enlarged. */
export function Amount({ now, before, say, prefix }: Props) {
  const { by, amount } = now.input
  const was = before?.input.by === by ? before.input.amount : null
  const moved = say.change(amount, 'mm', 1)
  const left = MIDDLE - partWidth(by) / 2 - 16
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${PART_FOOT + 24}`}
        role="img"
        aria-label={`The ${partName(by)}, enlarged: ${moved}.`}
      >
        <text class="quiet" x={2} y={14}>
          {partName(by)}
        </text>
        <PartMoved kind={by} amount={amount} before={was} x={MIDDLE} prefix={`${prefix}-half`} />
        <Dimension
          from={[left, PART_EDGE]}
          to={[left, round(partEdge(by, amount))]}
          text=""
          state="now"
        />
        <text class="now end" x={left - 24} y={PART_EDGE} dy="0.35em">
          {moved}
        </text>
        {was !== null && (
          <text class="before end" x={MIDDLE - 8} y={PART_FOOT + 18}>
            before
          </text>
        )}
        <text class="now start" x={MIDDLE + 8} y={PART_FOOT + 18}>
          now
        </text>
      </svg>
      <figcaption>
        The {partName(by)}, heights to one scale. The dotted line is where its edge was with nothing
        changed.
      </figcaption>
    </figure>
  )
}
