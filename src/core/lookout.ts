import type { RideEventKind, Watch } from './end.ts'
import type { Stepper } from './integrate.ts'
import { bracketedRoot } from './root.ts'

/** Keeps the side of 0 on which each watched quantity lies, and finds the first that changes it within a step. */
export function lookoutFor(watches: Watch[], solver: Stepper) {
  const state = new Float64Array(4)
  const signAt = ({ value, band }: Watch, time: number, y: Float64Array): number => {
    const g = value(time, y)
    return Math.abs(g) <= band ? 0 : Math.sign(g)
  }
  const sides = watches.map((watch) => watch.startSide ?? signAt(watch, 0, solver.y))

  function crossingOf(watch: Watch, side: number, t: number, h: number): number | null {
    const at = (share: number): number => {
      solver.inside(share, state)
      return watch.value(t + share * h, state)
    }
    // The latest share of the step at which it was seen on its own side.
    let good = 0
    for (const share of [0.5, 1]) {
      const g = at(share)
      if (Math.abs(g) <= watch.band) continue
      if (Math.sign(g) === side) {
        good = share
        continue
      }
      const before = at(good)
      // Already across, by less than rounding or its band, when the step began: it happens at once.
      return Math.sign(before) === Math.sign(g) ? 0 : bracketedRoot(at, good, share, before, g)
    }
    return null
  }

  return {
    first(t: number, h: number): { share: number; kind: RideEventKind } | null {
      let found = -1
      let first = Infinity
      watches.forEach((watch, i) => {
        const share = sides[i] ? crossingOf(watch, sides[i], t, h) : null
        if (share !== null && share < first) [found, first] = [i, share]
      })
      const watch = watches[found]
      if (!watch) return null
      const side = -(sides[found] ?? 0)
      sides[found] = side
      return { share: first, kind: side > 0 ? watch.rising : watch.falling }
    },
    /** After an accepted step: a quantity that was 0 takes the side it has moved to. */
    settle(time: number, y: Float64Array): void {
      watches.forEach((watch, i) => {
        if (sides[i] === 0) sides[i] = signAt(watch, time, y)
      })
    },
  }
}
