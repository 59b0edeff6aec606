import type { JSX, RefObject } from 'preact'
import { useLayoutEffect, useState } from 'preact/hooks'

/** Height of a line of words on the drawing, and width of one of its letters [px]. */
const [LINE, WIDE] = [20, 7.7]
/** Places are tried so far from each other [px]. */
const STEP = 6

/** What a line of words must not cover on the stage: lettering, grips, points and what else stands on the drawing. */
const COVERED = 'text, circle, .exaggerate, .hint, .hand'

/** The place nearest to a grip at which a line of words covers nothing, by its left upper corner [px]; null where there is none. */
function freePlace(
  box: HTMLElement,
  grip: { x: number; y: number },
  long: number,
): { left: number; top: number } | null {
  const frame = box.getBoundingClientRect()
  const taken = [...box.querySelectorAll(COVERED)].map((each) => each.getBoundingClientRect())
  const free = (x: number, y: number): boolean =>
    taken.every(
      ({ left, right, top, bottom }) =>
        right <= x || left >= x + long || bottom <= y || top >= y + LINE,
    )
  let best: { left: number; top: number; far: number } | null = null
  for (let top = 0; top + LINE <= box.clientHeight; top += STEP)
    for (let left = 2; left + long <= box.clientWidth - 2; left += STEP) {
      const far = Math.hypot(left + long / 2 - grip.x, 2 * (top + LINE / 2 - grip.y))
      if ((best === null || far < best.far) && free(frame.left + left, frame.top + top))
        best = { left, top, far }
    }
  return best
}

interface ToldProps {
  part: string
  /** the middle of its grip on the stage [px] */
  grip: { x: number; y: number }
  box: RefObject<HTMLDivElement>
  /** what the drawings show: they are measured anew when it is another */
  drawn: unknown
}

/** Says once what to do, near the grip and where nothing is written; where there is no such place, not at all. */
export function Told({ part, grip: { x, y }, box, drawn }: ToldProps): JSX.Element | null {
  const text = `Pull ${part}, or use the slider`
  const [place, setPlace] = useState<{ left: number; top: number } | null>(null)
  useLayoutEffect(() => {
    if (box.current) setPlace(freePlace(box.current, { x, y }, text.length * WIDE))
  }, [box, x, y, text, drawn])
  return (
    place && (
      <p class="pull" style={{ left: `${place.left}px`, top: `${place.top}px` }}>
        {text}
      </p>
    )
  )
}
