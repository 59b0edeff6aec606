import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends, exists } from '../../units/interval.ts'
import type statement from './statement.ts'

type Context = RemarkContext<typeof statement>

const caution = (id: string, text: string): Remark => ({ kind: 'caution', caution: id, text })

/** What the first way does, in a sentence. */
function reading({ verdicts, output, say }: Context): Remark {
  const count = ends(output.ways)?.[0] ?? 0
  const text = {
    there: 'The bike meets every aim as it stands. Nothing has to be changed.',
    none: 'Nothing that is allowed brings the bike nearer to every aim at once. Allow more, or widen the window that matters least to you.',
    nearest:
      'No change that is allowed meets every aim. The nearest is shown, with what it misses. Allow more, or widen the window that matters least to you.',
    ways:
      count === 1
        ? 'One way meets every aim.'
        : `${say.number(count, '', 0)} ways meet every aim. The first takes the least work; the others change other things, and none of them is needed besides.`,
  }[verdicts.verdict[0] ?? 'none']
  return { kind: 'reading', text }
}

const amount = (value: Context['output']['trail']): number =>
  exists(value) ? (ends(value)?.[0] ?? 0) : 0

/** What the first way brings nearer to something that it may strike, or to the end of its grip. */
function cautions(context: Context): Remark[] {
  const { output } = context
  const list: Remark[] = []
  const [tubes, shock, rear, front] = [
    amount(output.tubeRaise),
    amount(output.shockLengthChange),
    amount(output.rearPreloadChange),
    amount(output.forkPreloadChange),
  ]
  if (tubes > 0)
    list.push(
      caution(
        'clearance-at-full-travel',
        'With tubes up, the front tyre comes nearer to yokes and radiator at full travel.',
      ),
    )
  if (tubes < 0)
    list.push(
      caution(
        'tubes-gripped-in-both-yokes',
        'Slid down, a tube must still be gripped over the full height of both yokes.',
      ),
    )
  if (shock < 0)
    list.push(caution('rear-clearance', 'A shorter shock brings the rear tyre nearer to the bike.'))
  if (tubes > 0 || Math.min(shock, rear, front) < 0)
    list.push(
      caution(
        'ground-clearance-when-lowered',
        'Lower at one end, the bike touches down at less lean than before.',
      ),
    )
  if (shock !== 0 || rear !== 0 || exists(output.rearRate))
    list.push(
      caution(
        'chain-slack-after-rear-change',
        'Check the chain’s slack after the height has changed.',
      ),
      caution(
        'stand-angle-after-height-change',
        'The side stand now leans the bike at a different angle.',
      ),
    )
  return [...list, ...opened(context)]
}

/** What bites once a fork is opened or a shock taken apart. */
function opened({ input, output }: Context): Remark[] {
  const list: Remark[] = []
  const spacer = input.forkAdjuster === 'inside' && exists(output.forkPreloadChange)
  if (spacer || exists(output.forkRate) || exists(output.oilHeightChange))
    list.push(
      caution(
        'cap-under-spring-force',
        'The fork cap is under spring force: take the preload out and support the bike before it is undone.',
      ),
    )
  if (amount(output.oilHeightChange) < 0)
    list.push(
      caution('overfilled-fork-locks', 'More oil leaves less air: a fork too full locks solid.'),
    )
  if (exists(output.rearRate))
    list.push(
      caution(
        'shock-spring-stays-assembled',
        'A shock’s spring is changed by a workshop with the press for it.',
      ),
    )
  return list
}

/** What the ways mean, and what to do with them. */
function remarks(context: Context): readonly Remark[] {
  const { verdicts } = context
  const list = [reading(context)]
  if (verdicts.verdict[0] === 'there') return list
  return [
    ...list,
    {
      kind: 'limit',
      text: 'Friction hides 5 mm or more of any sag, so a millimetre between two ways is no reason to choose.',
    },
    {
      kind: 'next',
      text: 'Make one change of the way at a time, measure both ends again after each, and write it down.',
    },
    ...cautions(context),
    caution(
      'small-steps-only',
      'The range of each adjuster, the tubes and the shock stands in the maker’s manual, and ends before the limits used here if it says so.',
    ),
  ]
}

export default defineRemarks<typeof statement>(remarks)
