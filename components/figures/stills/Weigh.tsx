import { Dimension } from '../kit/Dimension.tsx'
import { round } from '../kit/state.ts'
import { Bike } from './bike.tsx'
import { Floor, Frame, Words } from './parts.tsx'

const SCALE = 118
const LEVEL = 150
const RAISED = 362
const BOARD = 8
const LIFT = 0.3 * SCALE
const REAR = 90
const FRONT = REAR + 1.45 * SCALE

export default function Weigh() {
  const turn = (Math.asin(0.3 / 1.45) * 180) / Math.PI
  const radius = 0.312 * SCALE
  return (
    <Frame
      height={388}
      label="Above: the front wheel on the scale and the rear wheel on boards of the same height. Below: the rear wheel raised on a platform, the front wheel on the scale; the lift is the rise of the rear axle."
    >
      <Bike scale={SCALE} origin={[REAR, LEVEL - BOARD]} />
      <rect class="metal" x={REAR - 26} y={LEVEL - BOARD} width="52" height={BOARD} />
      <rect class="now solid" x={FRONT - 26} y={LEVEL - BOARD} width="52" height={BOARD} />
      <Floor from={30} to={330} y={LEVEL} />
      <Words at={[REAR, LEVEL + 21]} anchor="middle" lines={['boards']} tone="quiet" />
      <Words at={[FRONT, LEVEL + 21]} anchor="middle" lines={['scale']} tone="now" />
      <g transform={`translate(0 ${-LIFT}) rotate(${round(turn)} ${REAR} ${round(RAISED - BOARD - radius)})`}>
        <Bike scale={SCALE} origin={[REAR, RAISED - BOARD]} />
      </g>
      <rect class="metal" x={REAR - 30} y={RAISED - BOARD - LIFT} width="60" height={BOARD + LIFT} />
      <rect class="now solid" x={FRONT - 30} y={RAISED - BOARD} width="52" height={BOARD} />
      <line class="guide" x1="22" x2={REAR} y1={RAISED - BOARD - radius} y2={RAISED - BOARD - radius} />
      <Dimension from={[36, RAISED - BOARD - radius]} to={[36, RAISED - BOARD - radius - LIFT]} text="" state="now" />
      <Words at={[30, RAISED - BOARD - radius - LIFT / 2 + 4]} anchor="end" lines={['lift']} tone="now" />
      <line class="guide" x1="22" x2={REAR} y1={RAISED - BOARD - radius - LIFT} y2={RAISED - BOARD - radius - LIFT} />
      <Floor from={30} to={330} y={RAISED} />
      <Words at={[REAR, RAISED + 21]} anchor="middle" lines={['firm platform']} tone="quiet" />
      <Words at={[FRONT, RAISED + 21]} anchor="middle" lines={['scale']} tone="now" />
    </Frame>
  )
}
