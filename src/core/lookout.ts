import type { RideEventKind, Watch } from './end.ts'
import type { Stepper } from './integrate.ts'
import { bracketedRoot } from './root.ts'

const signOf = (value: number, band: number): number =>
  Math.abs(value) <= band ? 0 : Math.sign(value)

/** Keeps the side of 0 on which each watched quantity lies, and finds the first that changes it within a step. */
export function eventLocator(watches: Watch[], solver: Stepper) {
  const state = new Float64Array(4)
  // The middle and the end of a step, worked out once for all watches.
  const middle = new Float64Array(4)
  const end = new Float64Array(4)
  const signAt = (watch: Watch, time: number, y: Float64Array): number =>
    signOf(watch.value(time, y), watch.band)
  const sides = watches.map((watch) => watch.startSide ?? signAt(watch, 0, solver.y))

  function rootOf(
    watch: Watch,
    t: number,
    h: number,
    good: number,
    share: number,
    g: number,
  ): number {
    const at = (part: number): number => {
      solver.inside(part, state)
      return watch.value(t + part * h, state)
    }
    const before = at(good)
    // Already across, by less than rounding or its band, when the step began: it happens at once.
    return Math.sign(before) === Math.sign(g) ? 0 : bracketedRoot(at, good, share, before, g)
  }

  function crossingOf(watch: Watch, side: number, t: number, h: number): number | null {
    // The end first: its time is the one that was asked for last.
    const whole = watch.value(t + h, end)
    const half = watch.value(t + 0.5 * h, middle)
    const halfSign = signOf(half, watch.band)
    if (halfSign !== 0 && halfSign !== side) return rootOf(watch, t, h, 0, 0.5, half)
    const wholeSign = signOf(whole, watch.band)
    // From the latest share of the step at which it was seen on its own side.
    return wholeSign === 0 || wholeSign === side
      ? null
      : rootOf(watch, t, h, halfSign === 0 ? 0 : 0.5, 1, whole)
  }

  return {
    next(t: number, h: number): { share: number; kind: RideEventKind } | null {
      solver.inside(0.5, middle)
      solver.inside(1, end)
      let found = -1
      let first = Infinity
      for (let i = 0; i < watches.length; i++) {
        const share = sides[i] ? crossingOf(watches[i]!, sides[i]!, t, h) : null
        if (share !== null && share < first) [found, first] = [i, share]
      }
      if (found < 0) return null
      const watch = watches[found]!
      const side = -(sides[found] ?? 0)
      sides[found] = side
      return { share: first, kind: side > 0 ? watch.rising : watch.falling }
    },
    /** After an accepted step: a quantity that was 0 takes the side it has moved to. */
    passed(time: number, y: Float64Array): void {
      for (let i = 0; i < watches.length; i++)
        if (sides[i] === 0) sides[i] = signAt(watches[i]!, time, y)
    },
  }
}
