import type coilRate from './statement.ts'
import { middle } from '../../units/interval.ts'
import type { Say } from '../../units/say.ts'
import type { FigureProps } from '../../drawing/props.ts'
import { Dimension } from '../../drawing/Dimension.tsx'
import SpringCoils from '../../drawing/SpringCoils.tsx'
import { round } from '../../drawing/state.ts'
import { View } from '../../drawing/View.tsx'
import type { ViewName } from '../../drawing/View.tsx'

type State = FigureProps<typeof coilRate>['now']

const FLOOR = 262
const TALLEST = 226
/** No coil may be wider than this [units], or a short fat spring would run over its neighbour. */
const WIDEST = 56
const PLACES = [46, 156, 268]

interface Lengths {
  free: number
  squeezed: number
  solid: number
}

function lengthsOf({ input, output }: State): Lengths {
  const solid = middle(output.solid) ?? 0
  const free = input.freeLength
  return {
    free,
    solid: Math.min(solid, free),
    squeezed: Math.max(Math.min(solid, free), free - input.deflection),
  }
}

const scaleOf = (states: readonly State[]): number =>
  Math.min(
    ...states.map(({ input }) =>
      Math.min(TALLEST / input.freeLength, WIDEST / input.outerDiameter),
    ),
  )

function Coil({
  state,
  x,
  length,
  scale,
  say,
  name,
}: {
  state: State
  x: number
  length: number
  scale: number
  say: Say
  name: string
}) {
  const { wireDiameter, outerDiameter, totalCoils } = state.input
  const top = FLOOR - length * scale
  const half = (outerDiameter * scale) / 2
  return (
    <g class="coil-drawing">
      <SpringCoils
        x={x}
        radius={((outerDiameter - wireDiameter) * scale) / 2}
        from={top}
        to={FLOOR}
        wire={wireDiameter * scale}
        coils={totalCoils - 1}
      />
      <Dimension
        from={[x + half + 9, FLOOR]}
        to={[x + half + 9, round(top)]}
        text={say.number(length, 'mm', 0)}
        state="now"
      />
      <text class="middle" x={x} y={FLOOR + 25}>
        {name}
      </text>
    </g>
  )
}

/** The spring before, as an outline of its three lengths. */
function Ghost({ state, scale }: { state: State; scale: number }) {
  const { free, squeezed, solid } = lengthsOf(state)
  const width = state.input.outerDiameter * scale
  return (
    <g>
      {[free, squeezed, solid].map((length, index) => (
        <rect
          key={index}
          class="before"
          x={round(PLACES[index]! - width / 2 - 2)}
          y={round(FLOOR - length * scale)}
          width={round(width + 4)}
          height={round(length * scale)}
        />
      ))}
    </g>
  )
}

/** The spring to scale: free, squeezed as far as the bike squeezes it, and with all coils touching. */
export default function CoilRateFigure({ now, before, say }: FigureProps<typeof coilRate>) {
  const { free, squeezed, solid } = lengthsOf(now)
  const scale = scaleOf(before ? [now, before] : [now])
  const margin = middle(now.output.margin) ?? 0
  const y = (length: number): number => round(FLOOR - length * scale)
  const bound = margin < 0
  const takeaway = `The spring to scale: free ${say.quantity(free, 'mm', 0)}, squeezed ${say.quantity(squeezed, 'mm', 0)}, all coils touching ${say.quantity(solid, 'mm', 0)}. ${bound ? 'The coils touch before the travel ends' : `${say.quantity(margin, 'mm', 0)} left`}.`
  return (
    <View id="all">
      <figure class="fig">
        <svg viewBox="0 0 360 298" role="img" aria-label={takeaway}>
          <line class="ground" x1={6} x2={354} y1={FLOOR} y2={FLOOR} />
          <line class="axis ink" x1={PLACES[1]} x2={350} y1={y(squeezed)} y2={y(squeezed)} />
          {before && <Ghost state={before} scale={scale} />}
          <Coil state={now} x={PLACES[0]!} length={free} scale={scale} say={say} name="free" />
          <Coil
            state={now}
            x={PLACES[1]!}
            length={squeezed}
            scale={scale}
            say={say}
            name="squeezed most"
          />
          <Coil
            state={now}
            x={PLACES[2]!}
            length={solid}
            scale={scale}
            say={say}
            name="all touching"
          />
          {!bound && (
            <Dimension from={[338, y(squeezed)]} to={[338, y(solid)]} text="" state="now" />
          )}
          <text class="now end halo" x={356} y={y(squeezed)} dy="-0.5em">
            {bound
              ? `short by ${say.quantity(-margin, 'mm', 0)}`
              : `left: ${say.quantity(margin, 'mm', 0)}`}
          </text>
        </svg>
        <figcaption>
          Wire, diameter, coils and lengths ({say.symbol('mm')}) to one scale. What is left between
          the two right-hand lengths is the margin before the coils touch.
        </figcaption>
      </figure>
    </View>
  )
}

/** What the stage can turn to, and which inputs each view shows best. */
CoilRateFigure.views = [{ id: 'all', name: 'Spring' }] satisfies readonly ViewName[]
