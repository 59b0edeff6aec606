import type { Remark, RemarkContext } from './define.ts'
import { middle } from './interval.ts'
import type { inputs, outputs } from './oil-height.fields.ts'

/**
 * Travel kept clear of hydraulic lock [m]: a fork that warms by 60 °C grows 500 cm³ of oil by 21 cm³, which is 14 mm of travel in a tube of 43 mm.
 */
export const LOCK_CLEARANCE = 15e-3
/** A change of gas force [N] that a rider can't tell from friction, which holds 40 to 80 N in a road fork. */
export const UNFELT = 40

type Told = RemarkContext<typeof inputs, typeof outputs>

function changeReading({ input, output, before, say }: Told): Remark[] {
  const now = [middle(output.gasSettled), middle(output.gasAtFull)]
  const was = [middle(before?.output.gasSettled), middle(before?.output.gasAtFull)]
  if (now[0] === null || now[1] === null) return []
  if (was[0] === null || was[1] === null) {
    return [
      {
        kind: 'reading',
        text: `The air carries ${say.quantity(now[0]!, 'N', 0)} where the bike sits and about ${say.quantity(now[1]!, 'N', 0)} at full travel. Its push grows where its room shrinks.`,
      },
    ]
  }
  const [settled, full] = [now[0]! - was[0]!, now[1]! - was[1]!]
  const felt = Math.abs(settled) < UNFELT ? 'which friction hides' : 'enough to move the bike'
  const sameAir = (['temperature', 'gaugePressure', 'altitude'] as const).every((id) => before?.input[id] === input[id])
  const where = sameAir ? ' Oil height works at the end of the travel.' : ''
  const by = (force: number): string => `${say.quantity(Math.abs(force), 'N', 0)} ${force < 0 ? 'less' : 'more'}`
  return [
    {
      kind: 'reading',
      text: `The air pushes ${by(settled)} than before where the bike sits, ${felt}, and ${by(full)} at full travel.${where}`,
    },
  ]
}

function lockRemarks({ output, say }: Told): Remark[] {
  const margin = middle(output.lockMargin)
  if (margin === null || margin >= LOCK_CLEARANCE) return []
  const text =
    margin <= 0
      ? `The air is gone ${say.quantity(-margin, 'mm', 0)} before the stop. There the fork locks on its oil, and the pressure goes to the seals.`
      : `Only ${say.quantity(margin, 'mm', 0)} of travel lie between the stop and a lock on the oil. Warm oil takes about that much.`
  return [
    { kind: 'limit', text },
    { kind: 'caution', caution: 'overfilled-fork-locks', text: 'Set the height that the maker’s manual gives, read as it says.' },
  ]
}

/** What oil height, heat and altitude mean for the rider. */
export function remarks(told: Told): readonly Remark[] {
  const { input, say } = told
  const all = [...changeReading(told), ...lockRemarks(told)]
  if (input.oilAdded !== 0) {
    const effective = middle(told.output.effective)
    const moved = effective === null ? 0 : effective - input.airHeight
    all.push({
      kind: 'reading',
      text: `${say.quantity(Math.abs(input.oilAdded), 'cm³', 0)} in each leg ${moved < 0 ? 'raises' : 'lowers'} the level by ${say.quantity(Math.abs(moved), 'mm', 1)}. Volume and height are not the same: old oil and the spring’s own metal decide which height a volume gives.`,
    })
  }
  if (input.gaugePressure > 0) all.push({ kind: 'caution', caution: 'pressurised-fork', text: 'Let the pressure out before you loosen a cap.' })
  all.push({ kind: 'next', text: 'Read the height in both legs, collapsed and without springs, and write down both.' })
  return all
}
