import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { balanceAt, balanceSlopes, blankBalance } from '../../src/core/balance.ts'
import type { Bike, LoadCase } from '../../src/core/index.ts'
import { setScene } from '../../src/core/scene.ts'

const { cases } = JSON.parse(
  readFileSync(new URL('data/stance-cases.json', import.meta.url), 'utf8'),
) as {
  cases: { id: string; bike: Bike; load: LoadCase; settle: number }[]
}

// A search with wrong slopes still finds the balance, only later: what they are has to be asked of them directly.
describe('balanceSlopes', () => {
  test.each(cases.map((each) => [each.id, each] as const))(
    'balanceSlopes of %s are the changes of what balanceAt leaves over',
    (_id, { bike, load, settle }) => {
      const scene = setScene(bike, load, settle)
      const [front, rear] = [scene.fork.limit.travel * 0.41, scene.rear.limit.travel * 0.37]
      const here = blankBalance()
      balanceAt(scene, front, rear, here)
      balanceSlopes(scene, front, rear, here)
      const step = 1e-6
      const over = (x: number, y: number): { front: number; rear: number } => {
        const out = blankBalance()
        balanceAt(scene, x, y, out)
        return { front: out.front, rear: out.rear }
      }
      const [frontMore, frontLess, rearMore, rearLess] = [
        over(front + step, rear),
        over(front - step, rear),
        over(front, rear + step),
        over(front, rear - step),
      ]
      const wanted = {
        frontPerFront: (frontMore.front - frontLess.front) / (2 * step),
        rearPerFront: (frontMore.rear - frontLess.rear) / (2 * step),
        frontPerRear: (rearMore.front - rearLess.front) / (2 * step),
        rearPerRear: (rearMore.rear - rearLess.rear) / (2 * step),
      }
      for (const [name, value] of Object.entries(wanted)) {
        const got = here[name as keyof typeof wanted]
        // forces of kN at 1e-16 over a step of 1e-6 m leave 1e-3 N/m or so; a kink of the curves inside the step would show as far more
        expect(Math.abs(got - value), `${name}: ${got} against ${value}`).toBeLessThanOrEqual(
          0.05 + 1e-6 * Math.abs(value),
        )
      }
    },
  )
})
