import { Dimension } from '../Dimension.tsx'
import { direction } from '../state.ts'
import { tailLine } from '../side/SideBike.tsx'
import { Bike } from './bike.tsx'
import { Floor, Frame, Ring } from './parts.tsx'

const FLOOR = 200

export default function ReadingPlaces() {
  return (
    <Frame
      height={250}
      label="Four places to read: exposed fork tube from dust seal to lower yoke, tube above the upper yoke, rear axle to a line on the tail, and wheelbase from axle to axle along the floor."
    >
      <Bike scale={160} origin={[61, FLOOR]}>
        {({ spot }, shape) => {
          const [seal, yoke, top, rear, front] = [
            spot(shape.seal),
            spot(shape.lowerYoke),
            spot(shape.tubeTop),
            spot(shape.rearAxle),
            spot(shape.frontAxle),
          ]
          const [ux, uy] = direction(seal, yoke)
          const tail = spot(tailLine(shape))
          const ahead: readonly [number, number] = [seal[0] - uy * 12, seal[1] + ux * 12]
          const up: readonly [number, number] = [yoke[0] - uy * 12, yoke[1] + ux * 12]
          return (
            <>
              <line
                class="mark"
                x1={yoke[0] + uy * 7 + ux * 2}
                y1={yoke[1] - ux * 7 + 3}
                x2={yoke[0] - uy * 7 + ux * 2}
                y2={yoke[1] + ux * 7 + 3}
              />
              <Dimension from={ahead} to={up} text="" state="now" />
              <Ring at={[ahead[0] + 22, (ahead[1] + up[1]) / 2]} number={1} />
              <Ring at={[top[0] + 18, top[1] - 10]} number={2} />
              <line class="leader" x1={top[0]} y1={top[1]} x2={top[0] + 9} y2={top[1] - 6} />
              <line class="mark" x1={tail[0] - 7} x2={tail[0] + 7} y1={tail[1]} y2={tail[1]} />
              <Dimension from={rear} to={tail} text="" state="now" />
              <Ring at={[rear[0] - 16, (rear[1] + tail[1]) / 2 - 14]} number={3} />
              <Dimension
                from={[rear[0], FLOOR + 5]}
                to={[front[0], FLOOR + 5]}
                offset={16}
                text=""
                state="now"
              />
              <Ring at={[(rear[0] + front[0]) / 2, FLOOR + 34]} number={4} />
            </>
          )
        }}
      </Bike>
      <Floor from={0} to={360} y={FLOOR} />
    </Frame>
  )
}
