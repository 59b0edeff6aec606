import type { Remark, RemarkContext } from './define.ts'
import { ends, middle } from './interval.ts'
import type { inputs, outputs } from './rear-rate.fields.ts'

/** Rider sag as a share of travel: common practice of the trade for road bikes, no published source. */
export const RIDER_SAG_WINDOW = [0.25, 0.33] as const
/** Static sag [m] below which the back stands on its top stop: friction alone holds that much. */
export const TOPPED_OUT = 1e-3
/** A ± of this share of the travel on the sag tells nothing: the common window from 25 to 33 % is narrower than the ± alone. */
export const TELLS_NOTHING = 0.1
/** Full against initial wheel rate [times] from which the linkage is felt as progressive. Common practice, no source. */
export const PROGRESSIVE = 1.15

type Context = RemarkContext<typeof inputs, typeof outputs>

function heightReading({ output, before, say }: Context): Remark[] {
  const [now, was] = [middle(output.riderSag), before ? middle(before.output.riderSag) : null]
  const [rate, rateWas] = [middle(output.wheelRate), before ? middle(before.output.wheelRate) : null]
  if (now === null || rate === null) return []
  if (was === null || Math.abs(now - was) < 5e-5) {
    return [
      {
        kind: 'reading',
        text: `At the wheel the spring amounts to ${say.quantity(rate, 'N/mm', 1)}: its rate times the motion ratio, and times the ratio again.`,
      },
    ]
  }
  const same = rateWas !== null && Math.abs(rate - rateWas) < 0.02 * rate
  return [
    {
      kind: 'reading',
      text: `The back stands ${say.quantity(Math.abs(was - now), 'mm', 1)} ${was > now ? 'higher' : 'lower'} than before. ${same ? 'The rate at the wheel is the same: the collar sets height.' : `The rate at the wheel is now ${say.quantity(rate, 'N/mm', 1)}.`}`,
    },
  ]
}

function sagReading({ input, output, spread, say }: Context): Remark[] {
  const [share, standing] = [middle(output.share), middle(output.staticSag)]
  const remarks: Remark[] = []
  if (share !== null) {
    const [least, most] = RIDER_SAG_WINDOW
    const where = share < least ? 'less than' : share > most ? 'more than' : 'within'
    remarks.push({
      kind: 'reading',
      text: `Sag with the rider is ${say.quantity(share, '%', 0)} of the travel, ${where} the ${least * 100} to ${most * 100} % that is common practice for road bikes.`,
    })
  }
  if (standing !== null && standing < TOPPED_OUT && share !== null && share > RIDER_SAG_WINDOW[0]) {
    remarks.push({
      kind: 'reading',
      text: 'Without the rider the back stands on its top stop. The spring is wound up to hold a load that a stiffer one would hold with less preload.',
    })
  }
  const [low, high] = ends(spread.riderSag) ?? [0, 0]
  if ((high - low) / 2 > TELLS_NOTHING * input.travel)
    remarks.push({
      kind: 'next',
      text: 'The ± of the sag is more than a tenth of the travel, wider than the window itself. The motion ratio and the spring’s rate are what narrow it: measure those two.',
    })
  return remarks
}

/** What the rear end's numbers mean for the rider. */
export function remarks(told: Context): readonly Remark[] {
  const { output } = told
  const all = [...heightReading(told), ...sagReading(told)]
  const [first, last] = [middle(output.rateExtended), middle(output.rateFull)]
  if (first !== null && last !== null && first > 0 && last / first >= PROGRESSIVE) {
    all.push({
      kind: 'reading',
      text: `The wheel rate grows ${(last / first).toFixed(2)} times over the travel. Part of that is the spring’s force on a ratio that rises, so preload adds a little rate here.`,
    })
  }
  const preload = middle(output.preloadNow)
  if (preload !== null && preload < 0)
    all.push({ kind: 'limit', text: 'The collar is so far out that the spring hangs loose with the wheel hanging. It can come off its seat.' })
  all.push({ kind: 'caution', caution: 'chain-slack-after-rear-change', text: 'Check the chain’s slack after the height has changed.' })
  all.push({
    kind: 'next',
    text: 'Measure the sag on the bike. A reading that lies outside the ± says that a rate, a ratio or a reading is not what you think.',
  })
  return all
}
