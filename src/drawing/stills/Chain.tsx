import { Dimension } from '../Dimension.tsx'
import { Call, Frame } from './parts.tsx'

const REAR = { x: 78, y: 60, r: 52 }
const FRONT = { x: 302, y: 48, r: 24 }

export default function Chain() {
  const middle = (REAR.x + FRONT.x) / 2
  const low = (REAR.y + REAR.r + FRONT.y + FRONT.r) / 2
  return (
    <Frame
      height={160}
      label="A chain’s lower run between the sprockets, pushed up and pulled down at its middle. The slack is the distance between the two."
    >
      <path class="detail" d={`M${REAR.x} ${REAR.y - REAR.r}L${FRONT.x} ${FRONT.y - FRONT.r}`} />
      <circle class="metal" cx={REAR.x} cy={REAR.y} r={REAR.r} />
      <circle class="metal" cx={FRONT.x} cy={FRONT.y} r={FRONT.r} />
      <path
        class="chain-line"
        d={`M${REAR.x} ${REAR.y - REAR.r}L${FRONT.x} ${FRONT.y - FRONT.r}`}
      />
      <path
        class="chain-line"
        d={`M${REAR.x} ${REAR.y - REAR.r}A${REAR.r} ${REAR.r} 0 0 0 ${REAR.x} ${REAR.y + REAR.r}`}
      />
      <path
        class="chain-line"
        d={`M${FRONT.x} ${FRONT.y - FRONT.r}A${FRONT.r} ${FRONT.r} 0 0 1 ${FRONT.x} ${FRONT.y + FRONT.r}`}
      />
      <path
        class="chain-line"
        d={`M${REAR.x} ${REAR.y + REAR.r}Q${middle} ${low + 36} ${FRONT.x} ${FRONT.y + FRONT.r}`}
      />
      <path
        class="before"
        d={`M${REAR.x} ${REAR.y + REAR.r}Q${middle} ${low - 32} ${FRONT.x} ${FRONT.y + FRONT.r}`}
      />
      <circle class="now paper" cx={REAR.x} cy={REAR.y} r="5" />
      <circle class="now paper" cx={FRONT.x} cy={FRONT.y} r="4" />
      <Dimension from={[middle, low + 18]} to={[middle, low - 16]} text="slack" state="now" />
      <Call
        at={[140, 152]}
        from={[136, 147]}
        to={[middle - 36, low + 19]}
        lines={['lower run, pulled down']}
      />
    </Frame>
  )
}
