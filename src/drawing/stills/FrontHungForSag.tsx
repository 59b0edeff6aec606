import { FLOOR, FRONT_HUNG, HungBike, SCALE, StandsNamed } from './hung.tsx'
import { Call, Frame, Words } from './parts.tsx'
import { WrongStand } from './supports.tsx'

export default function FrontHungForSag() {
  const { at, view, shape } = FRONT_HUNG
  const [head, pad] = [at('headGusset'), at('railFront')]
  const [rear, axle, seal, yoke] = [
    shape.rearAxle,
    shape.frontAxle,
    shape.seal,
    shape.lowerYoke,
  ].map(view.spot) as [[number, number], [number, number], [number, number], [number, number]]
  const low = axle[1] + shape.frontRadius * SCALE
  return (
    <Frame
      height={314}
      label="The bike from its right side, hung by its frame so that the front wheel hangs at full extension and clear of the floor. A stand under each frame tube below the engine and a strap from each side of the frame to a beam carry it; the rear is on a paddock stand under its axle. Nothing touches the tyre, the axle or the fork: a stand under the axle is crossed out."
    >
      <HungBike of={FRONT_HUNG} end="front" />
      <WrongStand at={[axle[0] + 6, axle[1] + 6]} floor={FLOOR} half={16} />
      <Call
        at={[6, 18]}
        from={[84, 42]}
        to={[head[0] - 15, head[1] - 62]}
        lines={['straps from the frame', 'up to a strong point']}
      />
      <Call
        at={[354, 74]}
        anchor="end"
        from={[322, 99]}
        to={[(seal[0] + yoke[0]) / 2 + 3, (seal[1] + yoke[1]) / 2]}
        lines={['fork fully', 'extended']}
      />
      <StandsNamed rear={rear} pad={pad} />
      <Words
        at={[axle[0] + 30, FLOOR + 22]}
        anchor="middle"
        lines={['nothing under', 'axle or fork']}
      />
      <line class="leader" x1={axle[0] + 30} x2={axle[0] + 30} y1={FLOOR + 10} y2={low - 2} />
    </Frame>
  )
}
