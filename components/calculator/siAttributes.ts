import { codesOf } from '../../src/machine/cells.ts'
import type { Cell } from '../../src/machine/cells.ts'
import { isInterval } from '../../src/units/interval.ts'

/** The SI value for programs: `data-si`, and for an interval its ends. */
export function siAttributes(value: Cell): Record<string, string> {
  if (typeof value === 'number') return { 'data-si': String(value) }
  const codes = codesOf(value)
  if (codes.length > 0) return { 'data-code': codes.join(', ') }
  if (!isInterval(value)) return {}
  return {
    'data-si-low': String(value.low),
    'data-si-high': String(value.high),
    ...(value.value === undefined ? {} : { 'data-si': String(value.value) }),
  }
}
