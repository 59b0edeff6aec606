import type chooseRate from '../../src/calculators/choose-rate.ts'
import type { Snapshot } from '../../src/calculators/define.ts'
import type { FigureProps } from './props.ts'

type Props = FigureProps<typeof chooseRate>
type Row = Snapshot<typeof chooseRate>['picture']['rows'][number]

const LEFT = 66
const RIGHT = 312
const TOP = 66
const STEP = 36
const round = (value: number): number => Math.round(value * 10) / 10

interface StripProps {
  row: Row
  before: Row | undefined
  y: number
  at(travel: number): number
  say: Props['say']
}

/** One spring: the fork's travel as a bar, where the bike stands in it, and how far a quick brake takes it. */
function Strip({ row, before, y, at, say }: StripProps) {
  const fits = row.misses.length === 0
  const [low, high] = row.overshoot
  const brake = at(row.brakingTravel)
  return (
    <g class={fits ? 'strip fits' : 'strip'}>
      <text class={fits ? 'now end' : 'quiet end'} x={LEFT - 10} y={y + 5}>
        {say.number(row.rate, 'N/mm', 1)}
      </text>
      <rect class="metal" x={LEFT} y={y - 6} width={RIGHT - LEFT} height={12} />
      <rect class="strip-over" x={round(brake)} y={y - 6} width={round(Math.max(0, at(row.brakingTravel + high) - brake))} height={12} />
      <rect class="strip-over sure" x={round(brake)} y={y - 6} width={round(Math.max(0, at(row.brakingTravel + low) - brake))} height={12} />
      {before && <path class="before" d={`M${round(at(before.staticSag))} ${y - 10}v20M${round(at(before.brakingTravel))} ${y - 10}v20`} />}
      <circle class="strip-static" cx={round(at(row.staticSag))} cy={y} r={4.5} />
      <line class="mark" x1={round(at(row.riderSag))} x2={round(at(row.riderSag))} y1={y - 9} y2={y + 9} />
      <path class="strip-brake" d={`M${round(brake)} ${y - 6}l6 6l-6 6z`} />
      <text class={fits ? 'now start' : 'quiet start'} x={RIGHT + 6} y={y + 5}>
        {say.number(row.reserve[0], 'mm', say.symbol('mm') === 'in' ? 1 : 0)}
      </text>
    </g>
  )
}

function Heads({ say }: Pick<Props, 'say'>) {
  return (
    <>
      <text class="quiet" x={4} y={16}>
        rate
      </text>
      <text class="quiet" x={4} y={31}>
        {say.symbol('N/mm')}
      </text>
      <text class="quiet end" x={356} y={16}>
        in hand,
      </text>
      <text class="quiet end" x={356} y={31}>
        at least, {say.symbol('mm')}
      </text>
    </>
  )
}

/** Small multiples: one strip a spring, all at the sag wanted, on one scale of travel. */
export default function ChooseRateFigure({ now, before, say }: Props) {
  const { rows, travel, staticWindow, reserve } = now.picture
  const at = (x: number): number => LEFT + (Math.min(Math.max(x, 0), travel * 1.06) / travel) * (RIGHT - LEFT)
  const bottom = TOP + rows.length * STEP - 12
  const fitting = rows.filter((row) => row.misses.length === 0)
  const names = fitting.map((row) => say.number(row.rate, 'N/mm', 1)).join(', ')
  const takeaway = fitting.length === 0 ? 'No spring of these meets everything asked for.' : `These meet everything asked for: ${names} ${say.symbol('N/mm')}.`
  return (
    <figure class="fig">
      <svg viewBox={`0 0 360 ${bottom + 40}`} role="img" aria-label={takeaway}>
        <Heads say={say} />
        <rect class="band" x={round(at(staticWindow[0]))} y={TOP - 16} width={round(at(staticWindow[1]) - at(staticWindow[0]))} height={bottom - TOP + 16} />
        <line class="guide" x1={round(at(travel - reserve))} x2={round(at(travel - reserve))} y1={TOP - 16} y2={bottom} />
        <line class="ground" x1={RIGHT} x2={RIGHT} y1={TOP - 16} y2={bottom} />
        <text class="quiet middle" x={LEFT + 20} y={TOP - 20}>
          static
        </text>
        <text class="middle" x={Math.max(LEFT + 78, round(at(now.picture.riderSag)))} y={TOP - 20}>
          rider
        </text>
        <text class="middle" x={at(rows[0]?.brakingTravel ?? travel) - 20} y={TOP - 20}>
          braking
        </text>
        {rows.map((row, place) => (
          <Strip key={place} row={row} before={before?.picture.rows.find((other) => other.rate === row.rate)} y={TOP + place * STEP} at={at} say={say} />
        ))}
        <text class="quiet start" x={LEFT} y={bottom + 18}>
          0
        </text>
        <text class="quiet end" x={RIGHT + 4} y={bottom + 18}>
          stop, {say.quantity(travel, 'mm', 0)}
        </text>
        <text class="quiet middle" x={(LEFT + RIGHT) / 2 - 20} y={bottom + 18}>
          travel used
        </text>
        {before && (
          <text class="before start" x={LEFT} y={bottom + 35}>
            dashed: before
          </text>
        )}
      </svg>
      <figcaption>
        {fitting.length === 0
          ? 'None of these meets everything asked for. '
          : `${names} ${say.symbol('N/mm')} ${fitting.length === 1 ? 'meets' : 'meet'} everything asked for: bold. `}
        Circle: bike alone, the window shaded. Bar: with the rider. Triangle: settled on the brakes; the shaded stretch is what a quick brake adds.
      </figcaption>
    </figure>
  )
}
