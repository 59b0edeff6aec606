import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Bike, LoadCase } from '../../src/core/index.ts'
import { lastTravel } from '../../src/core/fork.ts'
import { type Found, findBalance } from '../../src/core/newton.ts'
import { type Scene, setScene } from '../../src/core/scene.ts'
import { randomCase, stream } from './bikes.ts'

const { cases } = JSON.parse(
  readFileSync(new URL('data/stance-cases.json', import.meta.url), 'utf8'),
) as {
  cases: { id: string; bike: Bike; load: LoadCase; settle: number }[]
}

/** What is left over at a balance that no stop takes [N]. */
function left(scene: Scene, { front, rear, balance }: Found): number {
  const over = (travel: number, unbalanced: number, last: number): number =>
    (travel === 0 && unbalanced <= 0) || (travel === last && unbalanced >= 0)
      ? 0
      : Math.abs(unbalanced)
  return Math.max(
    over(front, balance.front, lastTravel(scene.fork.limit)),
    over(rear, balance.rear, scene.rear.limit.travel),
  )
}

// How soon a search comes home is part of what it is: a wrong slope or step still finds the balance, by the slow way round.
describe('findBalance', () => {
  test('findBalance of the 90 invented bikes works the forces out five times, once eleven times: steps with exact slopes', () => {
    const counts = cases
      .map(({ bike, load, settle }) => findBalance(setScene(bike, load, settle)).evaluations)
      .sort((a, b) => a - b)
    expect(counts.filter((count) => count <= 5)).toHaveLength(89)
    expect(counts.at(-1)).toBeLessThanOrEqual(11)
  })

  test('findBalance of 500 bikes far wider than any built leaves at most a millionth of a newton, and goes the slow way for one in thirty at most', () => {
    const next = stream(1)
    let slow = 0
    for (let i = 0; i < 500; i++) {
      const { bike, loadCase, settle } = randomCase(next)
      let scene: Scene
      try {
        scene = setScene(bike, loadCase, settle)
      } catch {
        continue // no room for gas
      }
      const found = findBalance(scene)
      if (found.evaluations > 15) slow++
      expect(left(scene, found)).toBeLessThanOrEqual(1e-6)
      // the slow way is a bracketed search inside a bracketed search, each of some ten rounds
      expect(found.evaluations).toBeLessThanOrEqual(200)
    }
    // those that go in circles between two corners of their springs: the way must be there
    expect(slow).toBeGreaterThan(5)
    expect(slow).toBeLessThanOrEqual(16)
  })
})
