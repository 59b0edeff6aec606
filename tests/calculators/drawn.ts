/** Reads places back out of a figure's markup. */

/** The value of one attribute in each tag that matches, as numbers. */
export function places(markup: string, tag: RegExp, attribute: string): number[] {
  return [...markup.matchAll(new RegExp(`<${tag.source}[^>]*>`, 'g'))].map(([found]) =>
    Number(new RegExp(` ${attribute}="([^"]*)"`).exec(found)?.[1]),
  )
}

/** Centres of the chart's markers with a look, in the order drawn. */
export function dots(markup: string, look: string): [number, number][] {
  const groups = [
    ...markup.matchAll(
      new RegExp(
        `<g class="chart-point ${look}".*?class="chart-dot" cx="([^"]*)" cy="([^"]*)"`,
        'gs',
      ),
    ),
  ]
  return groups.map(([, x, y]) => [Number(x), Number(y)])
}

/** Where the ticks of an axis stand: what is printed, and its place. */
export function ticks(markup: string, axis: 'x' | 'y'): { value: number; at: number }[] {
  const anchor = axis === 'x' ? 'middle' : 'end'
  const found = [
    ...markup.matchAll(
      new RegExp(
        `<text class="chart-tick" x="([^"]*)" y="([^"]*)" text-anchor="${anchor}">([^<]*)<`,
        'g',
      ),
    ),
  ]
  // a y tick's lettering stands 4 units below its line
  return found.map(([, x, y, text]) => ({
    value: Number(text!.replace('−', '-')),
    at: axis === 'x' ? Number(x) : Number(y) - 4,
  }))
}

/** Turns a place on a linear axis back into its value by two of its ticks. */
export function valueAt(markup: string, axis: 'x' | 'y', place: number): number {
  const [first, second] = ticks(markup, axis)
  return (
    first!.value + ((place - first!.at) * (second!.value - first!.value)) / (second!.at - first!.at)
  )
}
