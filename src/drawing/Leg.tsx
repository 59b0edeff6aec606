import { TUBE_ABOVE_YOKE } from './bikeShape.ts'
import { Break } from './Break.tsx'
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
  /** how far the tube was slid up through the yokes since the mark was made [m], and its value written. With it the leg is drawn up to its cap: the tube keeps its length, and the yokes stand that much lower on it. */
  raise?: { by: number; text: string }
  /** upside down: the thick tube is on top, and the exposed tube is read from the seal down to the axle clamp */
  upsideDown?: boolean
  /** places [m from the seal] to shade, such as a friction band */
  band?: readonly [number, number]
  /** side on which the dimension stands */
  side?: 'left' | 'right'
}

const YOKE = 0.026
const STUB = 0.03
/** What is drawn above the lower yoke of a leg that ends in a break [m]. */
const TOP = 0.02
/** The yokes are drawn this near to each other [m], with a break between them. */
const GAP = 0.022
/** On an upside-down leg, outer tube between seal and lower yoke [m]. */
const BELOW_YOKE = 0.04

/** Room that a leg drawn up to its cap takes above its mark, or on an upside-down one above its seal [m]. */
export const aboveMark = (upsideDown: boolean): number =>
  2 * YOKE + GAP + TUBE_ABOVE_YOKE + (upsideDown ? BELOW_YOKE : 0)

interface Box {
  x: number
  y: number
  width: number
  height: number
}

function Part({
  box: { x, y, width, height },
  name,
  rx = 0,
}: {
  box: Box
  name: string
  rx?: number
}) {
  return (
    <rect
      class={name}
      x={round(x - width / 2)}
      y={round(y)}
      width={round(width)}
      height={round(height)}
      rx={rx}
    />
  )
}

/** Where the tube with the yokes on it stands, from its lowest drawn place up [viewBox units]. */
function heights({ seal, scale, exposed, raise, upsideDown = false }: LegProps) {
  const mark = upsideDown ? seal + exposed * scale : seal - exposed * scale
  const foot = upsideDown ? seal - BELOW_YOKE * scale : mark
  const lower = foot + ((raise?.by ?? 0) - YOKE) * scale
  const upper = lower - (GAP + YOKE) * scale
  const top = raise ? foot - (2 * YOKE + GAP + TUBE_ABOVE_YOKE) * scale : lower - TOP * scale
  return { mark, lower, upper, top }
}

function Yokes({ props, width }: { props: LegProps; width: number }) {
  const { x, scale, state, raise } = props
  const { lower, upper } = heights(props)
  const name = state === 'now' ? 'metal' : 'before'
  const yoke = (y: number, which: string) => (
    <Part box={{ x, y, width, height: YOKE * scale }} name={`${name} ${which}-yoke`} rx={2} />
  )
  return (
    <>
      {yoke(lower, 'lower')}
      {raise && yoke(upper, 'upper')}
    </>
  )
}

/** How much more of the tube stands out than at the mark: from the upper yoke to the line where its edge was. */
function StandsOut({ props, out }: { props: LegProps; out: number }) {
  const { x, scale, state, raise, tubeDiameter } = props
  if (!raise || raise.by === 0) return null
  const { upper, top } = heights(props)
  const was = top + TUBE_ABOVE_YOKE * scale
  const half = (tubeDiameter * scale) / 2
  return (
    <>
      <line
        class="guide"
        x1={round(x - half)}
        x2={round(x + out)}
        y1={round(was)}
        y2={round(was)}
      />
      {/* beside a leg that stood before there is another, and no room for its value */}
      <Dimension
        from={[x + out, upper]}
        to={[x + out, was]}
        text={state === 'now' ? raise.text : ''}
        state={state}
      />
    </>
  )
}

/**
 * One fork leg, upright, to scale: the tube between seal and lower yoke with the reference mark across it and its dimension.
 * The seal stays where it is told, so that two legs side by side show the change against a common line.
 */
export function Leg(props: LegProps) {
  const {
    x,
    seal,
    scale,
    tubeDiameter,
    state,
    text,
    label = state,
    raise,
    upsideDown = false,
    band,
    side = 'right',
  } = props
  const tube = tubeDiameter * scale
  const outer = tube * 1.3
  const { mark, lower, top } = heights(props)
  const stub = STUB * scale
  const held = state === 'now' ? 'now fill' : 'before'
  const thick = state === 'now' ? 'now solid' : 'before'
  const inYokes = upsideDown ? outer : tube
  const yokes = inYokes * (upsideDown ? 1.35 : 1.7)
  // the value turned along its line stands between the line and the yokes
  const out = (side === 'right' ? 1 : -1) * (yokes / 2 + 17)
  return (
    <g class="leg">
      {raise && (
        <Part
          box={{ x, y: top - 4, width: inYokes * 0.7, height: 4 }}
          name={state === 'now' ? 'metal' : 'before'}
        />
      )}
      <Part
        box={{
          x,
          y: upsideDown ? seal : top,
          width: tube,
          height: Math.abs((upsideDown ? mark : seal) - (upsideDown ? seal : top)),
        }}
        name={`${held} leg-tube`}
      />
      {band && (
        <Part
          box={{
            x,
            y: seal - band[1] * scale,
            width: tube - 1.6,
            height: (band[1] - band[0]) * scale,
          }}
          name="band"
        />
      )}
      {upsideDown ? (
        <>
          <Part
            box={{ x, y: top, width: outer, height: seal - top }}
            name={`${thick} leg-outer`}
            rx={1.5}
          />
          <Part box={{ x, y: mark, width: outer, height: stub * 0.7 }} name={thick} rx={1.5} />
        </>
      ) : (
        <Part box={{ x, y: seal, width: outer, height: stub }} name={thick} rx={1.5} />
      )}
      <Break x={x} y={raise ? lower - (GAP * scale) / 2 : top} width={inYokes} />
      <Yokes props={props} width={yokes} />
      <Mark at={[x, mark]} width={tube * 1.45} state={state} />
      {text !== undefined && (
        <Dimension from={[x + out, seal]} to={[x + out, mark]} text={text} state={state} turned />
      )}
      <StandsOut props={props} out={out} />
      <text
        class={`middle ${state}`}
        x={round(x)}
        y={round((upsideDown ? mark + stub * 0.7 : seal + stub) + 3)}
        dy="0.9em"
      >
        {label}
      </text>
    </g>
  )
}
