import { Frame } from './parts.tsx'
import { RaisedOnPlatform } from './weighing.tsx'

export default function WeighPlatform() {
  return (
    <Frame
      height={330}
      label="The bike with its rear wheel on a firm platform and its front wheel on the scale. On the platform and on the scale a stop stands ahead of the tyre and behind it, a finger’s width clear. The platform is as long as the wheel. Straps from both sides of the frame are hooked on and slack. One person keeps a hand on the front brake."
    >
      <RaisedOnPlatform scale={138} left={72} floor={270} />
    </Frame>
  )
}
