import { bikeShape } from '../bikeShape.ts'
import { projection } from '../projection.ts'
import { SideBike } from '../side/SideBike.tsx'
import { STATIC } from './bike.tsx'
import { Call, Floor, Frame, Ring, Words } from './parts.tsx'
import { HOLDER, Person } from './person.tsx'

const FLOOR = 266
const SCALE = 146
const SHAPE = bikeShape(STATIC)
const VIEW = projection(SCALE, [54, FLOOR])
const K = SCALE / 1000

/** The bike from above, its front to the right, and where people are. */
function Plan({ y }: { y: number }) {
  return (
    <g>
      <rect class="now fill" x="30" y={y - 6} width="84" height="12" rx="6" />
      <rect class="now fill" x="224" y={y - 5} width="80" height="10" rx="5" />
      <path
        class="metal"
        d={`M60 ${y - 8}C90 ${y - 16} 140 ${y - 14} 160 ${y - 10}L160 ${y + 10}C140 ${y + 14} 90 ${y + 16} 60 ${y + 8}Z`}
      />
      <path
        class="now fill"
        d={`M152 ${y - 10}C170 ${y - 20} 200 ${y - 18} 216 ${y - 8}L216 ${y + 8}C200 ${y + 18} 170 ${y + 20} 152 ${y + 10}Z`}
      />
      <path class="now thick" d={`M204 ${y - 46}L222 ${y - 18}L224 ${y + 18}L204 ${y + 46}`} />
      <path class="person-reach" d={`M318 ${y}L206 ${y - 44}M318 ${y}L206 ${y + 44}`} />
      <Ring at={[322, y]} number={1} />
      <Ring at={[118, y]} number={2} />
      <Ring at={[262, y + 38]} number={3} />
    </g>
  )
}

export default function BikeHeldUpright() {
  return (
    <Frame
      height={416}
      label="The bike on both wheels, without a stand: a helper stands in front of it, feet either side of the front wheel, both hands on the bar. From above: 1 the helper in front with both hands on the bar, 2 the rider in the seat, 3 the reader beside the fork, ready to step back."
    >
      <g transform={`translate(54 ${FLOOR}) scale(${K} ${-K})`}>
        <Person of={HOLDER} line={1.2 / K} part="far" />
      </g>
      <SideBike shape={SHAPE} projection={VIEW} />
      <g transform={`translate(54 ${FLOOR}) scale(${K} ${-K})`}>
        <Person of={HOLDER} line={1.2 / K} part="near" />
      </g>
      <Floor from={0} to={360} y={FLOOR} />
      <Call
        at={[6, 40]}
        from={[96, 64]}
        to={[208, 112]}
        lines={['both hands on the bar,', 'bike upright']}
      />
      <Plan y={346} />
      <Words at={[6, 298]} lines={['from above']} tone="quiet" />
      <Words at={[180, 408]} anchor="middle" lines={['1 holds the bar, 2 sits, 3 reads']} />
    </Frame>
  )
}
