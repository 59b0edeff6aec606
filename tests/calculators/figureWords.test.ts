import type { ComponentType } from 'preact'
import { h } from 'preact'
import { render } from 'preact-render-to-string'
import { describe, expect, test } from 'vitest'
import { calculatorIds, loadCalculator } from '../../src/calculators/index.ts'
import type { LooseFigureProps } from '../../src/drawing/props.ts'
import type { Cell, OutputValue } from '../../src/machine/cells.ts'
import { METRIC } from '../../src/units/choice.ts'
import { createSay } from '../../src/units/say.ts'
import { shown } from './evaluated.ts'
import { readKept } from './kept.ts'

/* A code is for code. A figure that writes one shows “on-mark” to somebody, on screen or to a screen reader. */

const figures = import.meta.glob<{ default: ComponentType<LooseFigureProps> }>(
  '../../src/calculators/*/Figure.tsx',
  { eager: true },
)

const CODE = 'zib-qux'
const isVerdict = (cell: Cell): boolean =>
  typeof cell === 'string' || (typeof cell === 'object' && cell !== null && 'oneOf' in cell)

/** A result with a code that no figure knows in place of each verdict. */
function coded(value: OutputValue, verdict: Cell): OutputValue {
  if (!Array.isArray(value)) return isVerdict(value as Cell) ? verdict : value
  return (value as readonly (readonly Cell[])[]).map((row) =>
    row.map((cell) => (isVerdict(cell) ? verdict : cell)),
  )
}

const unknown: Cell = { oneOf: [CODE, CODE] }

describe.each(calculatorIds.map((id) => [id] as const))('%s', (id) => {
  test.each([
    ['known', CODE],
    ['open', unknown],
  ] as const)('its figure writes no code of a verdict that is %s', (_, verdict) => {
    const Figure = figures[`../../src/calculators/${id}/Figure.tsx`]!.default
    for (const { given } of readKept()[id]!.slice(0, 3)) {
      const { now } = shown(loadCalculator(id), given)
      const output = Object.fromEntries(
        Object.entries(now.output).map(([name, value]) => [name, coded(value, verdict)]),
      )
      const props = { now: { ...now, output }, before: null, say: createSay(METRIC), prefix: 'f' }
      const markup = render(h(Figure, props as never))
      expect(markup).not.toContain(CODE)
      expect(markup).not.toContain('object Object')
    }
  })
})
