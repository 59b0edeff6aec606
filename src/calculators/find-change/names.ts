import { counted, plural } from '../../units/words.ts'
import { motionRatioAt } from '../../bikes/aboard.ts'
import type { AimId, LeftOut, MeanId } from '../../core/index.ts'
import type { Say } from '../../units/say.ts'
import type { Unit } from '../../units/units.ts'
import type { Level, Values } from './means.ts'
import type { FittedSag } from './fitted.ts'
import type { Gap, ToldAim, ToldChange, ToldReading } from './picture.ts'

/** What a way asks of the workshop, in words. */
export const LEVELS: Readonly<Record<Level, string>> = {
  nothing: 'nothing to change',
  adjuster: 'nothing opened, nothing bought',
  opened: 'the fork is opened',
  out: 'the shock comes out',
  bought: 'the fork is opened for the new springs',
  parts: 'springs to buy',
}

/** An aim as a row and as a sentence name it, how its reading is written, and the least change of it worth telling [SI]: what a tape or a gauge shows. */
interface AimWords {
  name: string
  inWords: string
  unit: Unit
  digits: number
  least: number
}

const length = (name: string, inWords: string): AimWords => ({
  name,
  inWords,
  unit: 'mm',
  digits: 1,
  least: 5e-4,
})

export const AIM_WORDS: Readonly<Record<AimId, AimWords>> = {
  frontStaticSag: length('Front static sag', 'front static sag'),
  frontRiderSag: length('Front sag, rider', 'front sag with the rider'),
  rearStaticSag: length('Rear static sag', 'rear static sag'),
  rearRiderSag: length('Rear sag, rider', 'rear sag with the rider'),
  trail: length('Trail', 'trail'),
  rake: { name: 'Rake', inWords: 'rake', unit: '°', digits: 2, least: 9e-4 },
  frontShare: {
    name: 'Front share',
    inWords: 'the front’s share of the load',
    unit: '%',
    digits: 1,
    least: 2e-3,
  },
  frontHeight: length('Front height', 'front height'),
  rearHeight: length('Rear height', 'rear height'),
  brakingReserve: length('Left on the brakes', 'travel left on the brakes'),
}

/** Heights are told as a change from now, since nobody knows them otherwise. */
export const isHeight = (aim: AimId): boolean => aim === 'frontHeight' || aim === 'rearHeight'

/** A reading of an aim in the reader's unit. */
export function readingWords(aim: AimId, value: number, say: Say): string {
  const { unit, digits } = AIM_WORDS[aim]
  return isHeight(aim) ? say.change(value, unit, digits) : say.quantity(value, unit, digits)
}

/** The window of an aim. */
export function windowWords({ aim, low, high, open }: ToldAim, say: Say): string {
  const { unit, digits } = AIM_WORDS[aim]
  if (SAGS.has(aim) && (open.below || low <= 0) && (open.above || high >= ANY_SAG)) return 'any'
  if (open.above) return `${readingWords(aim, low, say)} or more`
  if (open.below) return `${readingWords(aim, high, say)} or less`
  return `${isHeight(aim) ? say.change(low, unit, digits) : say.number(low, unit, digits)} to ${readingWords(aim, high, say)}`
}

/** A sag up to which no fork or shock of a road bike goes: a window from nothing to there asks for nothing [m]. Common practice, no source. */
const ANY_SAG = 0.1
const SAGS: ReadonlySet<AimId> = new Set([
  'frontStaticSag',
  'frontRiderSag',
  'rearStaticSag',
  'rearRiderSag',
])

/** By how much an aim is missed. */
export function missWords({ aim, misses }: ToldAim, say: Say): string {
  const { unit, digits } = AIM_WORDS[aim]
  const by = say.quantity(Math.abs(misses), unit, digits)
  return misses < 0 ? `${by} short` : `${by} over`
}

/** How a way moves a reading that was not asked for; null where nobody could measure it. */
export function besideWords({ aim, now, after }: ToldReading, say: Say): string | null {
  const { inWords, unit, digits, least } = AIM_WORDS[aim]
  if (Math.abs(after - now) < least) return null
  return `${inWords} ${say.change(after - now, unit, digits)}`
}

/** The ± of an aim; null where it rounds to nothing. */
export function plusMinusWords({ aim, plusMinus }: ToldAim, say: Say): string | null {
  const { unit, digits } = AIM_WORDS[aim]
  const text = say.number(plusMinus, unit, digits)
  return /[1-9]/.test(text) ? `± ${text}` : null
}

const WHERE = 'each leg'

