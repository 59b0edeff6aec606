import { useMemo } from 'preact/hooks'
import { round } from './state.ts'
import type { Spot } from './state.ts'

interface WheelProps {
  axle: Spot
  /** tyre, outside [viewBox units] */
  radius: number
  state: 'now' | 'before'
  /** brake disc [viewBox units] */
  disc?: number | undefined
  /** viewBox units per metre */
  scale: number
}

// A road tyre's section is about a third of its radius; the rim's flange stands 12 mm inside it.
const SECTION = 0.28
const SPOKES = 5

function Spokes({ from, to }: { from: number; to: number }) {
  return (
    <>
      {Array.from({ length: SPOKES }, (_, index) => {
        const angle = (index / SPOKES) * 2 * Math.PI - Math.PI / 2
        const spread = 0.16
        const at = (r: number, turn: number): string =>
          `${round(r * Math.cos(angle + turn))} ${round(r * Math.sin(angle + turn))}`
        return (
          <path
            key={index}
            class="detail"
            d={`M${at(from, 0.4)} L${at(to, spread)} M${at(from, -0.4)} L${at(to, -spread)}`}
          />
        )
      })}
    </>
  )
}

function Parts({ radius, disc, scale }: Pick<WheelProps, 'radius' | 'disc' | 'scale'>) {
  const section = radius * SECTION
  const rim = radius - section
  return (
    <>
      <circle class="tyre" r={round(radius - section / 2)} stroke-width={round(section)} />
      <circle class="now" r={round(radius)} />
      <circle class="now thin" r={round(rim)} />
      <circle class="detail" r={round(rim - 0.016 * scale)} />
      <Spokes from={0.045 * scale} to={rim - 0.018 * scale} />
      {disc !== undefined && (
        <>
          <circle class="detail" r={round(disc)} />
          <circle class="detail" r={round(disc * 0.76)} />
        </>
      )}
      <circle class="metal" r={round(0.042 * scale)} />
      <circle class="now solid" r={round(0.011 * scale)} />
    </>
  )
}

/** A wheel: tyre, rim, spokes, brake disc, hub, drawn about its axle. Before: the outline alone. */
export function Wheel({ axle, radius, state, disc, scale }: WheelProps) {
  const [x, y] = [round(axle[0]), round(axle[1])]
  const parts = useMemo(
    () => state === 'now' && <Parts radius={radius} disc={disc} scale={scale} />,
    [radius, disc, scale, state],
  )
  if (!parts) return <circle class="before" cx={x} cy={y} r={round(radius)} />
  return <g transform={`translate(${x} ${y})`}>{parts}</g>
}
