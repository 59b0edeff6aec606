import type { FigureDefinition } from '../../src/bikes/figure.ts'
import type { Figure } from '../../src/record/records.ts'
import type { Say } from '../../src/units/say.ts'
import { toSI } from '../../src/units/units.ts'

/** A figure as it is written: "200 kg ± 2". */
export function figureText(
  { unit, digits }: FigureDefinition,
  { value, plusMinus }: Pick<Figure, 'value' | 'plusMinus'>,
  say: Say,
): string {
  const text = say.quantity(toSI(value, unit), unit, digits)
  if (plusMinus === undefined) return text
  return `${text} ± ${say.number(toSI(plusMinus, unit), unit, digits === 0 ? 1 : digits)}`
}
