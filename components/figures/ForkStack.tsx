import type forkStack from '../../src/calculators/fork-stack.ts'
import type { Snapshot } from '../../src/calculators/define.ts'
import type { FigureProps } from './props.ts'
import { Dimension } from './kit/Dimension.tsx'
import { layoutFork } from './kit/forkLayout.ts'
import type { ForkLeg } from './kit/forkLayout.ts'
import ForkSection from './kit/ForkSection.tsx'

type State = Snapshot<typeof forkStack>

const TOP = 34
const DRAWN = 372
/** Shown below the spring's seat [m], above the break line. */
const BELOW = 0.05
/** Widths are enlarged, or a tube of 43 mm would be a sliver beside its 480 mm. */
const WIDER = 1.7
const BEFORE_X = 60
const NOW_X = 214

/** The leg as the section draws it; the adjuster's setting counts as reach of the cap. */
function legOf({ input, picture }: State): ForkLeg {
  const { fork } = input.bike
  return {
    tubeDiameter: fork.tubeDiameter * 1e-3,
    boreDiameter: fork.boreDiameter * 1e-3,
    tubeDepth: input.tubeDepth,
    travel: fork.travel * 1e-3,
    capReach: input.capReach + picture.screw,
    washers: input.washers.map(([thickness = 0]) => thickness),
    spacerLength: input.spacerLength,
    spring: { freeLength: input.springLength },
    upsideDown: fork.kind.startsWith('upside-down'),
    damper: fork.kind.includes('cartridge') ? 'cartridge' : 'rod',
  }
}

/** Where a spring's top lies, held in the stack and at its free length [m below the cap's seat]. */
function springTops(leg: ForkLeg): { held: number; free: number } {
  const layout = layoutFork(leg)
  return { held: layout.spring?.from ?? layout.seat, free: layout.seat - (leg.spring?.freeLength ?? 0) }
}

const preloadText = (preload: number, say: FigureProps<unknown>['say']): string =>
  preload < 0 ? `gap ${say.quantity(-preload, 'mm', 1)}` : `preload ${say.quantity(preload, 'mm', 1)}`

/** From the free length's end to the held end: the preload; for a loose spring, the gap above it. */
function Preload({ leg, preload, x, y, say }: { leg: ForkLeg; preload: number; x: number; y: (depth: number) => number; say: FigureProps<unknown>['say'] }) {
  const { held, free } = springTops(leg)
  const [from, to] = preload < 0 ? [held + preload, held] : [free, held]
  return <Dimension from={[x, y(to)]} to={[x, y(from)]} text={preloadText(preload, say)} state="now" />
}

/** The stack before, dashed. */
function Earlier({
  leg,
  preload,
  scale,
  y,
  say,
}: {
  leg: ForkLeg
  preload: number
  scale: number
  y: (depth: number) => number
  say: FigureProps<unknown>['say']
}) {
  const foot = y(leg.tubeDepth + BELOW)
  return (
    <>
      <ForkSection leg={leg} state="before" x={BEFORE_X} top={TOP} scale={scale} across={scale * WIDER} cut={leg.tubeDepth + BELOW} />
      <text class="before middle" x={BEFORE_X} y={foot + 24}>
        before
      </text>
      <text class="before middle" x={BEFORE_X} y={foot + 40}>
        {preloadText(preload, say)}
      </text>
    </>
  )
}

/** Spacer and washers, spring and its preload, before and now on one common cap seat, drawn to scale from their lengths. */
export default function ForkStackFigure({ now, before, say }: FigureProps<typeof forkStack>) {
  const deepest = Math.max(now.input.tubeDepth, before?.input.tubeDepth ?? 0) + BELOW
  const scale = DRAWN / deepest
  const across = scale * WIDER
  const y = (depth: number): number => TOP + depth * scale
  const leg = legOf(now)
  const half = (leg.tubeDiameter / 2 + 0.005) * across
  const seat = layoutFork(leg)
  const length = (value: number): string => say.quantity(value, 'mm', 1)
  const takeaway = `${now.picture.preload < 0 ? `Spring loose by ${length(-now.picture.preload)}` : `Preload ${length(now.picture.preload)}`}${before ? `, before ${length(before.picture.preload)}` : ''}. Depth ${length(now.input.tubeDepth)}, spring ${length(now.input.springLength)}, spacer ${length(now.input.spacerLength)}.`
  return (
    <figure class="fig upright">
      <svg viewBox={`0 0 360 ${DRAWN + TOP + 46}`} role="img" aria-label={takeaway}>
        <line class="guide" x1={10} x2={350} y1={y(0)} y2={y(0)} />
        {before && <Earlier leg={legOf(before)} preload={before.picture.preload} scale={scale} y={y} say={say} />}
        <ForkSection leg={leg} state="now" x={NOW_X} top={TOP} scale={scale} across={across} cut={leg.tubeDepth + BELOW} />
        <Preload leg={leg} preload={now.picture.preload} x={NOW_X + half + 8} y={y} say={say} />
        {seat.spacer && now.input.spacerLength > 0.02 && (
          <Dimension
            from={[NOW_X + half + 8, y(seat.spacer.to)]}
            to={[NOW_X + half + 8, y(seat.spacer.from)]}
            text={`spacer ${length(now.input.spacerLength)}`}
          />
        )}
        <Dimension
          from={[NOW_X + half + 8, y(seat.seat)]}
          to={[NOW_X + half + 8, y(seat.spring?.from ?? 0)]}
          text={`spring ${length(seat.seat - (seat.spring?.from ?? 0))}`}
        />
        <Dimension from={[NOW_X - half - 8, y(seat.seat)]} to={[NOW_X - half - 8, y(0)]} text="" />
        <text class="end quiet halo" x={NOW_X - half - 12} y={y(seat.seat / 2)}>
          depth
        </text>
        <text class="end quiet halo" x={NOW_X - half - 12} y={y(seat.seat / 2) + 16}>
          {length(now.input.tubeDepth)}
        </text>
        <text class="now middle" x={NOW_X} y={y(leg.tubeDepth + BELOW) + 24}>
          now
        </text>
        <text class="quiet middle" x={(BEFORE_X + NOW_X) / 2} y={y(0) - 5}>
          cap seat
        </text>
      </svg>
      <figcaption>
        {now.picture.preload < 0
          ? `The stack is too short: the spring stands free, ${length(-now.picture.preload)} below it. `
          : `The cap holds the spring ${length(now.picture.preload)} shorter than it is free. `}
        Lengths to scale; widths {WIDER} times as large.
      </figcaption>
    </figure>
  )
}
