import { candidatesOf } from './choose-rate.band.ts'
import type { inputs, outputs } from './choose-rate.fields.ts'
import type { Remark, RemarkContext } from './define.ts'
import type { Say } from './say.ts'

/** The lower end of the reserve [m] below which a bump met on the brakes uses up the rest: a worn road is rough by about as much. Common practice, no source. */
export const LITTLE_IN_HAND = 10e-3

type Context = RemarkContext<typeof inputs, typeof outputs>

interface Row {
  rate: number
  staticSag: number
  reserve: number
  misses: string[]
}

const valueOf = (cell: unknown, end: 'low' | 'high' = 'low'): number =>
  typeof cell === 'number' ? cell : typeof cell === 'object' && cell !== null && end in cell ? Number(Reflect.get(cell, end)) : Number.NaN

const rowsOf = (rows: Context['output']['rows']): Row[] =>
  rows.map(([rate, , staticSag, , , reserve, , misses]) => ({
    rate: valueOf(rate),
    staticSag: valueOf(staticSag),
    reserve: valueOf(reserve),
    misses: misses === 'none' ? [] : String(misses).split('; '),
  }))

function noneRemarks(rows: readonly Row[], say: Say): Remark[] {
  const all = (miss: string): boolean => rows.every((row) => row.misses.includes(miss))
  const [softest, stiffest] = [rows[0]!, rows.at(-1)!]
  const because = all('reserve below the target')
    ? `Each leaves less in hand on the brakes than you asked for. Try stiffer than ${say.quantity(stiffest.rate, 'N/mm', 1)}, or ask for less braking.`
    : all('static sag above the window') || all('no preload gives the rider sag')
      ? `Each is too stiff for the sag wanted. Try softer than ${say.quantity(softest.rate, 'N/mm', 1)}, or ask for less sag.`
      : all('static sag below the window')
        ? `Each leaves too little static sag. Try stiffer than ${say.quantity(stiffest.rate, 'N/mm', 1)}, or ask for more sag with the rider.`
        : 'The table says what each one misses. Widen the window that matters least to you.'
  return [{ kind: 'reading', text: `None of these meets everything. ${because}` }]
}

/** Whether the band of candidates [N/m] ends only because the rates on offer [N/m] do: the readings then say nothing against a spring beyond them. */
function shelfEnd(band: { low: number; high: number }, offered: readonly number[], say: Say): string {
  const [starts, ends] = [band.low === Math.min(...offered), band.high === Math.max(...offered)]
  if (offered.length < 2 || (!starts && !ends)) return ''
  if (starts && ends) return ' The band covers all the rates on offer: a softer or a stiffer one may do as well.'
  return starts
    ? ` The band starts at ${say.quantity(band.low, 'N/mm', 1)} only because the rates on offer do: a softer one may do as well.`
    : ` The band ends at ${say.quantity(band.high, 'N/mm', 1)} only because the rates on offer do: a stiffer one may do as well.`
}

function bandRemark(rows: readonly Row[], say: Say): Remark {
  const band = candidatesOf(rows as never)!
  const among = rows.filter((row) => row.misses.length === 0)
  const least = Math.min(...among.map((row) => row.reserve))
  const which =
    band.low === band.high ? `${say.quantity(band.low, 'N/mm', 1)} meets` : `${say.number(band.low, 'N/mm', 1)} to ${say.quantity(band.high, 'N/mm', 1)} meet`
  const hand = least < LITTLE_IN_HAND ? 'A bump met on the brakes can use that up.' : 'That is room for a bump, and no promise.'
  return {
    kind: 'reading',
    text: `${which} everything asked for. The softest of them keeps ${say.quantity(least, 'mm', 0)} in hand when the brake comes on quickly. ${hand}${shelfEnd(
      band,
      rows.map((row) => row.rate),
      say,
    )}`,
  }
}

/** What the table means, and what to measure to narrow the band. */
export function remarks({ input, output, say }: Context): readonly Remark[] {
  const rows = rowsOf(output.rows)
  const all: Remark[] = candidatesOf(rows as never) === null ? noneRemarks(rows, say) : [bandRemark(rows, say)]
  const softer = rows.length > 1 && rows[0]!.staticSag < rows.at(-1)!.staticSag
  if (softer)
    all.push({
      kind: 'reading',
      text: 'At the same sag with the rider, the softer spring has the smaller static sag: it needs more preload. Little static sag does not mean too stiff.',
    })
  const spread = typeof output.spread === 'number' ? output.spread : null
  const rate = typeof output.spreadRate === 'number' ? output.spreadRate : null
  const step = Math.min(
    ...rows
      .slice(1)
      .map((row, place) => row.rate - rows[place]!.rate)
      .filter((gap) => gap > 0),
  )
  // an unknown share shows as intervals in the table
  const guessed = input.riderShare === undefined || typeof output.rows[0]?.[2] === 'object'
  if (spread !== null && guessed) {
    const size = rate !== null && Number.isFinite(step) ? `, ${say.quantity(rate, 'N/mm', 2)} where the springs are ${say.quantity(step, 'N/mm', 2)} apart` : ''
    all.push({
      kind: 'next',
      text: `Where the rider sits is a guess here. Five points of share, either way, are ±${say.quantity(spread, '%', 1)} of the rate${size}. Put the front wheel on a scale with the rider aboard.`,
    })
  } else {
    all.push({
      kind: 'next',
      text: 'To narrow the band, measure both sags with the spring you have: the rate from sag calculator then tells what is in there now.',
    })
  }
  all.push({ kind: 'caution', caution: 'small-steps-only', text: 'The maker’s manual, and your dealer where it is silent, set the limits for your bike.' })
  return all
}
