/** Something that a published check can ask for: functions of the core, by name, and how to call them with named inputs [SI]. */
export interface Call {
  /** exports of the core (or, with their file, parts of it that are not exported) that give the value */
  core: readonly string[]
  run: (input: unknown) => unknown
}

/** A call of core functions; the inputs come from a file, and a wrong one makes the core refuse. */
export function call<Input>(core: readonly string[], run: (input: Input) => unknown): Call {
  return { core, run: (input) => run(input as Input) }
}

/** A slope by central differences, for where a published value is a peak. */
export function slopeOf(f: (x: number) => number, step: number): (x: number) => number {
  return (x) => (f(x + step) - f(x - step)) / (2 * step)
}
