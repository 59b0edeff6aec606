import { layoutFork } from './forkLayout.ts'
import type { ForkLayout, ForkLeg, Piece } from './forkLayout.ts'
import SpringCoils from './SpringCoils.tsx'

export interface ForkSectionProps {
  leg: ForkLeg
  state: 'now' | 'before'
  /** centre line, and the cap's seat, in drawing units */
  x: number
  top: number
  /** drawing units per metre: along the leg, and across it (say in the caption when they differ) */
  scale: number
  across: number
  /** depth [m] at which a break line ends the drawing; absent: down to the foot */
  cut?: number
}

/** Maps metres of a leg to the drawing. */
interface Frame {
  /** depth [m] to y */
  y(depth: number): number
  /** width [m] to drawing units */
  w(width: number): number
  x: number
}

const round = (value: number): number => Math.round(value * 100) / 100

/** A box on the centre line between two depths. */
function Block({
  frame,
  piece,
  width,
  name,
}: {
  frame: Frame
  piece: Piece
  width: number
  name: string
}) {
  const w = frame.w(width)
  return (
    <rect
      class={name}
      x={round(frame.x - w / 2)}
      y={round(frame.y(piece.from))}
      width={round(w)}
      height={round(Math.max(0, frame.y(piece.to) - frame.y(piece.from)))}
    />
  )
}

/** Two walls of a tube in section. */
function Walls({
  frame,
  piece,
  outer,
  bore,
  name,
}: {
  frame: Frame
  piece: Piece
  outer: number
  bore: number
  name: string
}) {
  const wall = round((frame.w(outer) - frame.w(bore)) / 2)
  const y = round(frame.y(piece.from))
  const height = round(Math.max(0, frame.y(piece.to) - frame.y(piece.from)))
  return (
    <>
      <rect
        class={name}
        x={round(frame.x - frame.w(outer) / 2)}
        y={y}
        width={wall}
        height={height}
      />
      <rect
        class={name}
        x={round(frame.x + frame.w(bore) / 2)}
        y={y}
        width={wall}
        height={height}
      />
    </>
  )
}

// Diameters that no input tells: the wide tube's wall, and the running clearance of the spring.
const WIDE_WALL = 0.005
const CLEARANCE = 0.001
const DEFAULT_WIRE = 0.0045
const ROD = 0.012

function Tubes({
  leg,
  layout,
  frame,
  end,
}: {
  leg: ForkLeg
  layout: ForkLayout
  frame: Frame
  end: number
}) {
  const wideBore = leg.tubeDiameter + 0.0005
  const wide = wideBore + 2 * WIDE_WALL
  const held = (piece: Piece): Piece => ({ from: piece.from, to: Math.min(piece.to, end) })
  const [outer, inner] = leg.upsideDown
    ? [layout.upper, layout.lower]
    : [layout.lower, layout.upper]
  return (
    <>
      <Walls frame={frame} piece={held(outer)} outer={wide} bore={wideBore} name="part tube-wide" />
      <Walls
        frame={frame}
        piece={held(inner)}
        outer={leg.tubeDiameter}
        bore={leg.boreDiameter}
        name="part tube-inner"
      />
      {layout.lower.to <= end && (
        <Block
          frame={frame}
          piece={{ from: layout.lower.to, to: layout.lower.to + 0.012 }}
          width={wide}
          name="part tube-wide"
        />
      )}
    </>
  )
}

/** Oil between its surface and the foot; wider below the end of the inner tube of a conventional leg. */
function Oil({
  leg,
  layout,
  frame,
  end,
}: {
  leg: ForkLeg
  layout: ForkLayout
  frame: Frame
  end: number
}) {
  if (leg.oilDepth === undefined) return null
  const bottom = Math.min(layout.lower.to, end)
  const step = leg.upsideDown ? bottom : Math.min(layout.upper.to, bottom)
  const surface = frame.y(leg.oilDepth)
  const reach = frame.w(leg.boreDiameter) / 2
  return (
    <>
      <Block
        frame={frame}
        piece={{ from: leg.oilDepth, to: step }}
        width={leg.boreDiameter}
        name="oil"
      />
      {step < bottom && (
        <Block
          frame={frame}
          piece={{ from: step, to: bottom }}
          width={leg.tubeDiameter}
          name="oil"
        />
      )}
      <line
        class="oil-line"
        x1={round(frame.x - reach)}
        x2={round(frame.x + reach)}
        y1={round(surface)}
        y2={round(surface)}
      />
    </>
  )
}

/** The drilled tube of a damper-rod leg: its holes near the foot and below the head. */
function Holes({ from, to, frame }: { from: number; to: number; frame: Frame }) {
  const radius = round(frame.w(0.0032))
  return (
    <>
      {[from + 0.022, to - 0.03, to - 0.016].map((depth) => (
        <circle
          key={depth}
          class="part hole"
          cx={round(frame.x)}
          cy={round(frame.y(depth))}
          r={radius}
        />
      ))}
    </>
  )
}

