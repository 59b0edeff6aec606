/** Height of the lettering on screen [px] where a drawing is shown at its own size or smaller, and at most. */
const SMALL = 12.4
const LARGE = 15
/** What lettering gains for each time that a drawing is larger than its own size [px]. */
const GAIN = 2.2
/** The three together, for a test that runs the function in a page, where it must stand alone. */
export const LETTERING: readonly [number, number, number] = [SMALL, GAIN, LARGE]

/** Sets the size of each drawing's lettering, so that it is as high on screen as text must be, however small the drawing is. Without it the style sheet's own steps apply. Runs in the page and stands alone. */
export function fitLettering(root: Element, [small, gain, large] = LETTERING): void {
  const fits = [...root.querySelectorAll<SVGSVGElement>('.fig > svg')].map((svg) => {
    const { width, height } = svg.getBoundingClientRect()
    const box = svg.viewBox.baseVal
    return { svg, scale: Math.min(width / box.width, height / box.height) }
  })
  for (const { svg, scale } of fits) {
    if (!(scale > 0)) continue
    const size = Math.min(large, small + Math.max(0, scale - 1) * gain) / scale
    svg.style.setProperty('--letters', `${size.toFixed(2)}px`)
  }
}
