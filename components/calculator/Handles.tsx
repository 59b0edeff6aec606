import type { JSX, RefObject } from 'preact'
import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import { isAsked } from '../../src/machine/evaluate.ts'
import type { Handle, HandlePlace } from '../../src/drawing/handles.ts'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import { toSI } from '../../src/units/units.ts'
import { Hand } from './Hand.tsx'
import type { Held } from './Hand.tsx'
import { Told } from './Told.tsx'
import type { CalculatorState } from './useCalculator.ts'

/** A finger can set a length to about a millimetre at this scale [px per mm]; what is no length, to a step of its row. */
const FINEST = 1.5
/** Handles are at least this far from each other, centre to centre [px]. */
const APART = 46
/** From the part to the middle of its grip, and from there to the frame at least [px]. */
const LEAD = 30
const EDGE = 23

/** How a view is shown on the stage: where its origin is [px], and its size [px per viewBox unit]. */
interface Fit {
  left: number
  top: number
  scale: number
}

export interface HandlesProps {
  handles: readonly Handle<LooseFigureProps>[]
  /** what the figure draws; null while nothing can be computed */
  drawn: LooseFigureProps | null
  state: CalculatorState
  box: RefObject<HTMLDivElement>
  front: string
  /** the input that the reader has in hand */
  hand: string | null
}

/** Where each view is shown; those out of sight are left out. */
function fitsOf(box: HTMLElement): Record<string, Fit> {
  const frame = box.getBoundingClientRect()
  const fits: Record<string, Fit> = {}
  for (const view of box.querySelectorAll<HTMLElement>('[data-view]')) {
    const svg = view.querySelector<SVGSVGElement>('.fig > svg')
    const { width = 0, height = 0, left = 0, top = 0 } = svg?.getBoundingClientRect() ?? {}
    if (svg === null || width === 0) continue
    const shown = svg.viewBox.baseVal
    const scale = Math.min(width / shown.width, height / shown.height)
    fits[view.dataset['view']!] = {
      left: left - frame.left - box.clientLeft + (width - shown.width * scale) / 2,
      top: top - frame.top - box.clientTop + (height - shown.height * scale) / 2,
      scale,
    }
  }
  return fits
}

/** Measured when the box, a drawing's own size or the view changes; never in a frame in which a handle moves. */
function useFits(box: RefObject<HTMLDivElement>, front: string): Record<string, Fit> {
  const [fits, setFits] = useState<Record<string, Fit>>({})
  useLayoutEffect(() => {
    const element = box.current
    if (element === null) return
    // while nothing can be drawn, handles stay where they were, so that what was pulled can be pulled back
    const measure = (): void =>
      setFits((known) => (element.querySelector('.fig > svg') ? fitsOf(element) : known))
    measure()
    const sizes = new ResizeObserver(measure)
    for (const each of [element, ...element.querySelectorAll('.fig > svg')]) sizes.observe(each)
    const frames = new MutationObserver(measure)
    frames.observe(element, { subtree: true, attributeFilter: ['viewBox'] })
    return () => {
      sizes.disconnect()
      frames.disconnect()
    }
  }, [box, front])
  return fits
}

const SIDES = { left: [-1, 0], right: [1, 0], above: [0, -1], below: [0, 1] } as const

/** Where a grip is on the stage, and how far it moves there; null where the scale is too small for a finger. */
function heldAt(
  { input: id, axis, side }: Handle<LooseFigureProps>,
  { spot: [x, y], perUnit }: HandlePlace,
  { left, top, scale }: Fit,
  { state, width, height }: { state: CalculatorState; width: number; height: number },
): Omit<Held, 'value'> | null {
  const input = state.definition.inputs[id]
  if (input?.kind !== 'quantity') return null
  const grain =
    input.quantity === 'length' ? 1e-3 : toSI(input.step, input.unit) - toSI(0, input.unit)
  if (Math.abs(perUnit) * scale * grain < FINEST) return null
  const within = (at: number, size: number): number => Math.min(size - EDGE, Math.max(EDGE, at))
  return {
    input,
    x: within(left + x * scale + SIDES[side][0] * LEAD, width),
    y: within(top + y * scale + SIDES[side][1] * LEAD, height),
    pull: perUnit * scale,
    axis,
  }
}

/** The handles on the drawings in sight: each moves its input as its row does, by hand, by keys and by a screen reader. */
export function Handles({ handles, drawn, state, box, front, hand }: HandlesProps): JSX.Element {
  const fits = useFits(box, front)
  const [pulled, setPulled] = useState(false)
  if (hand !== null && !pulled) setPulled(true)
  const last = useRef(new Map<string, HandlePlace>())
  const inHand = useRef<string | null>(null)
  const size = { width: box.current?.clientWidth ?? 0, height: box.current?.clientHeight ?? 0 }
  const shown: { handle: Handle<LooseFigureProps>; held: Held }[] = []
  for (const handle of handles) {
    const fit = fits[handle.view]
    const input = state.definition.inputs[handle.input]
    const value = state.given[handle.input]
    if (!fit || !input || !isAsked(input, state.given) || typeof value !== 'number') continue
    const found = drawn && handle.at(drawn)
    // what cannot be drawn for a moment must not take the handle out of the hand
    const stays = drawn === null || inHand.current === handle.input
    const place = found ?? (stays ? last.current.get(handle.input) : null)
    if (!place) continue
    last.current.set(handle.input, place)
    const held = heldAt(handle, place, fit, { state, ...size })
    if (held && shown.every(({ held: { x, y } }) => Math.hypot(x - held.x, y - held.y) >= APART))
      shown.push({ handle, held: { ...held, value } })
  }
  return (
    <div class="hands">
      {shown.map(({ handle, held }) => (
        <Hand
          key={handle.input}
          handle={handle}
          held={held}
          state={state}
          take={(taken) => {
            inHand.current = taken ? handle.input : null
            if (!taken) setPulled(true)
          }}
        />
      ))}
      {shown[0] && !pulled && (
        <Told part={shown[0].handle.part} grip={shown[0].held} box={box} drawn={drawn} />
      )}
    </div>
  )
}