/** What the spring sits on, and what stands in the foot: a drilled tube, a cartridge whose rod hangs from the cap, or a plain seat in a leg without a damper. */
function Damper({
  leg,
  layout,
  frame,
  end,
}: {
  leg: ForkLeg
  layout: ForkLayout
  frame: Frame
  end: number
}) {
  const bottom = Math.min(layout.lower.to, end)
  if ((leg.damper === 'none' && !leg.spring) || layout.seat >= bottom) return null
  const cartridge = leg.damper === 'cartridge'
  const body = cartridge ? leg.boreDiameter * 0.74 : ROD * 1.4
  const whole = layout.lower.to <= end
  return (
    <>
      {cartridge && (
        <Block
          frame={frame}
          piece={{ from: 0, to: Math.min(layout.seat + 0.06, bottom) }}
          width={ROD}
          name="part damper-rod"
        />
      )}
      <Block
        frame={frame}
        piece={{ from: layout.seat, to: bottom }}
        width={body}
        name="part damper"
      />
      {cartridge && bottom > layout.seat + 0.07 && (
        <Block
          frame={frame}
          piece={{ from: layout.seat + 0.06, to: layout.seat + 0.068 }}
          width={body}
          name="part piston"
        />
      )}
      {leg.damper === 'rod' && bottom > layout.seat + 0.06 && (
        <Holes from={layout.seat} to={bottom} frame={frame} />
      )}
      <Block
        frame={frame}
        piece={{ from: layout.seat, to: Math.min(layout.seat + 0.012, bottom) }}
        width={leg.boreDiameter * 0.94}
        name="part damper"
      />
      {whole && leg.damper !== 'none' && (
        <Block
          frame={frame}
          piece={{ from: layout.lower.to - 0.004, to: layout.lower.to + 0.012 }}
          width={0.009}
          name="part bolt"
        />
      )}
    </>
  )
}

function Cap({ leg, layout, frame }: { leg: ForkLeg; layout: ForkLayout; frame: Frame }) {
  const hex = leg.boreDiameter * 0.72
  const bore = leg.boreDiameter
  return (
    <>
      <Block
        frame={frame}
        piece={{ from: -0.014, to: 0 }}
        width={(leg.upsideDown ? leg.tubeDiameter : bore) + 0.008}
        name="part cap"
      />
      <Block frame={frame} piece={{ from: -0.024, to: -0.014 }} width={hex} name="part cap" />
      {layout.cap.to > 0 && (
        <Block
          frame={frame}
          piece={{ from: 0, to: layout.cap.to }}
          width={bore * 0.8}
          name="part cap"
        />
      )}
    </>
  )
}

function Stack({ leg, layout, frame }: { leg: ForkLeg; layout: ForkLayout; frame: Frame }) {
  const wire = leg.spring?.wireDiameter ?? DEFAULT_WIRE
  const coilDiameter = leg.boreDiameter - 2 * CLEARANCE
  return (
    <>
      {layout.spacer && (
        <Block frame={frame} piece={layout.spacer} width={coilDiameter * 0.86} name="part spacer" />
      )}
      {layout.washers.map((washer) => (
        <Block
          key={washer.from}
          frame={frame}
          piece={washer}
          width={coilDiameter}
          name="part washer"
        />
      ))}
      {layout.spring && leg.spring && (
        <SpringCoils
          x={frame.x}
          radius={frame.w(coilDiameter - wire) / 2}
          from={frame.y(layout.spring.from)}
          to={frame.y(layout.spring.to)}
          wire={frame.y(wire) - frame.y(0)}
          coils={leg.spring.coils ?? leg.spring.freeLength / (2 * wire)}
        />
      )}
    </>
  )
}

/** A long break: the part goes on. */
function Break({ frame, depth, width }: { frame: Frame; depth: number; width: number }) {
  const y = frame.y(depth)
  const half = frame.w(width) / 2 + 6
  const q = half / 2
  return (
    <path
      class="break"
      d={`M${round(frame.x - half)} ${round(y)} q${round(q / 2)} -5 ${round(q)} 0 t${round(q)} 0 t${round(q)} 0 t${round(q)} 0`}
    />
  )
}

/**
 * One fork leg in section, drawn to scale from its lengths: tubes, cap with its adjuster, spacer, washers, spring, damper and oil. Place it inside
 * an `<svg>`; nothing in it has an id or a colour of its own.
 */
export default function ForkSection({ leg, state, x, top, scale, across, cut }: ForkSectionProps) {
  const layout = layoutFork(leg)
  const frame: Frame = { x, y: (depth) => top + depth * scale, w: (width) => width * across }
  const foot = layout.lower.to + 0.012
  const end = Math.min(cut ?? foot, foot)
  const wide = leg.tubeDiameter + 2 * WIDE_WALL
  const parts = { leg, layout, frame, end }
  return (
    <g class={`fork-section ${state}`}>
      <Oil {...parts} />
      <Tubes {...parts} />
      <Damper {...parts} />
      <Stack {...parts} />
      {!leg.open && <Cap {...parts} />}
      <line
        class="centre"
        x1={x}
        x2={x}
        y1={round(frame.y(leg.open ? -0.012 : -0.04))}
        y2={round(frame.y(end) + 8)}
      />
      {end < foot && <Break frame={frame} depth={end} width={wide} />}
    </g>
  )
}
