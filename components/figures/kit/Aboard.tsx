import type { BikePicture } from '../../../src/calculators/bike-picture.ts'
import type { Say } from '../../../src/calculators/say.ts'
import type { Projection } from './projection.ts'
import { round } from './state.ts'

const ARM = 5

/** Where each person or load aboard acts: a cross, its name and mass, and the plumb line to the ground. */
export function Aboard({ places, projection, say }: { places: NonNullable<BikePicture['aboard']>; projection: Projection; say: Say }) {
  return (
    <g>
      {places.map((place, index) => {
        const [x, y] = projection.spot(place)
        const crowded = x < 135
        const rightmost = places.every((other) => other === place || other.x < place.x)
        return (
          <g key={index}>
            <line class="plumb" x1={round(x)} x2={round(x)} y1={round(y)} y2={projection.ground} />
            <path class="now thick" d={`M${round(x - ARM)} ${round(y)} H${round(x + ARM)} M${round(x)} ${round(y - ARM)} V${round(y + ARM)}`} />
            <text
              class={rightmost || crowded ? 'start halo' : 'end halo'}
              x={round(crowded ? 2 : x + (rightmost ? 7 : -7))}
              y={round(y)}
              dy={crowded ? '-0.7em' : index % 2 === 0 ? '-0.4em' : '0.2em'}
            >
              {place.name} {say.quantity(place.mass, 'kg', 0)}
            </text>
          </g>
        )
      })}
    </g>
  )
}
