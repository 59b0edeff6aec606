import { BUMP_ON_BRAKES } from '../thresholds.ts'
import { BRAKING_DOUBT } from './band.ts'
import {
  isKnown,
  likeRemark,
  nothingKnown,
  oilRemark,
  ownRemarks,
  tieRemark,
} from './likeRemarks.ts'
import type statement from './statement.ts'
import { codesOf } from '../../machine/cells.ts'
import type { Cell } from '../../machine/cells.ts'
import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists, isInterval } from '../../units/interval.ts'
import type { Say } from '../../units/say.ts'

type Context = RemarkContext<typeof statement>

/** What is written as 0 mm is nothing [m]. */
const NOTHING = 0.5e-3

interface Row {
  rate: number
  staticSag: number
  reserve: number
  /** what it misses, for each way in which what is not known may be */
  misses: readonly (readonly string[])[]
}

/** The low end of a cell: the worse one for a reserve. */
const low = (cell: Cell | undefined): number => ends(cell)?.[0] ?? Number.NaN

const rowsOf = (rows: Context['output']['rows']): Row[] =>
  rows.map(([rate, , staticSag, , , reserve, , , misses]) => ({
    rate: low(rate),
    staticSag: low(staticSag),
    reserve: low(reserve),
    misses: codesOf(misses).map((codes) => codes.split(' ').filter((code) => code !== '')),
  }))

/** Rates that meet everything, whatever is not known may be; and those that do so for part of it. */
const meets = ({ misses }: Row): boolean => misses.every((missed) => missed.length === 0)
const mayMeet = ({ misses }: Row): boolean => misses.some((missed) => missed.length === 0)

function noneRemarks(rows: readonly Row[], say: Say): Remark[] {
  const all = (miss: string): boolean =>
    rows.every(({ misses }) => misses.every((missed) => missed.includes(miss)))
  const [softest, stiffest] = [rows[0]!, rows.at(-1)!]
  const because =
    all('reserve') || all('bottoms')
      ? `Each leaves less in hand on the brakes than the floor. Try stiffer than ${say.quantity(stiffest.rate, 'N/mm', 1)}, or ask for less braking.`
      : all('unused')
        ? `Each leaves more travel unused than the ceiling. Try softer than ${say.quantity(softest.rate, 'N/mm', 1)}.`
        : all('static-above') || all('no-preload') || all('little-preload') || all('stiff')
          ? `Each is too stiff for the sag wanted. Try softer than ${say.quantity(softest.rate, 'N/mm', 1)}, or ask for less sag.`
          : all('static-below')
            ? `Each leaves too little static sag. Try stiffer than ${say.quantity(stiffest.rate, 'N/mm', 1)}, or ask for more sag with the rider.`
            : 'The table says what each one misses. Widen the window that matters least to you.'
  return [{ kind: 'reading', text: `None of the rates on the shelf meets everything. ${because}` }]
}

/** Whether the band of candidates [N/m] ends only because the rates on offer [N/m] do: the readings then say nothing against a spring beyond them. */
function shelfEnd(
  band: { low: number; high: number },
  offered: readonly number[],
  say: Say,
): string {
  const [starts, ends] = [band.low === Math.min(...offered), band.high === Math.max(...offered)]
  if (offered.length < 2 || (!starts && !ends)) return ''
  if (starts && ends)
    return ' The band covers all the rates on offer: a softer or a stiffer one may do as well.'
  return starts
    ? ` The band starts at ${say.quantity(band.low, 'N/mm', 1)} only because the rates on offer do: a softer one may do as well.`
    : ` The band ends at ${say.quantity(band.high, 'N/mm', 1)} only because the rates on offer do: a stiffer one may do as well.`
}

/** What the least in hand [m] is good for. */
function inHandOf(least: number, say: Say): string {
  if (least < NOTHING)
    return 'nothing in hand when the brake comes on quickly: any bump then finds the stop.'
  const keeps = `${say.quantity(least, 'mm', 0)} in hand when the brake comes on quickly.`
  return least < BUMP_ON_BRAKES
    ? `${keeps} A bump met on the brakes can use that up: ${say.quantity(BUMP_ON_BRAKES, 'mm', 0)} is common on a worn road (common practice, no published source).`
    : `${keeps} That is room for a bump, and no promise.`
}

