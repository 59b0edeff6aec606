import type { CheckedValue } from '../../checks/published.ts'
import type { Provenance, Uncounted } from '../../checks/schema.ts'

/** How far the published value was seen, in words. */
export const PROVENANCE: Record<Provenance, string> = {
  printed: 'the printed page was seen',
  'public-text': 'seen in a free public text',
  transcription: 'seen as a public transcription',
  memory: 'from memory',
  practice: 'common practice, no source',
}

/** Why a value is shown and not counted, in words. */
export const UNCOUNTED: Record<Uncounted, string> = {
  evaluated: 'the source prints the formula, and the value was worked out from it here',
  'round-trip': 'an input was worked out from the result',
  theorem: 'it holds for any formula of this kind, and so tells little',
  definition: 'a definition beside itself',
}

const MINUS = '−'
const minus = (text: string): string => text.replaceAll('-', MINUS)

/** Decimal places of a printed number, its power of ten taken in. */
function decimals(printed: string): number {
  const [, point = '', power = '0'] = /^[+\-−]?\d+(?:\.(\d*))?(?:e([+-]?\d+))?/i.exec(printed) ?? []
  return point.length - Number(power)
}

/** Our value with two places more than the published one, at most what a double holds. */
export function ourText({ ours, published }: Pick<CheckedValue, 'ours' | 'published'>): string {
  if (ours === null) return '—'
  const places = Math.max(0, decimals(published) + 2)
  const held = Math.max(0, 15 - Math.ceil(Math.log10(Math.abs(ours) || 1)))
  return minus(
    /e/i.test(published)
      ? Number(ours.toPrecision(9)).toExponential()
      : ours.toFixed(Math.min(places, held, 20)),
  )
}

/** The published number without its unit, with true minus signs. */
export const publishedText = ({
  published,
  unit,
}: Pick<CheckedValue, 'published' | 'unit'>): string =>
  minus(unit === '' ? published : published.slice(0, -unit.length).trim())

/** A difference or tolerance in two figures: "0.0011", "3.2 × 10⁻⁹". */
export function smallText(value: number | null): string {
  if (value === null) return '—'
  if (value === 0) return '0'
  const size = Math.abs(value)
  if (size >= 1e-4 && size < 1e4) return minus(String(Number(value.toPrecision(2))))
  const [figures = '', power = '0'] = value.toExponential(1).split('e')
  return `${minus(String(Number(figures)))} × 10${superscript(Number(power))}`
}

function superscript(power: number): string {
  return [...String(power)]
    .map((sign) => (sign === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)] ?? '')))
    .join('')
}

/** Inputs as they were written down, on one line; long lists by their length. */
export function inputText(input: unknown): string {
  if (Array.isArray(input))
    return input.length > 6 ? `${input.length} values` : `[${input.map(inputText).join(', ')}]`
  if (typeof input !== 'object' || input === null)
    return typeof input === 'number' ? minus(String(input)) : String(input)
  const fields = Object.entries(input)
  if (fields.length > 12) return `${fields.length} values`
  return fields
    .map(
      ([name, value]) =>
        `${name} ${typeof value === 'object' && value !== null && !Array.isArray(value) ? `(${inputText(value)})` : inputText(value)}`,
    )
    .join(', ')
}
