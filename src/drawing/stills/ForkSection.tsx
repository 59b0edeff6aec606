import ForkSectionKit from '../ForkSection.tsx'
import { layoutFork } from '../forkLayout.ts'
import { LEG } from './legs.ts'
import { Call, Frame } from './parts.tsx'

const X = 96
const TOP = 40
const SCALE = 0.62e3
const ACROSS = 1.45e3

export default function ForkSectionStill() {
  const layout = layoutFork(LEG)
  const y = (depth: number): number => TOP + depth * SCALE
  const wall = (LEG.tubeDiameter / 2) * ACROSS
  const right = 178
  const calls: readonly (readonly [number, number, readonly string[]])[] = [
    [-0.012, 0, ['cap']],
    [layout.cap.to * 0.5, 10, ['adjuster, pushes', 'on the spacer']],
    [(layout.spacer!.from + layout.spacer!.to) / 2, 24, ['spacer']],
    [layout.washers[0]!.from, 22, ['washer, flat']],
    [(layout.spring!.from + layout.spring!.to) / 2, 22, ['spring']],
    [layout.seat, 40, ['spring’s seat, on', 'the damper']],
  ]
  return (
    <Frame
      height={y(layout.lower.to) + 26}
      label="A fork leg in section from the cap down: cap with adjuster, spacer, washer, spring, the damper on which the spring sits. The inner tube slides in the outer tube."
    >
      <ForkSectionKit
        leg={{ ...LEG, oilDepth: 0.2 }}
        state="now"
        x={X}
        top={TOP}
        scale={SCALE}
        across={ACROSS}
      />
      {calls.map(([depth, drop, lines]) => (
        <Call
          key={lines[0]}
          at={[right, y(depth) + 4 + drop * 0.2]}
          from={[right - 4, y(depth) + drop * 0.2]}
          to={[X + (depth < 0 ? 14 : 8), y(depth)]}
          lines={lines}
        />
      ))}
      <Call
        at={[right, y(0.2) + 40]}
        from={[right - 4, y(0.2) + 35]}
        to={[X + 22, y(0.2)]}
        lines={['oil level']}
      />
      <Call
        at={[right, y(layout.lower.from) + 4]}
        from={[right - 4, y(layout.lower.from)]}
        to={[X + wall + 4, y(layout.lower.from) + 10]}
        lines={['outer tube, seals']}
      />
      <Call
        at={[right, y(layout.upper.to) + 52]}
        from={[right - 4, y(layout.upper.to) + 48]}
        to={[X + wall - 1, y(layout.upper.to) - 8]}
        lines={['inner tube, slides']}
      />
    </Frame>
  )
}
