/** What a reader typed, read strictly: a number, or what is wrong with it. */
export type NumberReading = { value: number } | { problem: 'empty' | 'ambiguous' | 'nonsense' }

const PLAIN = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/
const THOUSANDS = /^[+-]?\d{1,3}(?:[.,]\d{3})+(?:[.,]\d+)?$/

/**
 * Reads one number with a point or a comma for the decimals. "1,234" is refused, since it is 1.234 to one reader and 1234 to another;
 * so is "1.234,5". A true minus sign and surrounding spaces are taken.
 */
export function readNumber(text: string): NumberReading {
  const trimmed = text.trim().replace('−', '-')
  if (trimmed === '') return { problem: 'empty' }
  if (/^[+-]?\d{1,3},\d{3}$/.test(trimmed) && !/^[+-]?0,/.test(trimmed))
    return { problem: 'ambiguous' }
  if (PLAIN.test(trimmed)) return { value: Number(trimmed.replace(',', '.')) }
  return { problem: THOUSANDS.test(trimmed) ? 'ambiguous' : 'nonsense' }
}
