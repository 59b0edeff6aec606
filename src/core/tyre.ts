import { DomainError } from './domain.ts'

// UN Regulation No. 75, section 2 (nominal rim diameter, mm, for its code); from memory, except 17, 19 and 21, which are as ISO 5751 has them.
const RIM_DIAMETER = new Map([
  [4, 102],
  [5, 127],
  [6, 152],
  [7, 178],
  [8, 203],
  [9, 229],
  [10, 254],
  [11, 279],
  [12, 305],
  [13, 330],
  [14, 356],
  [15, 381],
  [16, 406],
  [17, 432],
  [18, 457],
  [19, 483],
  [20, 508],
  [21, 533],
  [22, 559],
  [23, 584],
])

// Section width, mm, for the second letter of an M-letter code. The trade's conversion tables agree on these, except P
// (110 to 120 by table; 120 at 85 % and 110 at 90 % differ by 3 mm in radius). Common practice, no standard seen. L and S: no two tables agree.
const LETTER_WIDTH = new Map([
  ['H', 80],
  ['J', 90],
  ['M', 100],
  ['N', 110],
  ['P', 120],
  ['R', 120],
  ['T', 130],
  ['U', 140],
  ['V', 150],
])

const INCH = 25.4
const EXPECTED =
  "must be a tyre size such as '120/70-17', '120/70 ZR 17 M/C', '3.00-18' or 'MT90-16'"

// Between section and rim: a dash or a space, with a speed letter and R (radial) or B (bias-belted) if the tyre carries them.
const JOINT = String.raw`(?:\s*-\s*|\s*-?\s*[A-Z]?\s?[A-Z]\s*-?\s*|\s+)`
// After the rim: what does not change the size (M/C, load index and speed, tube type, ply rating, end, reinforcement).
const AFTER = String.raw`(\d{1,2})(?:\s*(?:M/C|MC|\(?\d{2,3}[A-Z]\)?|\([A-Z]\)|TL|TT|REINF\.?|REINFORCED|XL|M\+S|TUBELESS|FRONT|REAR|\dPR))*`
const METRIC = new RegExp(String.raw`^(\d{2,3})\s*/\s*(\d{2,3})${JOINT}${AFTER}$`)
const INCHES = new RegExp(
  String.raw`^(\d{1,2}(?:\.\d{1,2})?)(?:\s*/\s*(\d{2,3}))?${JOINT}${AFTER}$`,
)
const LETTERS = new RegExp(String.raw`^M([A-Z])\s*(\d{2,3})${JOINT}${AFTER}$`)

/**
 * Unloaded radius [m] of a tyre from its size marking: half the nominal rim diameter plus the section height. Reads metric sizes
 * ('120/70-17'), inch sizes ('3.00-18') and letter codes ('MT90-16'), with or without what follows the rim code; refuses what it cannot read.
 * A new tyre may differ by a few millimetres, and a loaded one sits lower. Source: UN Regulation No. 75, ISO 5751, ISO 4249 (from memory).
 */
export function tyreRadius(marking: string): number {
  if (typeof marking !== 'string') throw new DomainError('marking', marking, EXPECTED)
  const text = marking
    .trim()
    .toUpperCase()
    .replaceAll(/[‐-―−]/g, '-')
    .replaceAll(/(\d),(\d)/g, '$1.$2')
    .replaceAll(/\s+/g, ' ')
  const size = metric(text) ?? letters(text, marking) ?? inches(text)
  if (!size) throw new DomainError('marking', marking, EXPECTED)
  const rim = RIM_DIAMETER.get(size.rim)
  if (rim === undefined)
    throw new DomainError('marking', marking, 'must end in a rim code from 4 to 23')
  if (size.aspect < 25 || size.aspect > 110)
    throw new DomainError('marking', marking, 'must have an aspect ratio from 25 to 110 %')
  if (size.width < 40 || size.width > 400)
    throw new DomainError(
      'marking',
      marking,
      'must have a section width from 40 to 400 mm (1.6 to 15.7 in)',
    )
  return (rim / 2 + (size.width * size.aspect) / 100) / 1000
}

/** Section width [mm], aspect ratio [%] and rim code. */
interface Size {
  width: number
  aspect: number
  rim: number
}

function metric(text: string): Size | null {
  const [, width, aspect, rim] = METRIC.exec(text) ?? []
  return rim === undefined
    ? null
    : { width: Number(width), aspect: Number(aspect), rim: Number(rim) }
}

function letters(text: string, marking: string): Size | null {
  const [, letter = '', aspect, rim] = LETTERS.exec(text) ?? []
  if (rim === undefined) return null
  const width = LETTER_WIDTH.get(letter)
  if (width === undefined) {
    throw new DomainError(
      'marking',
      marking,
      `must have a width letter that is known (${[...LETTER_WIDTH.keys()].join(', ')}); give the metric size instead`,
    )
  }
  return { width, aspect: Number(aspect), rim: Number(rim) }
}

function inches(text: string): Size | null {
  const [, width = '', aspect, rim] = INCHES.exec(text) ?? []
  if (rim === undefined) return null
  return {
    width: Number(width) * INCH,
    aspect: aspect === undefined ? inchAspect(width) : Number(aspect),
    rim: Number(rim),
  }
}

/** Inch sizes are as high as wide, except the low-section series, whose widths end in .10 or .60 and whose height is 85 % (ISO 4249, from memory). */
function inchAspect(width: string): number {
  return /\.[16]0?$/.test(width) ? 85 : 100
}
