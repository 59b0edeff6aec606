import { Bike } from './bike.tsx'
import { Floor, Frame, Level, Words } from './parts.tsx'

const FLOOR = 196

export default function Levels() {
  return (
    <Frame
      height={232}
      label="A straight edge lies on the floor under both wheels, with a spirit level on it whose bubble stands in the middle."
    >
      <Bike scale={160} origin={[61, FLOOR - 9]} />
      <rect class="metal" x="6" y={FLOOR - 9} width="348" height="9" />
      <Level at={[177, FLOOR - 9]} width={66} />
      <Floor from={0} to={360} y={FLOOR} />
      <Words
        at={[180, FLOOR + 24]}
        anchor="middle"
        lines={['straight edge with a spirit level']}
        tone="quiet"
      />
    </Frame>
  )
}
