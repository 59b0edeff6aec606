import { LETTER, textWidth } from './lettering.ts'
import type { ChartProps, Frame, Rule, XY } from './chartTypes.ts'

/** A label with its place in the drawing. */
export interface PlacedLabel {
  text: string
  as: string
  x: number
  y: number
  anchor: 'start' | 'middle' | 'end'
}

interface Box {
  left: number
  right: number
  top: number
  bottom: number
}

function boxOf(label: PlacedLabel): Box {
  const width = textWidth(label.text)
  const left =
    label.x - (label.anchor === 'end' ? width : label.anchor === 'middle' ? width / 2 : 0)
  return { left, right: left + width, top: label.y - LETTER + 2, bottom: label.y + 3 }
}

/** Words must not touch: so much room belongs to the space between two. */
const SPACE = 4

const overlap = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left) + SPACE) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top))

/** Places to try beside one spot: above and below it, to either side. */
function around(text: string, as: string, [x, y]: XY, gap: number): PlacedLabel[] {
  const place = (dx: number, dy: number, anchor: PlacedLabel['anchor']): PlacedLabel => ({
    text,
    as,
    x: x + dx,
    y: y + dy,
    anchor,
  })
  return [
    place(-gap, -gap, 'end'),
    place(gap, gap + LETTER - 2, 'start'),
    place(gap, -gap, 'start'),
    place(-gap, gap + LETTER - 2, 'end'),
    place(0, -gap - 4, 'middle'),
    place(0, gap + LETTER + 3, 'middle'),
  ]
}

/** What a place costs, at least: leaving the plot, printing over labels. */
function costOfPlace(box: Box, frame: Frame, placed: readonly Box[]): number {
  const out =
    Math.max(0, frame.left - box.left) +
    Math.max(0, box.right - frame.right) +
    Math.max(0, frame.top - 4 - box.top) +
    Math.max(0, box.bottom - frame.bottom)
  return out * 60 + placed.reduce((sum, other) => sum + overlap(box, other), 0) * 5
}

/** What it costs besides: covering lines and markers. */
function costOfInk(box: Box, ink: readonly XY[]): number {
  let covered = 0
  for (const [x, y] of ink)
    if (x > box.left - 3 && x < box.right + 3 && y > box.top - 1 && y < box.bottom + 1) covered++
  return covered * 25
}

/** Points every few units along the drawn curves, so that a label can keep clear of them. */
function inkOf(frame: Frame, lines: readonly (readonly XY[])[]): XY[] {
  const ink: XY[] = []
  for (const line of lines) {
    let from: XY | null = null
    for (const [x, y] of line) {
      const to: XY = [frame.x(x), frame.y(y)]
      const steps =
        from === null
          ? 0
          : Math.min(40, Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / 5)))
      for (let step = 0; step < steps; step++)
        ink.push([
          from![0] + ((to[0] - from![0]) * step) / steps,
          from![1] + ((to[1] - from![1]) * step) / steps,
        ])
      from = to
    }
  }
  return ink
}

function spots(frame: Frame, points: readonly XY[]): XY[] {
  const inside = points
    .map(([x, y]): XY => [frame.x(x), frame.y(y)])
    .filter(
      ([x, y]) =>
        x >= frame.left - 1 && x <= frame.right + 1 && y >= frame.top - 1 && y <= frame.bottom + 1,
    )
  const last = inside.length - 1
  return last < 0
    ? []
    : [1, 0.88, 0.75, 0.62, 0.5, 0.38, 0.25, 0.1].map((share) => inside[Math.round(share * last)]!)
}

/** A rule covers what it crosses, all along. */
function ruleInk(frame: Frame, { axis, at }: Rule): XY[] {
  const along = axis === 'x' ? [frame.top, frame.bottom] : [frame.left, frame.right]
  const count = Math.ceil((along[1]! - along[0]!) / 6)
  return Array.from({ length: count }, (_, step): XY =>
    axis === 'x' ? [frame.x(at), along[0]! + 6 * step] : [along[0]! + 6 * step, frame.y(at)],
  )
}

/** Along a rule: a level one is labelled near its ends, an upright one near its top. */
function besideRule(frame: Frame, { axis, at, label = '', as }: Rule): PlacedLabel[] {
  const x = axis === 'x' ? [frame.x(at)] : [frame.left + 5, frame.right - 5]
  const y = axis === 'x' ? [frame.top + LETTER, frame.bottom - LETTER] : [frame.y(at)]
  return y.flatMap((upright) =>
    x.flatMap((along) => around(label, as, [along, upright], axis === 'x' ? 5 : 4)),
  )
}

/** A marker's label would rather cover a little of a line than leave its marker. */
const NEARER = 12
/** How far from its marker a label may stand: further out only where markers crowd. */
const RINGS = [8, 8 + LETTER, 8 + 2 * LETTER, 8 + 3 * LETTER]

/** A marker is a small cross of ink. */
const markerInk = ([x, y]: XY): XY[] => [
  [x, y],
  [x + 5, y],
  [x - 5, y],
  [x, y + 5],
  [x, y - 5],
]

/** Places for one label, and what each place costs more than the one before it. */
interface Wanted {
  candidates: readonly PlacedLabel[]
  step: number
}

/** The candidate that costs least, earlier ones first among equals. The ink, slow to count, is counted only where it can still decide. */
function cheapest(
  { candidates, step }: Wanted,
  frame: Frame,
  placed: readonly Box[],
  ink: readonly XY[],
): PlacedLabel | undefined {
  let best: PlacedLabel | undefined
  let least = Infinity
  for (const [rank, candidate] of candidates.entries()) {
    const box = boxOf(candidate)
    const atLeast = costOfPlace(box, frame, placed) + rank * step
    const price = atLeast < least ? atLeast + costOfInk(box, ink) : Infinity
    if (price < least) [best, least] = [candidate, price]
  }
  return best
}

/**
 * Puts each label of a rule, point, curve or band where it covers least, so that no legend is needed and labels stay apart
 * while values move. A curve comes late: it has the most room.
 */
export function placeLabels(
  { curves = [], bands = [], points = [], rules = [] }: ChartProps,
  frame: Frame,
): PlacedLabel[] {
  const spotOf = ({ x, y }: { x: number; y: number }): XY => [frame.x(x), frame.y(y)]
  const lines = curves.map((curve) => curve.points)
  const ink = [
    ...inkOf(frame, lines),
    ...points.flatMap((point) => markerInk(spotOf(point))),
    ...rules.flatMap((rule) => ruleInk(frame, rule)),
  ]
  const along = (label: string, as: string, line: readonly XY[]): PlacedLabel[] =>
    spots(frame, line).flatMap((spot) => around(label, as, spot, 5))
  const wanted: Wanted[] = [
    ...rules.flatMap((rule) =>
      rule.label ? [{ candidates: besideRule(frame, rule), step: 1 }] : [],
    ),
    ...points.flatMap(({ label, as, x, y }) =>
      label
        ? [
            {
              candidates: RINGS.flatMap((gap) => around(label, as, spotOf({ x, y }), gap)),
              step: NEARER,
            },
          ]
        : [],
    ),
    ...curves.flatMap(({ label, as, points: line }) =>
      label ? [{ candidates: along(label, as, line), step: 1 }] : [],
    ),
    ...bands.flatMap(({ label, as, high }) =>
      label ? [{ candidates: along(label, as, high), step: 1 }] : [],
    ),
  ]
  const placed: PlacedLabel[] = []
  for (const candidates of wanted) {
    const best = cheapest(candidates, frame, placed.map(boxOf), ink)
    if (best) placed.push(best)
  }
  return placed
}
