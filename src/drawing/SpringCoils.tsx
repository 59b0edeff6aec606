interface Props {
  /** centre line and radius to the middle of the wire, in drawing units */
  x: number
  radius: number
  from: number
  to: number
  wire: number
  coils: number
}

/** A coil spring from the side: the near half of each turn as a bar, the far half as a thin line behind it, closed ends. */
export default function SpringCoils({ x, radius, from, to, wire, coils }: Props) {
  const turns = Math.max(2, Math.round(coils))
  const first = from + wire / 2
  const pitch = Math.max(0, to - from - wire) / turns
  const left = x - radius
  const right = x + radius
  const near = Array.from(
    { length: turns },
    (_, turn) =>
      `M${left} ${round(first + turn * pitch)} L${right} ${round(first + (turn + 0.5) * pitch)}`,
  )
  const far = Array.from(
    { length: turns },
    (_, turn) =>
      `M${right} ${round(first + (turn + 0.5) * pitch)} L${left} ${round(first + (turn + 1) * pitch)}`,
  )
  const ends = `M${left} ${round(first)} L${right} ${round(first)} M${left} ${round(to - wire / 2)} L${right} ${round(to - wire / 2)}`
  return (
    <g class="coils">
      <path class="coil-far" d={far.join(' ')} stroke-width={round(wire * 0.45)} />
      <path
        class="coil-near"
        d={`${near.join(' ')} ${ends}`}
        stroke-width={round(Math.max(1, wire * 0.82))}
        stroke-linecap="round"
      />
    </g>
  )
}

const round = (value: number): number => Math.round(value * 100) / 100
