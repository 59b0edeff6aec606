import { Dimension } from './Dimension.tsx'
import { Mark } from './Mark.tsx'
import { round } from './state.ts'

interface LegProps {
  /** the leg's centre line, and the height of the seal on the drawing (viewBox units, y down) */
  x: number
  seal: number
  /** viewBox units per metre; the caption must say what multiple of the other drawing that is */
  scale: number
  /** exposed tube, seal to reference mark [m] */
  exposed: number
  /** diameter of the sliding tube [m] */
  tubeDiameter: number
  state: 'now' | 'before'
  /** the exposed length, written */
  text?: string
  /** the word under the leg; the state by default */
  label?: string
  /** how far the tube was slid up through the yokes since the mark was made [m]: the yoke then stands below the mark */
  tubeRaise?: number
  /** upside down: the thick tube is on top, and the exposed tube is read from the seal down to the axle clamp */
  upsideDown?: boolean
  /** places [m from the seal] to shade, such as a friction band */
  band?: readonly [number, number]
  /** side on which the dimension stands */
  side?: 'left' | 'right'
}

// Below this length [viewBox units] the value stands beside its line instead of along it.
const ROOM_FOR_TEXT = 70
const YOKE = 0.026
const STUB = 0.03
const TOP = 0.02

/** The thick part: a slider below the seal, or on an upside-down fork the outer tube above it. */
function Outer({ x, y, width, height, state }: { x: number; y: number; width: number; height: number; state: 'now' | 'before' }) {
  return <rect class={state === 'now' ? 'now solid' : 'before'} x={round(x - width / 2)} y={round(y)} width={round(width)} height={round(height)} rx="1.5" />
}

function Yoke({ x, y, width, height, state }: { x: number; y: number; width: number; height: number; state: 'now' | 'before' }) {
  return <rect class={state === 'now' ? 'metal' : 'before'} x={round(x - width / 2)} y={round(y)} width={round(width)} height={round(height)} rx="2" />
}

/**
 * One fork leg, upright, to scale: the tube between seal and lower yoke with the reference mark across it and its dimension.
 * The seal stays where it is told, so that two legs side by side show the change against a common line.
 */
export function Leg({ x, seal, scale, exposed, tubeDiameter, state, text, label = state, tubeRaise = 0, upsideDown = false, band, side = 'right' }: LegProps) {
  const tube = tubeDiameter * scale
  const outer = tube * 1.3
  const mark = upsideDown ? seal + exposed * scale : seal - exposed * scale
  const yoke = upsideDown ? seal - STUB * scale - YOKE * scale : mark + (tubeRaise - YOKE) * scale
  const top = upsideDown ? yoke - (TOP + tubeRaise) * scale : Math.min(mark, yoke) - TOP * scale
  const bottom = upsideDown ? mark : seal
  const stub = STUB * scale
  const out = (side === 'right' ? 1 : -1) * Math.max(outer / 2 + 7, tube / 2 + 21)
  return (
    <g>
      <rect
        class={state === 'now' ? 'now fill' : 'before'}
        x={round(x - tube / 2)}
        y={round(upsideDown ? seal : top)}
        width={round(tube)}
        height={round(bottom - (upsideDown ? seal : top))}
      />
      {band && (
        <rect
          class="band"
          x={round(x - tube / 2 + 0.8)}
          y={round(seal - band[1] * scale)}
          width={round(tube - 1.6)}
          height={round((band[1] - band[0]) * scale)}
        />
      )}
      {upsideDown ? (
        <Outer x={x} y={top} width={outer} height={seal - top} state={state} />
      ) : (
        <Outer x={x} y={seal} width={outer} height={stub} state={state} />
      )}
      <Yoke x={x} y={yoke} width={tube * 1.7} height={YOKE * scale} state={state} />
      {upsideDown && <Outer x={x} y={mark} width={outer} height={stub * 0.7} state={state} />}
      <Mark at={[x, mark]} width={tube * 1.45} state={state} />
      {text !== undefined && <Dimension from={[x + out, seal]} to={[x + out, mark]} text={text} state={state} turned={Math.abs(mark - seal) > ROOM_FOR_TEXT} />}
      <text class={`middle ${state}`} x={round(x)} y={round((upsideDown ? mark + stub * 0.7 : seal + stub) + 3)} dy="0.9em">
        {label}
      </text>
    </g>
  )
}
