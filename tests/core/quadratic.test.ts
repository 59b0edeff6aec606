import { describe, expect, test } from 'vitest'
import { quadraticRoots } from '../../src/core/quadratic.ts'

describe('quadraticRoots', () => {
  test.each([
    ['u² − 3u + 2', [1, -3, 2], [1, 2]],
    ['u² + 3u + 2', [1, 3, 2], [-2, -1]],
    ['−u² + 3u − 2', [-1, 3, -2], [1, 2]],
    ['2u² − 8', [2, 0, -8], [-2, 2]],
    ['u² − 2u + 1, a double root', [1, -2, 1], [1, 1]],
    ['u² + u + 1, no real root', [1, 1, 1], []],
    ['u² − 5u, one root 0', [1, -5, 0], [0, 5]],
    ['3u², twice 0', [3, 0, 0], [0]],
    ['2u − 4, a line', [0, 2, -4], [2]],
    ['7, no root at all', [0, 0, 7], []],
  ] as const)('quadraticRoots of %s', (_name, [a, b, c], roots) =>
    expect(quadraticRoots(a, b, c)).toEqual(roots),
  )

  test('quadraticRoots keeps the digits of a small root beside a large one: u² ∓ 10⁸ u + 1 has ±10⁻⁸', () => {
    for (const sign of [1, -1]) {
      const roots = quadraticRoots(1, -1e8 * sign, 1)
      const small = roots.reduce((best, root) => (Math.abs(root) < Math.abs(best) ? root : best))
      expect(Math.abs(small * sign - 1e-8)).toBeLessThanOrEqual(1e-22) // 1 part in 10¹⁴, and 10⁻²⁴ of the next term
    }
  })
})
