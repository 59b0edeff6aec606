import type statement from './statement.ts'
import type { Remark, RemarkContext } from '../../machine/remark.ts'
import { ends, exists, mapped } from '../../units/interval.ts'

type Context = RemarkContext<typeof statement>

/** Two rates nearer than this are one spring [N/m]: a tenth of the last digit that is told. */
const SAME = 50

/** A change of load smaller than this is none [kg]. */
const SAME_RIDER = 0.5

/** "leave a rider of 80 kg 4 to 14 mm in hand", or to the stop. */
function leaves(left: Context['output']['inHand'], mass: number, say: Context['say']): string {
  const [low, high] = ends(left) ?? [0, 0]
  const who = `a rider of ${say.quantity(mass, 'kg', 0)}`
  if (high <= 0) return `take ${who} to the end of the fork’s travel`
  if (low <= 0)
    return `leave ${who} anything from nothing to ${say.quantity(high, 'mm', 0)} in hand`
  return `leave ${who} ${say.range(low, high, 'mm', 0)} in hand`
}

function sameSentence({ output, say }: Context): string {
  const { sameRate, sameOver } = output
  if (!exists(sameRate) || !exists(sameOver))
    return 'No rate is told that leaves this rider as much: the fork reaches its end with either, or no preload gives the sag. Try gentler braking, or another sag.'
  const rate = say.span(sameRate, 'N/mm', 1)
  const [least, most] = ends(sameOver) ?? [0, 0]
  const share = say.span(mapped(sameOver, Math.abs), '%', 0)
  if (least > 0)
    return `${rate} in each leg, ${share} more than is fitted, leave this rider as much.`
  if (most < 0)
    return `${rate} in each leg, ${share} less than is fitted, leave this rider as much.`
  return `${rate} in each leg leave this rider as much.`
}

/** What the fitted springs leave, and which rate leaves the rider now the same. */
export function likeRemark(context: Context): Remark {
  const { input, output, say } = context
  const standard = input.standardMass ?? input.bike.rider.mass
  const brake = exists(output.hardness) ? say.span(output.hardness, 'g', 2) : ''
  const fitted = exists(output.fittedRate) ? say.span(output.fittedRate, 'N/mm', 1) : ''
  const first = `A quick stop at ${brake}: the fitted springs, ${fitted} in each leg, ${leaves(output.inHand, standard, say)}.`
  if (Math.abs(standard - input.riderMass) < SAME_RIDER)
    return {
      kind: 'reading',
      text: `${first} That is the rider whom they suit, so the question is only whether it is enough.`,
    }
  return {
    kind: 'reading',
    text: `${first} They ${leaves(output.inHandNow, input.riderMass, say)}. ${sameSentence(context)}`,
  }
}

/** Where nothing is known of the fitted springs: no rate, and what to measure. */
export const nothingKnown: readonly Remark[] = [
  {
    kind: 'reading',
    text: 'No rate is named. Neither the rate of the fitted springs nor both sags are known, and without them any number would be an invented bike’s.',
  },
  {
    kind: 'next',
    text: 'Measure two lengths first: how far the front sags with the bike alone, and how far with this rider. Together they tell what is in there now.',
  },
]

/** Oil as the other means, with its size beside that of a step of the shelf. */
export function oilRemark({ output, say }: Context): Remark[] {
  const { oilTen, stepMore, oilInstead, sameOver } = output
  if (!exists(oilTen) || !exists(stepMore)) return []
  const sizes = `Oil is the other means: ${say.quantity(10e-3, 'mm', 0)} more of it in each leg leave ${say.span(oilTen, 'mm', 1)} more in hand, where ${say.quantity(500, 'N/mm', 1)} more rate leaves ${say.span(stepMore, 'mm', 1)}.`
  if ((ends(sameOver)?.[0] ?? 0) <= 0) return [{ kind: 'reading', text: sizes }]
  const alone = exists(oilInstead)
    ? ` With the springs that are fitted it would have to rise by ${say.span(oilInstead, 'mm', 0)} to leave this rider as much. Ask the calculator of oil height first how near that brings the lock.`
    : ' Oil alone does not leave this rider as much: at 80 °C no air would be left at full travel.'
  return [{ kind: 'reading', text: `${sizes}${alone}` }]
}

/** What a cable tie says of how hard the fork is used. */
export function tieRemark({ input, output, say }: Context): Remark[] {
  if (input.deepest === undefined || !exists(output.hardness)) return []
  const travel = input.from === 'own' ? input.ownTravel : input.bike.fork.travel
  const reads = `The tie at ${say.quantity(input.deepest, 'mm', 0)} is what a quick stop at ${say.span(output.hardness, 'g', 2)} would do with these springs and this rider.`
  return input.deepest < travel - 1e-3
    ? [{ kind: 'reading', text: `${reads} Everything here is reckoned with that.` }]
    : [
        {
          kind: 'limit',
          text: `${reads} It stands at the end of the travel, so the road may ask for more than that. Read it again with a spring that keeps off the stop.`,
        },
      ]
}

/** Where the two sags and the rate entered speak of different springs. */
function disagreement({ input, output, spread, say }: Context): Remark[] {
  const told = ends(spread.fromSags)
  if (input.fittedRate === undefined || told === null || !exists(output.fromSags)) return []
  if (input.fittedRate >= told[0] - SAME && input.fittedRate <= told[1] + SAME) return []
  return [
    {
      kind: 'limit',
      text: `The two sags speak of ${say.range(told[0], told[1], 'N/mm', 1)} in each leg, and the rate entered is ${say.quantity(input.fittedRate, 'N/mm', 1)}. Something of it is wrong: a sag, a mass, or the rate. Test the spring before you choose by it.`,
    },
  ]
}

/** What the reader's own bike borrows from the invented one, and what else was taken for granted. */
export function ownRemarks(context: Context): Remark[] {
  const { input, output, spread, say } = context
  if (input.from === 'invented') return []
  const all: Remark[] = disagreement(context)
  const [low, high] = ends(spread.sameRate) ?? [0, 0]
  if (input.fittedRate === undefined && exists(output.fromSags))
    all.push({
      kind: 'limit',
      text: `The fitted rate comes from the two sags, each within ±${say.quantity(input.readingPlusMinus, 'mm', 1)}. So the rate that leaves this rider as much may be ${say.range(low, high, 'N/mm', 1)}.`,
    })
  if (input.staticNow === undefined && input.riderNow === undefined && exists(output.sagWanted))
    all.push({
      kind: 'limit',
      text: `No sag was read, so every spring here is set to ${say.span(output.sagWanted, 'mm', 0)} with its rider. Measure the sag, and it is your own that is kept.`,
    })
  all.push({
    kind: 'limit',
    text: `Rake, wheelbase, height of the centre of gravity, wheel masses and the air in the fork are those of “${input.bike.name}”. They are guesses for your bike: choose another as most like it, and see how far the answer moves.`,
  })
  return all
}

/** Whether anything is known of the springs in the fork. */
export const isKnown = ({ output }: Context): boolean => exists(output.fittedRate)
