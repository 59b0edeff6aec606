import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists, isInterval, largest, negated, quotient } from '../../units/interval.ts'
import type statement from './statement.ts'

/** Rider sag as a share of travel: common practice of the trade for road bikes, no published source. */
export const RIDER_SAG_WINDOW = [0.25, 0.33] as const
/** Static sag [m] below which the back stands on its top stop: friction alone holds that much. */
export const TOPPED_OUT_SAG = 1e-3
/** A ± of this share of the travel on the sag tells nothing: the common window from 25 to 33 % is narrower than the ± alone. */
export const TELLS_NOTHING = 0.1
/** Full against initial wheel rate [times] from which the linkage is felt as progressive. Common practice, no source. */
export const PROGRESSIVE = 1.15

type Context = RemarkContext<typeof statement>

const reading = (text: string): Remark => ({ kind: 'reading', text })

function heightReading({ output, change, changeShare, say }: Context): Remark[] {
  const rate = exists(output.wheelRate) ? say.span(output.wheelRate, 'N/mm', 1) : ''
  const sunk = change.riderSag ?? 0
  if (largest(sunk) < 5e-5)
    return [
      reading(
        `At the wheel the spring amounts to ${rate}: its rate times the motion ratio, and times the ratio again.`,
      ),
    ]
  const same = largest(changeShare.wheelRate ?? 0) < 0.02
  return [
    reading(
      `The back sits ${say.moved(negated(sunk), 'mm', 1, ['lower', 'higher'])} than before. ${same ? 'The rate at the wheel is the same: the collar sets height.' : `The rate at the wheel is now ${rate}.`}`,
    ),
  ]
}

/** A back that stands on a stop, or may. */
function stopRemarks({ verdicts }: Context): Remark[] {
  const list: Remark[] = []
  const [only, ...others] = verdicts.stands
  const sure = others.length === 0
  if (sure && only === 'bottomed')
    list.push({
      kind: 'limit',
      text: 'With the rider the back is on its stop, with all its travel used. A bump from here goes into the frame, and a turn of the collar may not lift it off. It takes a stiffer spring, or far more preload.',
    })
  else if (verdicts.stands.some((stands) => stands === 'bottomed' || stands === 'may-bottom'))
    list.push({
      kind: 'limit',
      text: 'Within what these figures leave open, the back may be on its stop with the rider. Measure the sag on the bike before you ride it so.',
    })
  if (sure && only === 'topped-out')
    list.push({
      kind: 'limit',
      text: 'Even with the rider the back is on its top stop: the wheel has no droop left to follow a hollow. Take preload out.',
    })
  return list
}

function sagReading({ input, inputSpread, output, spread, verdicts, say }: Context): Remark[] {
  const remarks: Remark[] = []
  const [least, most] = RIDER_SAG_WINDOW
  const window = `${say.range(least, most, '%', 0)} that is common practice for road bikes`
  const [low, high] = ends(output.share) ?? [0, 0]
  if (exists(output.share)) {
    const where =
      high < least
        ? 'less than'
        : low > most
          ? 'more than'
          : low >= least && high <= most
            ? 'within'
            : undefined
    const share = `Sag with the rider is ${say.span(output.share, '%', 0)} of the travel`
    remarks.push(
      reading(
        where === undefined
          ? `${share}, so it may be within the ${window}, or outside it.`
          : `${share}, ${where} the ${window}.`,
      ),
    )
  }
  const [, standing] = ends(output.staticSag) ?? [1, 1]
  if (standing < TOPPED_OUT_SAG && low > least)
    remarks.push(
      reading(
        'Without the rider the back is on its top stop. The spring is wound up to hold a load that a stiffer one would hold with less preload.',
      ),
    )
  const [shallow, deep] = ends(spread.riderSag) ?? [0, 0]
  const onStop = verdicts.stands.includes('bottomed')
  if (!onStop && (deep - shallow) / 2 > TELLS_NOTHING * input.travel) {
    const unknown = (['motionRatio', 'leverage', 'unsprungMass', 'gasForce'] as const).some((id) =>
      isInterval(inputSpread[id]),
    )
    remarks.push({
      kind: 'next',
      text: unknown
        ? 'What you don’t know leaves the sag open by more than a tenth of the travel either way, more than the window is wide. Measure that first, the ratio before all.'
        : 'The ± of the sag is more than a tenth of the travel, wider than the window itself. The motion ratio and the spring’s rate are what narrow it: measure those two.',
    })
  }
  return remarks
}

/** What the rear end's numbers mean for the rider. */
function remarks(told: Context): readonly Remark[] {
  const { output, say } = told
  const all = [...heightReading(told), ...stopRemarks(told), ...sagReading(told)]
  const growth =
    exists(output.rateFull) && exists(output.rateExtended)
      ? quotient(output.rateFull, output.rateExtended)
      : 1
  if ((ends(output.rateExtended)?.[0] ?? 0) > 0 && (ends(growth)?.[0] ?? 1) >= PROGRESSIVE)
    all.push(
      reading(
        `The wheel rate grows ${say.span(growth, '', 2)} times over the travel. Part of that is the spring’s force on a ratio that rises, so preload adds a little rate here.`,
      ),
    )
  const [loosest, tightest] = ends(output.preloadNow) ?? [0, 0]
  if (tightest < 0)
    all.push({
      kind: 'limit',
      text: 'The collar is so far out that the spring hangs loose with the wheel hanging. It can come off its seat.',
    })
  else if (loosest < 0)
    all.push({
      kind: 'limit',
      text: 'The collar’s travel per turn, which you don’t know, may leave the spring loose with the wheel hanging. It can then come off its seat.',
    })
  all.push({
    kind: 'caution',
    caution: 'chain-slack-after-rear-change',
    text: 'Check the chain’s slack after the height has changed.',
  })
  all.push({
    kind: 'next',
    text: 'Measure the sag on the bike. A reading that lies outside the ± says that a rate, a ratio or a reading is not what you think.',
  })
  return all
}

export default defineRemarks<typeof statement>(remarks)
