import { isNumber } from '../../src/machine/statement.ts'
import type { ComponentType } from 'preact'
import { h } from 'preact'
import { render } from 'preact-render-to-string'
import { expect } from 'vitest'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import type { WholeCalculator } from '../../src/machine/calculator.ts'
import type { Given } from '../../src/machine/given.ts'
import { evaluate } from '../../src/machine/evaluate.ts'
import type { Computed } from '../../src/machine/evaluate.ts'
import { middle } from '../../src/units/interval.ts'
import { createSay } from '../../src/units/say.ts'
import { IMPERIAL, METRIC } from '../../src/units/choice.ts'
import { fromSI } from '../../src/units/units.ts'
import { bikes } from './bikes.ts'

/** Loose on purpose: each calculator has its own inputs and outputs. */
type Any = WholeCalculator

export { bikes }

export const asDefinition = (definition: unknown): Any => definition as Any

/** Everything that a reader with these values sees; fails the test where nothing can be computed. */
export function shown(
  definition: unknown,
  given: Given = {},
  held: Given | null = null,
): { now: Computed; before: Computed | null } {
  const { now, before, problems, refusal } = evaluate(
    asDefinition(definition),
    given,
    { bikes },
    held,
  )
  expect({ problems, refusal }).toEqual({ problems: {}, refusal: null })
  return { now: now!, before }
}

/** A result in the definition's unit, an interval as its middle; NaN where there is none, which no comparison lets pass. */
export function result(definition: unknown, given: Given, output: string): number {
  const value = middle(shown(definition, given).now.output[output])
  const described = asDefinition(definition).outputs[output]
  if (value === null || described === undefined || !isNumber(described)) return Number.NaN
  return fromSI(value, described.unit)
}

/** Text of all remarks, with plain spaces. */
export const remarksOf = (
  definition: unknown,
  given: Given = {},
  held: Given | null = null,
): string =>
  shown(definition, given, held)
    .now.remarks.map((remark) => remark.text)
    .join('\n')
    .replaceAll('\u00a0', ' ')

/** Rounding in a sum or product of a few numbers, relative to lengths of metres and forces of kilonewtons. */
export const ROUNDING = 1e-9

export function expectNear(actual: unknown, wanted: number, tolerance: number): void {
  expect(typeof actual).toBe('number')
  expect(
    Math.abs(Number(actual) - wanted),
    `${String(actual)} against ${wanted}`,
  ).toBeLessThanOrEqual(tolerance)
}

/** The figure's markup for these values. */
export function drawn(
  definition: unknown,
  figure: unknown,
  given: Given = {},
  held: Given | null = null,
  imperial = false,
): string {
  const { now, before } = shown(definition, given, held)
  const props = { now, before, say: createSay(imperial ? IMPERIAL : METRIC), prefix: 'f' }
  return render(h(figure as ComponentType<LooseFigureProps>, props as never))
}

/** No number went missing, and nothing that the security policy blocks. */
export function expectSound(markup: string): void {
  expect(markup).not.toMatch(/NaN|Infinity|undefined/)
  expect(markup).not.toMatch(/ style=/)
}
