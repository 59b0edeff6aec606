import ForkSectionKit from '../ForkSection.tsx'
import { Dimension } from '../Dimension.tsx'
import type { StillProps } from '../props.ts'
import { LEG } from './legs.ts'
import { Window } from './bike.tsx'
import { Frame, Words } from './parts.tsx'

const TOP = 58
const SCALE = 1.35e3
const CUT = 0.14
const OUT = 0.024
const IN = 0.039
const states = [
  { x: 84, capReach: OUT, name: 'fully out' },
  { x: 268, capReach: IN, name: 'fully in' },
] as const

export default function Adjuster({ prefix }: StillProps) {
  const y = (depth: number): number => TOP + depth * SCALE
  return (
    <Frame
      height={y(CUT) + 14}
      label="A fork cap in section with its preload adjuster fully out and fully in. Turned in, the adjuster pushes the spacer down by one thread pitch for each turn."
    >
      {states.map(({ x, capReach, name }) => (
        <g key={name}>
          <Window id={`${prefix}-${x}`} x={x - 60} y={0} width={120} height={y(CUT) + 6}>
            <ForkSectionKit
              leg={{ ...LEG, capReach, spacerLength: 0.14 }}
              state="now"
              x={x}
              top={TOP}
              scale={SCALE}
              across={SCALE}
              cut={CUT}
            />
          </Window>
          <Words at={[x, 14]} anchor="middle" lines={[name]} tone="now" />
        </g>
      ))}
      <line class="guide" x1={states[0].x} x2={states[1].x + 10} y1={y(OUT)} y2={y(OUT)} />
      <line class="guide" x1="150" x2={states[1].x} y1={y(IN)} y2={y(IN)} />
      <Dimension from={[176, y(IN)]} to={[176, y(OUT)]} text="" state="now" />
      <Words at={[176, y(IN) + 24]} anchor="middle" lines={['turns × pitch']} tone="now" />
      <Words at={[176, y(IN) + 58]} anchor="middle" lines={['spacer', 'below']} tone="quiet" />
    </Frame>
  )
}
