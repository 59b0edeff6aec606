import type { ComponentChildren } from 'preact'
import type { BikePicture } from '../bikes/picture.ts'
import type { Say } from '../units/say.ts'
import { followed } from './followed.tsx'
import { ContactPatch, patchMagnification } from './ContactPatch.tsx'
import { aboveMark, Leg } from './Leg.tsx'
import { sideViewScale } from './SideView.tsx'

interface DetailsProps {
  now: BikePicture
  before?: BikePicture | null
  say: Say
  label: string
  /** what the magnified parts show; the magnifications are added */
  caption: ComponentChildren
}

/** Room for the legs, from their caps to the word below them, and for their exposed tubes. */
const LEG_TOP = 6
const LEG_ROOM = 96
const FEET = 44
/** The ground at the tyre, and the room for two trails below it. */
const TRAILS = 90
const PATCH = { x: 208, y: 128, room: 142 }
const LEG_STEPS = [1, 2, 3, 4, 5]

const exposedOf = ({ fork, frontTravel }: BikePicture): number => fork.exposedTube - frontTravel

/** The largest whole magnification at which the exposed tube fits. */
function legMagnification(pictures: readonly BikePicture[], scale: number): number {
  const longest = Math.max(...pictures.map(exposedOf))
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
  const { upsideDown } = now.fork
  const above = LEG_TOP + aboveMark(upsideDown) * scale * times
  const seal = upsideDown ? above : above + LEG_ROOM
  const raised = (by: number): { by: number; text: string } => ({
    by,
    text: say.change(by, 'mm', 1),
  })
  const leg = (picture: BikePicture, state: 'now' | 'before', x: number) => (
    <Leg
      x={x}
      seal={seal}
      scale={scale * times}
      exposed={exposedOf(picture)}
      tubeDiameter={picture.fork.tubeDiameter}
      state={state}
      text={say.quantity(exposedOf(picture), 'mm', 1)}
      raise={raised(picture.geometry.tubeRaise ?? 0)}
      upsideDown={upsideDown}
    />
  )
  return (
    <figure class="fig">
      <svg
        viewBox={`0 0 360 ${Math.max(Math.ceil(above + LEG_ROOM + FEET), PATCH.y + TRAILS)}`}
        role="img"
        aria-label={label}
      >
        {before && leg(before, 'before', 32)}
        {leg(now, 'now', before ? 120 : 60)}
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
        {caption} Left: the leg at the mark, ×{times} the drawing above. Right: the ground under the
        front tyre, ×{patch}.
      </figcaption>
    </figure>
  )
}

/** The two places where a change of a few millimetres can be seen: the leg at the mark, and the ground at the front contact. */
export const Details = followed(DrawnDetails)
