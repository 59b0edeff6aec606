import type { ComponentType, JSX } from 'preact'
import { useMemo, useRef } from 'preact/hooks'
import { useFollowed } from './useFollowed.ts'

/** A block of a figure that, while it is out of sight, is drawn only once the values stand still. */
export function followed<P extends object>(Drawn: ComponentType<P>): (props: P) => JSX.Element {
  return function Followed(props: P): JSX.Element {
    const place = useRef<HTMLDivElement>(null)
    const shown = useFollowed(props, place)
    const drawn = useMemo(() => <Drawn {...shown} />, [shown])
    return (
      <div class="fig-block" ref={place}>
        {drawn}
      </div>
    )
  }
}
