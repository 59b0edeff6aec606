import { WARM_OIL } from '../../core/index.ts'
import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists, largest } from '../../units/interval.ts'
import type statement from './statement.ts'

/** Travel to keep between the stop and a lock once the fork is warm [m]: a level read 5 mm too low takes 4 mm of it. Common practice, no source. */
export const LOCK_CLEARANCE = 5e-3
/** A change of gas force [N] that a rider can't tell from friction, which holds 40 to 80 N in a road fork. */
export const UNFELT = 40

/** What a drawing or a figure in millimetres does not show [m]. */
const SAME = 0.5e-3

type Told = RemarkContext<typeof statement>

const PUSH = ['less', 'more'] as const

function changeReading({ inputSpread, output, before, change, say }: Told): Remark[] {
  const [settled, full] = [change.gasSettled, change.gasAtFull]
  if (settled !== undefined && output.gasAtFull === null)
    return [
      {
        kind: 'reading',
        text: `The air pushes ${say.moved(settled, 'N', 0, PUSH)} than before where the bike sits. At full travel it is no spring any more: it has next to no room left.`,
      },
    ]
  if (settled === undefined || full === undefined) {
    if (!exists(output.gasSettled) || !exists(output.gasAtFull)) return []
    const text = `The air carries ${say.span(output.gasSettled, 'N', 0)} where the bike sits and about ${say.span(output.gasAtFull, 'N', 0)} at full travel. Its push grows where its room shrinks.`
    return [{ kind: 'reading', text }]
  }
  const felt = largest(settled) < UNFELT ? 'which friction hides' : 'enough to move the bike'
  const sameAir = (['temperature', 'gaugePressure', 'altitude'] as const).every(
    (id) => before?.inputSpread[id] === inputSpread[id],
  )
  const where = sameAir ? ' Oil height works at the end of the travel.' : ''
  return [
    {
      kind: 'reading',
      text: `The air pushes ${say.moved(settled, 'N', 0, PUSH)} than before where the bike sits, ${felt}, and ${say.moved(full, 'N', 0, PUSH)} at full travel.${where}`,
    },
  ]
}

/** The warning goes by the warm fork: that is where the oil has grown. */
function lockRemarks({ output, say }: Told): Remark[] {
  const [now, nowMost] = ends(output.lockMargin) ?? [0, 0]
  const [warm, warmMost] = ends(output.lockMarginWarm) ?? [0, 0]
  if (warm >= LOCK_CLEARANCE) return []
  const range = (low: number, high: number): string =>
    say.range(Math.max(0, low), Math.max(0, high), 'mm', 0)
  const early = range(-warmMost, -warm)
  const hot = say.quantity(WARM_OIL, '°C', 0)
  const left = `As it is, ${range(now, nowMost)} of travel lie between the stop and a lock on the oil.`
  const text =
    now <= 0
      ? `The air is gone ${range(-nowMost, -now)} before the stop${warm < now - SAME ? `, and ${early} before it at ${hot}` : ''}. There the fork locks on its oil, and the pressure goes to the seals.`
      : warm <= 0
        ? `${left} At ${hot} the oil has grown, and this fork ${warmMost <= 0 ? 'locks' : 'may lock'} ${early} before its stop: the pressure goes to the seals.`
        : `${left} At ${hot} only ${range(warm, warmMost)} are left, which an oil level read a few millimetres wrong uses up.`
  return [
    { kind: 'limit', text },
    {
      kind: 'caution',
      caution: 'overfilled-fork-locks',
      text: 'Set the height that the maker’s manual gives, read as it says.',
    },
  ]
}

/** What oil height, heat and altitude mean for the rider. */
function remarks(told: Told): readonly Remark[] {
  const { input, output, say } = told
  const all = [...changeReading(told), ...lockRemarks(told)]
  if (input.oilAdded !== 0 && typeof output.effective === 'number') {
    const moved = output.effective - input.airHeight
    all.push({
      kind: 'reading',
      text: `${say.quantity(Math.abs(input.oilAdded), 'cm³', 0)} in each leg ${moved < 0 ? 'raises' : 'lowers'} the level by ${say.quantity(Math.abs(moved), 'mm', 1)}. Volume and height are not the same: old oil and the spring’s own metal decide which height a volume gives.`,
    })
  }
  if (input.gaugePressure > 0)
    all.push({
      kind: 'caution',
      caution: 'pressurised-fork',
      text: 'Let the pressure out before you loosen a cap.',
    })
  all.push({
    kind: 'next',
    text: 'Read the height in both legs, collapsed and without springs, and write down both.',
  })
  return all
}

export default defineRemarks<typeof statement>(remarks)
