import { Dimension } from '../Dimension.tsx'
import { Leg } from '../Leg.tsx'
import { Frame, Words } from './parts.tsx'

// Invented, as in the sag calculator's first worked case: hanging 150, bike alone 126 to 132, rider on 112 to 118 mm.
const SCALE = 1050
const SEAL = 224
const lengths = [
  { x: 46, exposed: 0.15, name: ['wheel', 'hanging'] },
  { x: 152, exposed: 0.129, band: [0.126, 0.132], name: ['bike alone'] },
  { x: 272, exposed: 0.115, band: [0.112, 0.118], name: ['rider on'] },
] as const

export default function SagLengths() {
  const top = SEAL - 0.15 * SCALE
  return (
    <Frame
      height={300}
      label="Three lengths of exposed tube on one line of dust seals, to scale: the wheel hanging is the longest, the bike alone is shorter, with the rider on it is shortest. At the two settled ones a shaded band lies between the reading after a push down and the one after a lift."
    >
      <line class="guide" x1="20" x2="352" y1={top} y2={top} />
      {lengths.map((leg) => (
        <g key={leg.x}>
          <Leg
            x={leg.x}
            seal={SEAL}
            scale={SCALE}
            exposed={leg.exposed}
            tubeDiameter={0.043}
            state="now"
            label=""
            {...('band' in leg ? { band: leg.band } : {})}
          />
          <Words at={[leg.x, SEAL + 52]} anchor="middle" lines={leg.name} />
          {'band' in leg && (
            <>
              <line
                class="now"
                x1={leg.x - 38}
                x2={leg.x + 38}
                y1={SEAL - leg.band[1] * SCALE}
                y2={SEAL - leg.band[1] * SCALE}
              />
              <line
                class="now"
                x1={leg.x - 38}
                x2={leg.x + 38}
                y1={SEAL - leg.band[0] * SCALE}
                y2={SEAL - leg.band[0] * SCALE}
              />
              <Dimension
                from={[leg.x + 44, SEAL - leg.exposed * SCALE]}
                to={[leg.x + 44, top]}
                text="sag"
                state="now"
              />
            </>
          )}
        </g>
      ))}
      <Words
        at={[152, SEAL - 0.126 * SCALE + 18]}
        anchor="middle"
        lines={['lifted', 'pushed']}
        tone="quiet"
      />
    </Frame>
  )
}
