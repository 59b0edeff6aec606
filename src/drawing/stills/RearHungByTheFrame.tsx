import { FLOOR, HungBike, REAR_HUNG } from './hung.tsx'
import { Call, Frame, Words } from './parts.tsx'
import { WrongStand } from './supports.tsx'

export default function RearHungByTheFrame() {
  const { at, view, shape } = REAR_HUNG
  const [held, pad, grip] = [at('seatJunction'), at('railRear'), at('grip')]
  const [rear, front, shock] = [shape.rearAxle, shape.frontAxle, shape.pivot].map(view.spot) as [
    [number, number],
    [number, number],
    [number, number],
  ]
  return (
    <Frame
      height={314}
      label="The bike from its right side, hung by its frame so that the rear wheel hangs free. A stand under each frame tube behind the engine and a strap from each side of the rear frame to a beam carry it; the front wheel stands between wedges, and the front brake lever is tied to the grip. A stand under the rear axle and the swing arm is crossed out."
    >
      <HungBike of={REAR_HUNG} end="rear" />
      <path class="tie-band" d={`M${grip[0]} ${grip[1] - 4}v12`} />
      <WrongStand at={[rear[0] - 2, rear[1] + 6]} floor={FLOOR} half={16} />
      <Call
        at={[354, 18]}
        anchor="end"
        from={[286, 42]}
        to={[held[0] + 15, held[1] - 60]}
        lines={['straps from the frame', 'to a strong point']}
      />
      <Call
        at={[354, 78]}
        anchor="end"
        from={[268, 76]}
        to={[grip[0], grip[1] - 3]}
        lines={['front brake', 'tied on']}
      />
      <Words
        at={[rear[0] + 2, FLOOR + 22]}
        anchor="middle"
        lines={['nothing under', 'axle or arm']}
      />
      <Call
        at={[pad[0] + 20, FLOOR + 22]}
        anchor="middle"
        from={[pad[0], FLOOR + 10]}
        to={[pad[0], pad[1] + 4]}
        lines={['a stand under', 'each frame tube']}
      />
      <Words at={[front[0] + 8, FLOOR + 22]} anchor="middle" lines={['front wheel', 'chocked']} />
      <Call
        at={[6, 92]}
        from={[50, 112]}
        to={[shock[0] - 30, shock[1] + 2]}
        lines={['swing arm', 'hangs free']}
      />
    </Frame>
  )
}
