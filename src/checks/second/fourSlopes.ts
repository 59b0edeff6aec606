/** A state of some values moved on by a step of time [s], by Runge and Kutta’s four slopes. */
export function fourSlopes<State extends readonly number[]>(
  slopes: (time: number, state: State) => State,
  state: State,
  time: number,
  step: number,
): State {
  const moved = (by: readonly number[], over: number): State =>
    state.map((value, k) => value + over * by[k]!) as readonly number[] as State
  const first = slopes(time, state)
  const second = slopes(time + step / 2, moved(first, step / 2))
  const third = slopes(time + step / 2, moved(second, step / 2))
  const fourth = slopes(time + step, moved(third, step))
  const mean = first.map((slope, k) => (slope + 2 * second[k]! + 2 * third[k]! + fourth[k]!) / 6)
  return moved(mean, step)
}
