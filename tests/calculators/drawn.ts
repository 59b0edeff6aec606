import { parseHTML } from 'linkedom'

/** Reads places back out of a figure's markup. */

/** The figure as a document, so that a test asks for parts and attributes, and not for the order in which they are written. */
const documentOf = (markup: string): ParentNode => parseHTML(`<body>${markup}</body>`).document

/** The parts of a figure that a selector finds. */
export const parts = (markup: string, selector: string): Element[] => [
  ...documentOf(markup).querySelectorAll(selector),
]

/** An attribute of a part as a number; NaN where there is none, which no comparison lets pass. */
export const numberAt = (part: Element | undefined | null, attribute: string): number =>
  Number(part?.getAttribute(attribute) ?? Number.NaN)

/** The value of one attribute in each part that a selector finds, as numbers. */
export const places = (markup: string, selector: string, attribute: string): number[] =>
  parts(markup, selector).map((part) => numberAt(part, attribute))

/** Centres of the chart's markers with a look, in the order drawn. */
export const dots = (markup: string, look: string): [number, number][] =>
  parts(markup, `.chart-point.${look} .chart-dot`).map((dot) => [
    numberAt(dot, 'cx'),
    numberAt(dot, 'cy'),
  ])

/** Where the ticks of an axis stand: what is printed, and the place of the line beside it. A line across the chart, or a short one below it, tells which axis. */
export function ticks(markup: string, axis: 'x' | 'y'): { value: number; at: number }[] {
  const along = axis === 'x' ? ['x1', 'x2'] : ['y1', 'y2']
  return parts(markup, '.chart-tick').flatMap((text) => {
    const line = text.parentElement?.querySelector('.chart-grid')
    const [from, to] = along.map((end) => numberAt(line, end))
    const value = Number(text.textContent.replace('−', '-'))
    return from === to ? [{ value, at: from! }] : []
  })
}

/** Turns a place on a linear axis back into its value by two of its ticks. */
export function valueAt(markup: string, axis: 'x' | 'y', place: number): number {
  const [first, second] = ticks(markup, axis)
  return (
    first!.value + ((place - first!.at) * (second!.value - first!.value)) / (second!.at - first!.at)
  )
}
