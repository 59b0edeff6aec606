import type { StillProps } from '../props.ts'
import { bikeShape } from '../bikeShape.ts'
import { projection } from '../projection.ts'
import { lifted } from '../side/lifted.ts'
import { chassisPoint, POINTS, SideBike } from '../side/SideBike.tsx'
import { round } from '../state.ts'
import { bikeAt, Window } from './bike.tsx'
import { Call, Frame } from './parts.tsx'

const LEFT = 108
const HEIGHT = 330
const SHAPE = lifted(bikeShape(bikeAt(0, 0.02)), 'rearAxle', 0.06)
const VIEW = projection(256, [-126, HEIGHT + 4])

/** The caliper by itself, hanging from its bracket: two pistons' bulges, and the slot for the disc with a slip of wood between the pads. */
function Caliper({ x, y }: { x: number; y: number }) {
  return (
    <g>
      <path
        class="outside-part dark"
        d={`M${x - 20} ${y}h40q8 0 8 8v26q0 10 -10 10h-36q-10 0 -10 -10v-26q0 -8 8 -8z`}
      />
      <path class="outside-line" d={`M${x - 4} ${y + 14}v30M${x + 6} ${y + 14}v30`} />
      <circle class="outside-screw" cx={x - 16} cy={y + 24} r="6" />
      <circle class="outside-screw" cx={x + 18} cy={y + 24} r="6" />
      <rect class="wood" x={x - 3} y={y + 20} width="8" height="38" />
      <circle class="outside-hole" cx={x - 14} cy={y + 6} r="3" />
    </g>
  )
}

export default function CalipersTiedUp({ prefix }: StillProps) {
  const at = (name: keyof typeof POINTS) => VIEW.spot(chassisPoint(SHAPE, POINTS[name]))
  const [head, lever] = [at('headGusset'), at('grip')]
  const [x, y] = [head[0] - 6, head[1] + 78]
  const hose = `M${round(x + 20)} ${round(y + 6)}C${round(x + 70)} ${round(y + 10)} ${round(x + 60)} ${round(head[1] + 30)} ${round(head[0] + 40)} ${round(head[1] - 6)}S${round(head[0] + 26)} ${round(head[1] - 50)} ${round(head[0] + 10)} ${round(head[1] - 58)}`
  return (
    <Frame
      height={HEIGHT}
      label="The front end from the right: the brake caliper is off its leg and hangs by a tie from the frame, so that no weight pulls on its hose, which stays slack. A slip of wood stands between the pads, and the brake lever is blocked so that nobody can pull it."
    >
      <Window id={`${prefix}-cut`} x={LEFT} y={0} width={360 - LEFT} height={HEIGHT}>
        <SideBike shape={SHAPE} projection={VIEW} without="caliper" />
        <path class="hose-edge" d={hose} />
        <path class="hose" d={hose} />
        <path
          class="tie-line"
          d={`M${round(head[0])} ${round(head[1])}L${round(x - 14)} ${round(y + 6)}`}
        />
        <circle class="webbing-end" cx={round(head[0])} cy={round(head[1])} r="3.4" />
        <Caliper x={x} y={y} />
      </Window>
      <Call
        at={[4, 40]}
        from={[96, 44]}
        to={[lever[0] - 8, lever[1] + 10]}
        lines={['block the', 'lever']}
      />
      <Call
        at={[4, 116]}
        from={[80, 116]}
        to={[head[0] - 4, head[1] + 22]}
        lines={['tie, to', 'the frame']}
      />
      <Call
        at={[4, 196]}
        from={[76, 192]}
        to={[x - 24, y + 26]}
        lines={['caliper', 'off its leg']}
      />
      <Call at={[4, 268]} from={[84, 264]} to={[x - 1, y + 54]} lines={['wood, pads', 'apart']} />
      <Call
        at={[354, 22]}
        anchor="end"
        from={[318, 28]}
        to={[x + 52, y - 30]}
        lines={['hose, slack']}
      />
    </Frame>
  )
}
