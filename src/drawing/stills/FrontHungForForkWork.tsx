import { round } from '../state.ts'
import { BEAM, FLOOR, FRONT_HUNG, HungBike } from './hung.tsx'
import { Call, Floor, Frame, Words } from './parts.tsx'
import { Beam, Cross, Strap, SupportStand } from './supports.tsx'

/** The same from the front, looking past the wheel: half the distance between the frame's tubes, and heights above the floor [units]. */
const FRONT = { x: 184, floor: 536, beam: 354, tube: 42, pad: 44, head: 116 }

/** Both stands, both tubes and both straps, the engine hanging free between them. */
function FromTheFront() {
  const { x, floor, beam, tube, pad, head } = FRONT
  const side = (way: number): string =>
    `M${x + way * tube} ${floor - pad - 5}C${x + way * tube} ${floor - pad - 30} ${x + way * tube} ${floor - pad - 40} ${x + way * 30} ${floor - head + 20}L${x + way * 9} ${floor - head}`
  return (
    <g>
      <Beam from={x - 78} to={x + 78} y={beam} />
      <path
        class="bike-front metal"
        d={`M${x - 30} ${floor - pad - 14}h60l4 -30l-10 -34h-48l-10 34z`}
      />
      <path
        class="detail"
        d={[0, 1, 2, 3].map((fin) => `M${x - 24} ${floor - pad - 52 - fin * 6}h48`).join('')}
      />
      {[-1, 1].map((way) => (
        <g key={way}>
          <path class="frame-tube-edge" d={side(way)} />
          <path class="frame-tube" d={side(way)} />
        </g>
      ))}
      <rect class="metal" x={x - 9} y={floor - head - 14} width="18" height="30" rx="2" />
      {[-1, 1].map((way) => (
        <g key={way}>
          <Strap from={[x + way * 12, floor - head + 6]} to={[x + way * 62, beam]} />
          <SupportStand at={[x + way * tube, floor - pad]} floor={floor} half={20} />
        </g>
      ))}
      <Floor from={60} to={300} y={floor} />
      <Words at={[6, beam + 2]} lines={['from the', 'front']} tone="quiet" />
      <Call
        at={[354, beam + 44]}
        anchor="end"
        from={[284, beam + 40]}
        to={[x + 37, beam + 32]}
        lines={['one strap', 'each side']}
      />
      <Call
        at={[6, beam + 74]}
        from={[70, beam + 98]}
        to={[round(x - 22), floor - pad - 18]}
        lines={['nothing under', 'the engine']}
      />
    </g>
  )
}

export default function FrontHungForForkWork() {
  const { at, view, shape } = FRONT_HUNG
  const [head, pad] = [at('headGusset'), at('railFront')]
  const rear = view.spot(shape.rearAxle)
  const yoke = view.spot(shape.lowerYoke)
  return (
    <Frame
      height={552}
      label="The bike from its right side, hung by its frame for work on the fork: a stand under each of the two frame tubes below the engine, a strap from each side of the frame behind the steering head up to a beam, the rear on a paddock stand under its axle with wedges at the stand’s wheels, the front wheel clear. No strap on the yokes, no stand under the engine, the sump or the exhaust. Below, the same from the front: one stand and one strap on each side."
    >
      <HungBike of={FRONT_HUNG} end="front" />
      <Cross at={[yoke[0] + 4, yoke[1]]} />
      <Call
        at={[6, 18]}
        from={[84, 42]}
        to={[head[0] - 15, (head[1] + BEAM) / 2]}
        lines={['straps from the frame', 'up to a strong point']}
      />
      <Words
        at={[rear[0], FLOOR + 22]}
        anchor="middle"
        lines={['rear on its stand,', 'wheels chocked']}
      />
      <Call
        at={[pad[0], FLOOR + 22]}
        anchor="middle"
        from={[pad[0], FLOOR + 10]}
        to={[pad[0], pad[1] + 4]}
        lines={['a stand under each', 'frame tube']}
      />
      <Call
        at={[354, 92]}
        anchor="end"
        from={[322, 98]}
        to={[yoke[0] + 10, yoke[1]]}
        lines={['not the yokes']}
      />
      <FromTheFront />
    </Frame>
  )
}
