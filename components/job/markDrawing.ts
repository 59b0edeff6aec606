/* The leg at its mark in true size, before beside after. A drawing unit is a millimetre of paper. */

const NS = 'http://www.w3.org/2000/svg'
const WIDTH = 84
const SEAL = 26
const YOKE = 7
/** The most of the exposed tube that is drawn [mm]; longer ones lose the same length below, so that the step between them stays true. */
const MOST = 128
const CHECK = 40

type Attributes = Readonly<Record<string, string | number>>

function shape(name: string, attributes: Attributes, text?: string): SVGElement {
  const made = document.createElementNS(NS, name)
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value))
  if (text !== undefined) made.textContent = text
  return made
}

interface Leg {
  /** exposed tube [mm] */
  exposed: number
  written: string
  name: string
  kind: 'before' | 'now'
}

/** One leg: the clamp above, the tube, the dust seal and what is below it. */
function legShapes({ exposed, written, name, kind }: Leg, x: number, seal: number): SVGElement[] {
  const top = seal - exposed
  return [
    shape('rect', { class: `mark-${kind}`, x: x - 9, y: top, width: 18, height: exposed }),
    shape('rect', { class: 'mark-part', x: x - 16, y: top - YOKE, width: 32, height: YOKE }),
    shape('rect', { class: 'mark-part', x: x - 12, y: seal, width: 24, height: 9 }),
    shape('line', { class: `mark-edge-${kind}`, x1: x - 19, x2: x + 19, y1: top, y2: top }),
    shape('text', { class: 'mark-name', x, y: seal + 14.5, 'text-anchor': 'middle' }, name),
    shape('text', { class: 'mark-name', x, y: seal + 19.5, 'text-anchor': 'middle' }, written),
  ]
}

/** Draws both legs [mm], one line of dust seals under them, and a line of 40 mm that shows whether the printer kept the size. */
export function markDrawing(
  before: { exposed: number; written: string },
  after: { exposed: number; written: string },
  upsideDown: boolean,
): SVGElement {
  const cut = Math.max(0, Math.max(before.exposed, after.exposed) - MOST)
  const longest = Math.max(before.exposed, after.exposed) - cut
  const seal = YOKE + 2 + longest
  const height = seal + SEAL + 14
  const moved = after.exposed - before.exposed
  const drawing = shape('svg', {
    viewBox: `0 0 ${WIDTH} ${height}`,
    width: `${WIDTH}mm`,
    height: `${height}mm`,
    role: 'img',
    'aria-label': `The leg at its mark: before ${before.written}, after ${after.written}`,
  })
  const short = { before: before.exposed - cut, after: after.exposed - cut }
  drawing.append(
    ...legShapes({ ...before, exposed: short.before, name: 'before', kind: 'before' }, 21, seal),
    ...legShapes({ ...after, exposed: short.after, name: 'after', kind: 'now' }, 63, seal),
    // the old height beside the new one
    shape('line', {
      class: 'mark-edge-before',
      x1: 40,
      x2: 82,
      y1: seal - short.before,
      y2: seal - short.before,
    }),
    shape('line', { class: 'mark-check', x1: 22, x2: 22 + CHECK, y1: height - 7, y2: height - 7 }),
    ...[22, 22 + CHECK].map((x) =>
      shape('line', { class: 'mark-check', x1: x, x2: x, y1: height - 9, y2: height - 5 }),
    ),
    shape(
      'text',
      { class: 'mark-name', x: 42, y: height - 1, 'text-anchor': 'middle' },
      'This line is 40 mm on paper.',
    ),
  )
  drawing.setAttribute('data-moved', moved.toFixed(1))
  drawing.setAttribute('data-cut', cut.toFixed(1))
  drawing.setAttribute('data-way', upsideDown ? 'upside-down' : 'conventional')
  return drawing
}

/** What the drawing shows, under it. */
export function markCaption(cut: number, upsideDown: boolean): string {
  const from = upsideDown
    ? 'from the dust seal to the casting at the axle, drawn with the seal below'
    : 'from the dust seal up to the lower yoke'
  const less = cut > 0 ? ` ${cut.toFixed(0)} mm are left out of both, so the step is true.` : ''
  return `Exposed tube at rest, left leg, ${from}, in true length.${less}`
}
