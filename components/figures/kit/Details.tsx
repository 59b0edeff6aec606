import type { ComponentChildren } from 'preact'
import type { BikePicture } from '../../../src/calculators/bike-picture.ts'
import type { Say } from '../../../src/calculators/say.ts'
import { followed } from './followed.tsx'
import { ContactPatch, patchMagnification } from './ContactPatch.tsx'
import { Leg } from './Leg.tsx'
import { sideViewScale } from './SideView.tsx'

interface DetailsProps {
  now: BikePicture
  before?: BikePicture | null
  say: Say
  label: string
  /** what the magnified parts show; the magnifications are added */
  caption: ComponentChildren
}

const SEAL = 126
const LEG_ROOM = 104
const PATCH = { x: 196, y: 92, room: 154 }
const LEG_STEPS = [1, 2, 3, 4, 5]

const exposedOf = ({ fork, frontTravel }: BikePicture): number => fork.exposedTube - frontTravel

/** The largest whole magnification at which the exposed tube fits. */
function legMagnification(pictures: readonly BikePicture[], scale: number): number {
  const longest = Math.max(...pictures.map((picture) => exposedOf(picture) + Math.max(0, -(picture.geometry.tubeRaise ?? 0))))
  return LEG_STEPS.filter((times) => longest * scale * times <= LEG_ROOM).at(-1) ?? 1
}

function DrawnDetails({ now, before, say, label, caption }: DetailsProps) {
  const scale = sideViewScale(now)
  const both = before ? [before, now] : [now]
  const times = legMagnification(both, scale)
  const patch = patchMagnification(
    both.map(({ pose }) => pose.trail),
    scale,
    PATCH.room,
  )
  const leg = (picture: BikePicture, state: 'now' | 'before', x: number) => (
    <Leg
      x={x}
      seal={picture.fork.upsideDown ? SEAL - LEG_ROOM + 30 : SEAL}
      scale={scale * times}
      exposed={exposedOf(picture)}
      tubeDiameter={picture.fork.tubeDiameter}
      state={state}
      text={say.quantity(exposedOf(picture), 'mm', 1)}
      tubeRaise={picture.geometry.tubeRaise ?? 0}
      upsideDown={picture.fork.upsideDown}
    />
  )
  return (
    <figure class="fig">
      <svg viewBox="0 0 360 172" role="img" aria-label={label}>
        {before && leg(before, 'before', 32)}
        {leg(now, 'now', before ? 112 : 60)}
        <ContactPatch
          now={now.pose}
          before={before ? before.pose : null}
          radius={now.geometry.frontRadius}
          contact={[PATCH.x, PATCH.y]}
          room={PATCH.room}
          scale={scale}
          say={(trail) => say.quantity(trail, 'mm', 1)}
        />
      </svg>
      <figcaption>
        {caption} Left: the leg at the mark, ×{times} the drawing above. Right: the ground under the front tyre, ×{patch}.
      </figcaption>
    </figure>
  )
}

/** The two places where a change of a few millimetres can be seen: the leg at the mark, and the ground at the front contact. */
export const Details = followed(DrawnDetails)
