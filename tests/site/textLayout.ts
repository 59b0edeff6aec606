/** What is wrong with the lettering of the drawings inside an element: its height must be `least` px. Runs in the page, so it stands alone. */
export function faultsOfLettering(root: Element, least: number): string[] {
  const faults: string[] = []
  interface Box {
    text: string
    left: number
    right: number
    top: number
    bottom: number
  }
  const shown = (text: Element): boolean => {
    const { visibility, display } = getComputedStyle(text)
    return visibility !== 'hidden' && display !== 'none' && Boolean(text.textContent?.trim())
  }
  /** The lettering's ink, about: its line box less the room above its capitals and below its descenders. */
  const boxOf = (text: SVGTextElement): Box => {
    const { left, right, top, bottom } = text.getBoundingClientRect()
    const turned = Math.abs(text.getScreenCTM()!.b) > 0.01
    const [x, y] = turned ? [(right - left) * 0.16, 0] : [0, (bottom - top) * 0.16]
    return {
      text: text.textContent.trim(),
      left: left + x,
      right: right - x,
      top: top + y,
      bottom: bottom - y,
    }
  }
  const apart = (a: Box, b: Box, room: number): boolean =>
    a.right + room <= b.left || b.right + room <= a.left || a.bottom <= b.top || b.bottom <= a.top
  /** Arrows' shafts, dimension lines and leaders are straight: a place every two pixels tells whether one runs through a text. */
  const through = (line: SVGGeometryElement, box: Box): boolean => {
    const around = line.getBoundingClientRect()
    if (
      around.right < box.left ||
      around.left > box.right ||
      around.bottom < box.top ||
      around.top > box.bottom
    )
      return false
    const matrix = line.getScreenCTM()!
    const length = line.getTotalLength()
    const steps = Math.max(2, Math.ceil((length * Math.abs(matrix.a || matrix.b)) / 2))
    for (let step = 0; step <= steps; step++) {
      const { x, y } = line.getPointAtLength((length * step) / steps).matrixTransform(matrix)
      if (x > box.left + 1 && x < box.right - 1 && y > box.top + 1 && y < box.bottom - 1)
        return true
    }
    return false
  }
  for (const svg of root.querySelectorAll<SVGSVGElement>('svg')) {
    const frame = svg.getBoundingClientRect()
    // a view that is not in front
    if (frame.width === 0) continue
    const texts = [...svg.querySelectorAll<SVGTextElement>('text')].filter(shown)
    const boxes = texts.map(boxOf)
    texts.forEach((text, index) => {
      const matrix = text.getScreenCTM()!
      const size =
        Number.parseFloat(getComputedStyle(text).fontSize) * Math.hypot(matrix.a, matrix.b)
      const box = boxes[index]!
      // a hundredth of a pixel covers the rounding of widths
      if (size < least - 0.01) faults.push(`“${box.text}” is ${size.toFixed(1)} px`)
      const out = Math.max(
        frame.left - box.left,
        box.right - frame.right,
        frame.top - box.top,
        box.bottom - frame.bottom,
      )
      if (out > 0.5) faults.push(`“${box.text}” is ${out.toFixed(1)} px past the frame`)
    })
    boxes.forEach((box, index) => {
      for (const other of boxes.slice(index + 1))
        if (!apart(box, other, 2)) faults.push(`“${box.text}” and “${other.text}” overlap`)
    })
    for (const line of svg.querySelectorAll<SVGGeometryElement>('.shaft, .measure, .leader'))
      for (const box of boxes)
        if (through(line, box))
          faults.push(`a line (${line.getAttribute('class')}) runs through “${box.text}”`)
  }
  return faults
}