function bandRemark({ input, say }: Context, rows: readonly Row[], among: readonly Row[]): Remark {
  const rates = among.map((row) => row.rate)
  const band = { low: Math.min(...rates), high: Math.max(...rates) }
  const least = Math.min(...among.map((row) => row.reserve))
  const one = band.low === band.high
  const limits = `${say.range(input.reserve, input.unused, 'mm', 0)} left on that stop at the least, ${say.quantity(input.leastPreload, 'mm', 0)} of preload or more, a ride of at most ${say.quantity(input.stiffest, 'Hz', 1)}`
  const which = `Without looking at what is fitted, ${say.range(band.low, band.high, 'N/mm', 1)} ${one ? 'keeps' : 'keep'} between floor and ceiling (${limits})`
  const open = among.every(meets) ? '' : ', though not for all that is not known'
  const keeps = one ? 'It keeps' : 'The softest of them keeps'
  const shelf = shelfEnd(
    band,
    rows.map((row) => row.rate),
    say,
  )
  return {
    kind: 'reading',
    text: `${which}${open}. ${keeps} ${inHandOf(least, say)}${shelf}`,
  }
}

/** How far the judgement of hard braking moves the band. */
function brakingRemark({ output, say }: Context): Remark[] {
  const at = (deceleration: number, softest: Context['output']['harder'], is: string): string =>
    `at ${say.quantity(Math.max(0, deceleration), 'g', 2)} ${exists(softest) ? `${is} ${say.span(softest, 'N/mm', 1)}` : 'none of these passes'}`
  const { gentler, harder, candidates } = output
  // said of one braking: a range of them is spread over the table already
  if (typeof output.hardness !== 'number') return []
  const { hardness } = output
  const same = [ends(gentler)?.[0], ends(harder)?.[0]].every(
    (rate) => rate === ends(candidates)?.[0],
  )
  if (same) return []
  return [
    {
      kind: 'reading',
      text: `What you call hard braking decides that band, though hardly the rate that leaves as much: ${at(hardness - BRAKING_DOUBT, gentler, 'the softest that passes is')}, and ${at(hardness + BRAKING_DOUBT, harder, exists(gentler) ? 'it is' : 'the softest that passes is')}.`,
    },
  ]
}

/** Where the rider sits, while it is a guess, and why it hardly matters here. */
function shareRemark({ input, inputSpread, output, say }: Context): Remark[] {
  if (
    !exists(output.spread) ||
    (input.riderShare !== undefined && !isInterval(inputSpread.riderShare))
  )
    return []
  return [
    {
      kind: 'reading',
      text: `Where the rider sits is a guess here, and it hardly moves these rates. Five points of share are ±${say.span(output.spread, '%', 1)} of the load at rest, and the preload, set to the sag wanted, takes that up.`,
    },
  ]
}

/** What the table means, and what to measure to narrow the band. */
function shelfRemarks(context: Context): Remark[] {
  const { output, say } = context
  const rows = rowsOf(output.rows)
  const among = rows.filter(mayMeet)
  const all: Remark[] =
    among.length === 0 ? noneRemarks(rows, say) : [bandRemark(context, rows, among)]
  all.push(...brakingRemark(context))
  if (rows.length > 1 && rows[0]!.staticSag < rows.at(-1)!.staticSag)
    all.push({
      kind: 'reading',
      text: 'At the same sag with the rider, the softer spring has the smaller static sag: it needs more preload. Little static sag does not mean too stiff.',
    })
  return [...all, ...shareRemark(context)]
}

const MANUAL: Remark = {
  kind: 'caution',
  caution: 'small-steps-only',
  text: 'The maker’s manual, and your dealer where it is silent, set the limits for your bike.',
}

/** Like for like first, then the shelf between floor and ceiling, then what to measure. */
function remarks(context: Context): readonly Remark[] {
  if (!isKnown(context)) return [...nothingKnown, MANUAL]
  const { input } = context
  const all = [
    likeRemark(context),
    ...tieRemark(context),
    ...oilRemark(context),
    ...shelfRemarks(context),
    ...ownRemarks(context),
  ]
  if (input.deepest === undefined)
    all.push({
      kind: 'next',
      text: 'Put a cable tie round a fork tube, ride your own road, and enter how deep it went: it takes the place of what you call hard braking, the largest guess here.',
    })
  if (input.from === 'invented')
    all.push({
      kind: 'next',
      text: 'For your own bike, measure both sags with the springs that you have: with “my own bike’s” they tell what is in there now.',
    })
  return [...all, MANUAL]
}

export default defineRemarks<typeof statement>(remarks)
