import { inSI } from './inSI.ts'
import type { BikeSpec } from './inSI.ts'
import type { BikeSheet, BikeSheets } from './sheet.ts'

/* A bike as one text, "middleweight-roadster;mass:210;fork.springRate:9.5": an invented bike's id, and the figures of its sheet that differ. A link carries it, so that whoever opens it gets numbers and no name of anybody's store. */

/** Places on a bike's sheet, as "fork.travel", with their numbers. */
export type SheetNumbers = Readonly<Record<string, number>>

const PART = /^([A-Za-z]+(?:\.[A-Za-z]+){0,2}):(\d{1,5}(?:\.\d{1,6})?)$/

/** The stand-in and the numbers of a bike's text; null where it is none. `ids` are the invented bikes. */
export function readBikeCode(
  code: string,
  ids: readonly string[],
): { like: string; numbers: SheetNumbers } | null {
  const [like = '', ...parts] = code.split(';')
  if (!ids.includes(like)) return null
  const numbers: Record<string, number> = {}
  for (const part of parts) {
    const match = PART.exec(part)
    if (!match) return null
    numbers[match[1]!] = Number(match[2])
  }
  return { like, numbers }
}

/** The text of a bike. */
export const writeBikeCode = (like: string, numbers: SheetNumbers): string =>
  [like, ...Object.entries(numbers).map(([place, value]) => `${place}:${value}`)].join(';')

/** Something with one number put in its place; null where it has no number there. */
function put<T extends object>(
  sheet: T,
  [first, ...rest]: readonly string[],
  value: number,
): T | null {
  if (first === undefined || !Object.hasOwn(sheet, first)) return null
  const there: unknown = Reflect.get(sheet, first)
  if (rest.length === 0) return typeof there === 'number' ? { ...sheet, [first]: value } : null
  if (typeof there !== 'object' || there === null) return null
  const inner = put(there, rest, value)
  return inner && { ...sheet, [first]: inner }
}

/** The sheet of a bike's text, be it an invented one's id; null where it is none. */
export function sheetOfCode(code: string, sheets: BikeSheets): BikeSheet | null {
  if (Object.hasOwn(sheets, code)) return sheets[code]!
  const read = readBikeCode(code, Object.keys(sheets))
  let sheet = read && { ...sheets[read.like]!, id: code, name: 'My bike' }
  for (const [place, value] of Object.entries(read?.numbers ?? {}))
    sheet = sheet && put(sheet, place.split('.'), value)
  return sheet
}

const known = new WeakMap<object, Map<string, BikeSpec | null>>()

/** The bike of a text in SI, turned once; null where it is none. Whether its figures can go with one another shows when it is computed with. */
export function bikeOfCode(code: string, sheets: BikeSheets): BikeSpec | null {
  const found = known.get(sheets) ?? new Map<string, BikeSpec | null>()
  known.set(sheets, found)
  if (!found.has(code)) {
    const sheet = sheetOfCode(code, sheets)
    found.set(code, sheet && inSI(sheet))
  }
  return found.get(code) ?? null
}
