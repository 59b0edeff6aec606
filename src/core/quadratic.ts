/** Real roots of a u² + b u + c, ascending; those of the line where a is 0. Written so that a small root keeps its digits beside a large one. */
export function quadraticRoots(a: number, b: number, c: number): number[] {
  if (a === 0) return b === 0 ? [] : [-c / b]
  const square = b * b - 4 * a * c
  if (square < 0) return []
  const q = -(b + Math.sign(b || 1) * Math.sqrt(square)) / 2
  return (q === 0 ? [0] : [q / a, c / q]).sort((x, y) => x - y)
}
