import type { JSX } from 'preact'
import type { HandlePlace } from './handles.ts'
import SpringCoils from './SpringCoils.tsx'
import { round } from './state.ts'

/** Viewbox units per metre: a millimetre is wide enough for a finger, and 20 either way fit. */
export const PART_SCALE = 2600
/** Where a part's edge is with nothing changed, and where its drawing ends. */
export const PART_EDGE = 96
export const PART_FOOT = 206

type Look = 'now' | 'before'
export type PartKind = 'tubes' | 'preload' | 'shock' | 'tyre'

interface MovingProps {
  /** its centre line, and the height of its edge [viewBox units] */
  x: number
  edge: number
  look: Look
  /** its width, in shares of the part drawn alone */
  slim: number
}

const fill = (look: Look): string => (look === 'now' ? 'now fill' : 'before')
const metal = (look: Look): string => (look === 'now' ? 'metal' : 'before')

function Block({
  x,
  y,
  to,
  wide,
  name,
  round: rx = 2,
}: {
  x: number
  y: number
  to: number
  wide: number
  name: string
  round?: number
}) {
  return (
    <rect
      class={name}
      x={round(x - wide / 2)}
      y={round(y)}
      width={round(wide)}
      height={round(Math.max(0, to - y))}
      rx={rx}
    />
  )
}

/** For each part that can be changed: what it is called, the way its edge goes as the amount grows, and how it looks. */
const PARTS: Record<
  PartKind,
  { name: string; way: 1 | -1; wide: number; Moving(props: MovingProps): JSX.Element }
> = {
  tubes: {
    name: 'tube in the upper yoke',
    way: -1,
    wide: 104,
    Moving: ({ x, edge, look, slim }) => (
      <>
        <Block x={x} y={edge + 12} to={PART_FOOT} wide={104 * slim} name={fill(look)} />
        <Block x={x} y={edge} to={edge + 12} wide={80 * slim} name={metal(look)} />
      </>
    ),
  },
  preload: {
    name: 'spring under its cap',
    way: 1,
    wide: 84,
    Moving: ({ x, edge, look, slim }) => (
      <>
        <Block
          x={x}
          y={34}
          to={edge}
          wide={84 * slim}
          name={look === 'now' ? 'now solid' : 'before'}
        />
        <g class="coil-drawing">
          <SpringCoils
            x={x}
            radius={38 * slim}
            from={edge}
            to={PART_FOOT}
            wire={9 * Math.sqrt(slim)}
            coils={4}
          />
        </g>
      </>
    ),
  },
  shock: {
    name: 'eye of the shock',
    way: -1,
    wide: 46,
    Moving: ({ x, edge, look }) => (
      <>
        <Block x={x} y={edge + 40} to={PART_FOOT} wide={22} name={metal(look)} />
        <Block x={x} y={edge} to={edge + 46} wide={46} name={fill(look)} round={23} />
        <Block x={x} y={edge + 12} to={edge + 34} wide={22} name={fill(look)} round={11} />
      </>
    ),
  },
  tyre: {
    name: 'front axle over the ground',
    way: -1,
    wide: 44,
    Moving: ({ x, edge, look }) => (
      <>
        <Block x={x} y={edge + 44} to={PART_FOOT} wide={3} name={fill(look)} />
        <Block x={x} y={edge} to={edge + 44} wide={44} name={fill(look)} round={22} />
        <Block x={x} y={edge + 12} to={edge + 32} wide={20} name={fill(look)} round={10} />
      </>
    ),
  },
}

export const partName = (kind: PartKind): string => PARTS[kind].name
export const partWidth = (kind: PartKind, slim = 1): number => PARTS[kind].wide * slim

/** The height of a part's edge [viewBox units] with an amount of change [m]. */
export const partEdge = (kind: PartKind, amount: number): number =>
  PART_EDGE + PARTS[kind].way * amount * PART_SCALE

/** Where the amount can be pulled: at the right end of the part's edge. */
export const partPlace = (kind: PartKind, amount: number, x: number, slim = 1): HandlePlace => ({
  spot: [x + partWidth(kind, slim) / 2, partEdge(kind, amount)],
  perUnit: PARTS[kind].way * PART_SCALE,
})

interface PartMovedProps {
  kind: PartKind
  /** how much it was moved, now and before, where that is held [m] */
  amount: number
  before: number | null
  /** its centre line [viewBox units] */
  x: number
  slim?: number
  /** prefix of the ids within */
  prefix: string
}

/** A part that is changed, enlarged: its left half as it was before, its right half as it is now, and a dotted line where its edge was with nothing changed. */
export function PartMoved({ kind, amount, before, x, slim = 1, prefix }: PartMovedProps) {
  const { Moving } = PARTS[kind]
  const wide = partWidth(kind, slim)
  const half = (which: string, from: number) => (
    <clipPath id={`${prefix}-${which}`}>
      <rect x={from} y={0} width={180} height={PART_FOOT + 24} />
    </clipPath>
  )
  return (
    <g>
      {half('before', x - 180)}
      {half('now', x)}
      {before !== null && (
        <g clip-path={`url(#${prefix}-before)`}>
          <Moving x={x} edge={partEdge(kind, before)} look="before" slim={slim} />
        </g>
      )}
      <g clip-path={before === null ? undefined : `url(#${prefix}-now)`}>
        <Moving x={x} edge={partEdge(kind, amount)} look="now" slim={slim} />
      </g>
      {kind === 'tubes' && (
        <Block x={x} y={PART_EDGE + 57} to={PART_FOOT - 6} wide={150 * slim} name="metal" />
      )}
      {kind === 'tyre' && (
        <line class="ground" x1={x - 136} x2={x + 144} y1={PART_FOOT} y2={PART_FOOT} />
      )}
      <line
        class="guide"
        x1={round(x - wide / 2 - 36 * slim)}
        x2={round(x + wide / 2 + 20 * slim)}
        y1={PART_EDGE}
        y2={PART_EDGE}
      />
    </g>
  )
}
