import { round } from '../state.ts'
import { BOARD, FLOOR, FRONT_RESTING, HungBike, SCALE, StandsNamed } from './hung.tsx'
import { Call, Frame, Move, Words } from './parts.tsx'

/** Half the length of the board [units]. */
const HALF = 44

export default function TyreOnABoard() {
  const { at, view, shape } = FRONT_RESTING
  const [head, pad] = [at('headGusset'), at('railFront')]
  const [rear, axle] = [view.spot(shape.rearAxle), view.spot(shape.frontAxle)]
  const top = FLOOR - BOARD * SCALE
  const tyre = shape.frontRadius * SCALE
  return (
    <Frame
      height={314}
      label="The bike from its right side, its frame held by a stand under each frame tube and a strap from each side up to a beam, the rear on a paddock stand. The front tyre rests lightly on a flat board: it carries wheel and fork only. The wheel is lifted by its tyre, and the board is pushed in from the side by its far edge."
    >
      <HungBike of={FRONT_RESTING} end="front" />
      <rect
        class="wood"
        x={round(axle[0] - HALF)}
        y={round(top)}
        width={2 * HALF}
        height={round(FLOOR - top)}
      />
      <Move from={[axle[0] + tyre + 12, axle[1] + 6]} to={[axle[0] + tyre + 12, axle[1] - 30]} />
      <Call
        at={[6, 18]}
        from={[84, 42]}
        to={[head[0] - 15, head[1] - 62]}
        lines={['the frame stays', 'where it is']}
      />
      <Call
        at={[354, 74]}
        anchor="end"
        from={[330, 99]}
        to={[axle[0] + tyre * 0.72, axle[1] - tyre * 0.6]}
        lines={['lift by the tyre,', 'at both sides']}
      />
      <StandsNamed rear={rear} pad={pad} />
      <Words
        at={[axle[0] + 24, FLOOR + 22]}
        anchor="middle"
        lines={['board, by its', 'far edge']}
        tone="now"
      />
    </Frame>
  )
}
