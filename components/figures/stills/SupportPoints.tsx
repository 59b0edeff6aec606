import { Bike, bikeAt } from './bike.tsx'
import { Call, Floor, Frame } from './parts.tsx'

const FLOOR = 230
/** Both wheels clear of the floor, the springs hanging. */
const RAISED = bikeAt(0, 0)

export default function SupportPoints() {
  return (
    <Frame
      height={262}
      label="The bike with both wheels clear of the floor: the rear on a paddock stand, a support stand under each side of the frame, a strap forward from the yokes. Nothing bears on the exhaust."
    >
      <Bike picture={RAISED} scale={150} origin={[64, FLOOR - 8]}>
        {({ spot }, shape) => {
          const axle = spot(shape.rearAxle)
          const frame = spot({ x: 0.8, z: 0.33 })
          const yoke = spot(shape.lowerYoke)
          return (
            <>
              <path class="stand" d={`M${axle[0]} ${axle[1]} L${axle[0] + 14} ${FLOOR} M${axle[0]} ${axle[1]} L${axle[0] - 36} ${FLOOR - 3} h-14`} />
              <circle class="now paper" cx={axle[0]} cy={axle[1]} r="4" />
              <path class="stand" d={`M${frame[0] - 17} ${FLOOR} L${frame[0]} ${frame[1] + 5} L${frame[0] + 17} ${FLOOR}`} />
              <rect class="now solid" x={frame[0] - 9} y={frame[1]} width="18" height="6" />
              <path class="strap" d={`M${yoke[0]} ${yoke[1]} L${352} ${FLOOR}`} />
              <Call at={[6, 18]} from={[44, 24]} to={[axle[0] - 18, axle[1] + 28]} lines={['paddock stand']} />
              <Call at={[138, 18]} from={[190, 40]} to={[frame[0], frame[1] + 2]} lines={['a stand under each', 'side of the frame']} />
              <Call at={[354, 58]} from={[334, 62]} to={[yoke[0] + 24, yoke[1] + 39]} anchor="end" lines={['strap']} />
            </>
          )
        }}
      </Bike>
      <Floor from={0} to={360} y={FLOOR} />
      <text class="middle quiet" x="180" y={FLOOR + 24}>
        where exactly, the maker’s manual says
      </text>
    </Frame>
  )
}
