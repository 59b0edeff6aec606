import { Frame } from './parts.tsx'
import { LevelOnScale } from './weighing.tsx'

export default function Weigh() {
  return (
    <Frame
      height={268}
      label="The front wheel on the scale and the rear wheel on boards of the same height. On each, a stop stands ahead of the tyre and behind it, a finger’s width clear. One person keeps a hand at the front brake."
    >
      <LevelOnScale scale={150} left={66} floor={212} />
    </Frame>
  )
}
