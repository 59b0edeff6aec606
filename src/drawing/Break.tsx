import { round } from './state.ts'

/** Two wavy lines across a tube, with nothing between: a stretch of it is left out. */
export function Break({ x, y, width }: { x: number; y: number; width: number }) {
  const half = width / 2 + 3
  const wave = `q${round(half / 2)} -4 ${round(half)} 0t${round(half)} 0`
  return (
    <>
      <path
        class="break-gap"
        d={`M${round(x - half)} ${round(y - 3)}${wave}v6q${round(-half / 2)} 4 ${round(-half)} 0t${round(-half)} 0z`}
      />
      <path
        class="break"
        d={`M${round(x - half)} ${round(y - 3)}${wave}M${round(x - half)} ${round(y + 3)}${wave}`}
      />
    </>
  )
}
