import { randomStates } from '../../calculators/stops.ts'
import type { Given, GivenValue } from '../../../src/machine/given.ts'
import type { Input, Inputs } from '../../../src/machine/statement.ts'
import { stream } from '../../core/bikes.ts'
import type { Described } from './outputs.ts'

/** Tyre sizes to draw from, for the only inputs that are texts. */
const SIZES = ['90/90-18', '110/80R19', '120/70ZR17', '130/80-17', '160/60R17', '180/55ZR17']

/** The part of an input that both editions take: the narrower range, the options of both; null where they have nothing in common. */
function sharedInput(now: Input, then: Input | undefined): Input | null {
  if (then === undefined || then.kind !== now.kind) return null
  if (now.kind === 'quantity' && then.kind === 'quantity') {
    if (now.unit !== then.unit)
      throw new Error(`${now.label} was in ${then.unit}, is in ${now.unit}`)
    const range = [
      Math.max(now.range[0], then.range[0]),
      Math.min(now.range[1], then.range[1]),
    ] as const
    const { typical: _, ...known } = now
    return { ...known, range }
  }
  if (now.kind === 'choice' && then.kind === 'choice') {
    const options = Object.entries(now.options).filter(([code]) => code in then.options)
    return { ...now, options: Object.fromEntries(options) }
  }
  return now
}

/** What two editions of a calculator both ask for, and what one of them alone does. */
export interface Shared {
  inputs: Inputs
  added: readonly string[]
  dropped: readonly string[]
}

export function sharedInputs(now: Described, then: Described): Shared {
  const inputs = Object.entries(now.inputs).flatMap(([id, input]): [string, Input][] => {
    const shared = sharedInput(input, then.inputs[id])
    return shared === null ? [] : [[id, shared]]
  })
  const kept = Object.fromEntries(inputs)
  return {
    inputs: kept,
    added: Object.keys(now.inputs).filter((id) => !(id in kept)),
    dropped: Object.keys(then.inputs).filter((id) => !(id in kept)),
  }
}

/** What a state of before means by a value that it leaves out: what links of that version meant, else the default of then, else of now. */
function leftOut(now: Described, then: Described): Given {
  const earlier = now.version === then.version ? undefined : now.earlier?.[then.version]?.given
  return Object.fromEntries(
    Object.keys(now.inputs).flatMap((id): [string, GivenValue][] => {
      const value = earlier?.[id] ?? then.inputs[id]?.default ?? now.inputs[id]?.default
      return value === undefined ? [] : [[id, value]]
    }),
  )
}

/** Each state as either edition takes it. */
export interface Pair {
  now: Given
  then: Given
}

/** Random states on the stops of the sliders, the same in both editions, all of it known. */
export function* statesOf(
  now: Described,
  then: Described,
  { inputs }: Shared,
  count: number,
  seed: number,
): Generator<Pair> {
  const next = stream(seed + 1)
  const before = leftOut(now, then)
  const texts = Object.keys(inputs).filter((id) => inputs[id]?.kind === 'text')
  for (const drawn of randomStates({ inputs }, count, seed)) {
    const sizes = texts.map((id) => [id, SIZES[Math.floor(next() * SIZES.length)]!] as const)
    const given = { ...drawn, ...Object.fromEntries(sizes) }
    yield { now: { ...before, ...given }, then: given }
  }
}
