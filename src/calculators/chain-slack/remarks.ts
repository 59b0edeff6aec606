import { defineRemarks, type Remark, type RemarkContext } from '../../machine/remark.ts'
import { ends } from '../../units/interval.ts'
import type statement from './statement.ts'

type Context = RemarkContext<typeof statement>

/** Closer to either end of the travel than this [m], the tightest place is the end: a wheel is not set finer by hand. */
const AT_THE_END = 1e-3
/** Slack that moved by less than this [m] reads the same: a rule against a chain held by hand shows no less. */
const READS_THE_SAME = 1e-3

/** Where the chain is tightest, over all that is not known. */
function placeOf({ inputSpread, output, say }: Context): string {
  const [low, high] = ends(output.tightestAt) ?? [0, 0]
  const [shortest, longest] = ends(inputSpread.travel) ?? [0, 0]
  if (high <= AT_THE_END) return 'with the wheel hanging'
  if (low >= longest - AT_THE_END) return 'at full travel'
  const where = `at ${say.span(output.tightestAt ?? 0, 'mm', 0)} of travel used`
  const between = low > AT_THE_END && high < shortest - AT_THE_END
  return between ? `${where}, where sprocket, pivot and axle are in one line` : where
}

function tightestReading(context: Context): Remark {
  const { output, verdicts, say } = context
  const place = placeOf(context)
  const [only, ...others] = verdicts.stands
  if (others.length === 0 && only === 'tight')
    return {
      kind: 'reading',
      text: `The chain is tightest ${place}, and there it has no slack left. It would have to stretch.`,
    }
  return {
    kind: 'reading',
    text: `The chain is tightest ${place}. Of the slack that you read, ${say.span(output.tightest ?? 0, 'mm', 0)} ${others.length === 0 && only === 'slack' ? 'is' : 'may be'} left there.`,
  }
}

function raisedReading({ input, change, output, say }: Context): Remark[] {
  const moved = change.slackNow
  const [low, high] = ends(moved) ?? [0, 0]
  if (input.raise === 0 || moved === undefined) return []
  if (Math.max(Math.abs(low), Math.abs(high)) < READS_THE_SAME)
    return [
      {
        kind: 'reading',
        text: 'Read as before, the slack is the same after the change of height, to a millimetre.',
      },
    ]
  return [
    {
      kind: 'reading',
      text: `The same chain now reads ${say.span(output.slackNow ?? 0, 'mm', 0)} at the same sag. Nobody has turned the adjusters: the wheel is at another place on its arc.`,
    },
  ]
}

/** What the slack means, and what to look at on the bike. */
function remarks(context: Context): readonly Remark[] {
  const { verdicts, output, say } = context
  const all = [tightestReading(context), ...raisedReading(context)]
  const sureOfSlack = verdicts.stands.length === 1 && verdicts.stands[0] === 'slack'
  if (!sureOfSlack)
    all.push({
      kind: 'limit',
      text: `A chain that is tight before the suspension stops takes the load itself: it pulls on the gearbox’s output bearing and on both sprockets, and it can break and lock the wheel. Read as you read it, it needs more than ${say.span(output.least ?? 0, 'mm', 0)}, and what the maker’s manual gives on top.`,
    })
  all.push(
    {
      kind: 'caution',
      caution: 'chain-slack-after-rear-change',
      text: 'Set the slack again after each change of rear height, engine off and in neutral.',
    },
    {
      kind: 'caution',
      caution: 'fingers-in-the-wheel',
      text: 'Turn the wheel by its tyre, never by the chain, and touch the chain only when it stands still.',
    },
    {
      kind: 'next',
      text: 'Bring the rear to the tightest place, with straps or with people on the seat, and feel the slack there. The figure to set is the maker’s.',
    },
  )
  return all
}

export default defineRemarks<typeof statement>(remarks)