/** What is done, as an order to whoever holds the spanner: what, in words, and how much of it. */
export function changeWords(
  { mean, value, turns }: ToldChange,
  { forkAdjuster }: Pick<Values, 'forkAdjuster'>,
  say: Say,
): { what: string; howMuch: string; where?: string } {
  const size = say.quantity(Math.abs(value), 'mm', 1)
  const more = value > 0
  const turned = (): string => (turns === null ? size : `${turnWords(turns)} (${size})`)
  switch (mean) {
    case 'forkPreloadChange':
      return forkAdjuster === 'inside'
        ? {
            what: `Fit fork spacers, ${more ? 'longer' : 'shorter'} by`,
            howMuch: size,
            where: WHERE,
          }
        : {
            what: `Wind the fork preload ${more ? 'in' : 'out'}`,
            howMuch: turned(),
            where: `${WHERE}, from where it is now`,
          }
    case 'tubeRaise':
      return { what: `${more ? 'Raise' : 'Lower'} the tubes in the yokes`, howMuch: size }
    case 'forkRate':
      return { what: 'Fit fork springs of', howMuch: say.quantity(value, 'N/mm', 1), where: WHERE }
    case 'oilHeightChange':
      return { what: `${more ? 'Lower' : 'Raise'} the oil level`, howMuch: size, where: WHERE }
    case 'rearPreloadChange':
      return { what: `Wind the shock preload ${more ? 'in' : 'out'}`, howMuch: turned() }
    case 'rearRate':
      return { what: 'Fit a shock spring of', howMuch: say.quantity(value, 'N/mm', 1) }
    case 'shockLengthChange':
      return { what: `Make the shock ${more ? 'longer' : 'shorter'} by`, howMuch: size }
  }
}

/** Turns to the quarter, as a hand counts them. */
function turnWords(turns: number): string {
  const quarters = Math.round(Math.abs(turns) * 4)
  const count = (quarters / 4).toFixed(quarters % 4 === 0 ? 0 : quarters % 2 === 0 ? 1 : 2)
  return `${count} ${plural(quarters / 4, 'turn')}`
}

type Gaps = Pick<Values, 'forkAdjuster' | 'frontGap' | 'rearGap' | 'bike'>

const OPENED = 'The cap is under spring force: take the preload out and hold the bike up first.'

/** The danger of one change, in the words of that step; undefined where it has none of its own. */
export function dangerOf({ mean, value }: ToldChange, input: Gaps, say: Say): string | undefined {
  if (mean === 'forkRate' || (mean === 'forkPreloadChange' && input.forkAdjuster === 'inside'))
    return OPENED
  if (mean === 'oilHeightChange')
    return value < 0
      ? 'Higher oil leaves less air: a fork too full locks solid. Take the spring out first.'
      : OPENED
  if (mean === 'tubeRaise')
    return value > 0
      ? `The front tyre comes nearer to yokes and radiator: of ${gapWords(input.frontGap, value, say)}.`
      : 'Each tube must still be gripped over the full height of both yokes.'
  if (mean === 'rearRate')
    return 'The spring stays on the shock: a workshop with a press changes it.'
  if (mean === 'shockLengthChange')
    return value < 0
      ? `The rear tyre comes nearer to the bike: of ${gapWords(input.rearGap, -value / motionRatioAt(input.bike, input.bike.rear.travel), say)}.`
      : 'Hold the bike up before the shock comes out. Check chain and stand after.'
  return undefined
}

/** "25 mm at full travel 16 mm are left. Measure it": what a change leaves of a gap. */
function gapWords(gap: number, used: number, say: Say): string {
  return `${say.quantity(gap, 'mm', 0)} at full travel ${say.quantity(gap - used, 'mm', 1)} are left. Measure before and after`
}

/** What no way does while a gap is not known. */
export const UNMEASURED_WORDS: Readonly<Record<Gap, string>> = {
  frontGap: 'raises the tubes: the gap above the front tyre is not known',
  rearGap: 'shortens the shock: the gap above the rear tyre is not known',
  tubeAbove: 'lowers the tubes: what stands above the yoke is not known',
}

const READ_WORDS: Readonly<Record<FittedSag['input'], string>> = {
  frontStaticRead: 'front static sag',
  frontRiderRead: 'front sag with the rider',
  rearStaticRead: 'rear static sag',
  rearRiderRead: 'rear sag with the rider',
}

/** A measured sag that the bike’s figures do not allow. */
export const apartWords = ({ input, read, fitted }: FittedSag, say: Say): string =>
  `${READ_WORDS[input]} was read as ${say.quantity(read, 'mm', 1)}, and the rest of the figures give ${say.quantity(fitted, 'mm', 1)}`

/** What would have to be allowed, in words. */
export const ALLOW_WORDS: Readonly<Record<MeanId, string>> = {
  forkPreloadChange: 'fork preload',
  tubeRaise: 'the tubes moved in the yokes',
  forkRate: 'other fork springs',
  oilHeightChange: 'another oil height',
  rearPreloadChange: 'shock preload',
  rearRate: 'another shock spring',
  shockLengthChange: 'another shock length',
}

/** Why changes were left out. */
export const LEFT_OUT_WORDS: Readonly<Record<LeftOut, string>> = {
  binds: 'bind a spring or lock the fork within its travel',
  toppedOut: 'leave an end fully extended at rest',
  bottomed: 'put an end on its stop',
}

/** "met about 7 times in 10", where the ± reaches past an end of the window; null where it stays inside, or the aim is clearly missed. */
export function chanceWords({ chance, after, plusMinus, low, high }: ToldAim): string | null {
  const straddles = (end: number): boolean => Math.abs(after - end) < plusMinus
  if (!straddles(low) && !straddles(high)) return null
  const tenths = Math.round(10 * chance)
  if (tenths === 0) return 'met less than once in 20'
  return tenths === 10 ? 'met 19 times in 20 or more' : `met about ${counted(tenths, 'time')} in 10`
}
