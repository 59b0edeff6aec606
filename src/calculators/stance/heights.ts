import type { Remark } from '../../machine/remark.ts'
import type { InputOf } from '../../machine/values.ts'
import type statement from './statement.ts'

type Input = InputOf<typeof statement>

const caution = (id: string, text: string): Remark => ({ kind: 'caution', caution: id, text })

/** Another height at the rear leaves the chain and the side stand other than the maker set them. */
export function heightCautions({
  shockLengthChange,
  rearPreloadChange,
  rearRadiusChange,
}: Input): Remark[] {
  if (shockLengthChange === 0 && rearPreloadChange === 0 && rearRadiusChange === 0) return []
  return [
    caution(
      'chain-slack-after-rear-change',
      'Check the chain’s slack after the height has changed.',
    ),
    caution(
      'stand-angle-after-height-change',
      'The side stand now leans the bike at a different angle.',
    ),
  ]
}

/** What a change brings nearer to something that it may strike, or to the end of its grip. */
export function clearances(input: Input): Remark[] {
  const {
    tubeRaise,
    frontRadiusChange,
    rearRadiusChange,
    shockLengthChange,
    forkPreloadChange,
    rearPreloadChange,
    situation,
  } = input
  const list: Remark[] = []
  if (tubeRaise > 0 || frontRadiusChange > 0)
    list.push(
      caution(
        'clearance-at-full-travel',
        'The front tyre comes nearer to yokes and radiator at full travel.',
      ),
    )
  if (tubeRaise < 0)
    list.push(
      caution(
        'tubes-gripped-in-both-yokes',
        'Slid down, a tube must still be gripped over the full height of both yokes.',
      ),
    )
  if (shockLengthChange < 0 || rearRadiusChange > 0)
    list.push(caution('rear-clearance', 'The rear tyre comes nearer to the bike at full travel.'))
  const lower = [
    -tubeRaise,
    frontRadiusChange,
    rearRadiusChange,
    shockLengthChange,
    forkPreloadChange,
    rearPreloadChange,
  ].some((change) => change < 0)
  if (lower)
    list.push(
      caution(
        'ground-clearance-when-lowered',
        'Lower at one end, the bike touches down at less lean than before.',
      ),
    )
  else if (situation === 'twoUp')
    list.push(
      caution(
        'ground-clearance-when-lowered',
        'Two-up the bike sits lower, and touches down at less lean than alone.',
      ),
    )
  return list
}
