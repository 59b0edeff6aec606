import { formatNumber } from '../units/say.ts'
import type { Gain } from './gain.ts'

const number = (value: number): string => formatNumber(value, 1)

/** Up to here the interval of a mean is wider than what two classes usually differ by. */
const FEW = 24

/** What two tests of a class say, in sentences. */
export function tellGain({ people, questions, before, after, gain, plusMinus }: Gain): string[] {
  const who = people === 1 ? 'One person' : `${people} people, on average`
  const told = [`${who}: ${number(before)} of ${questions} right before, ${number(after)} after.`]
  if (plusMinus === null)
    return [...told, `The gain is ${number(gain)}. One person alone gives no interval.`]
  const [low, high] = [gain - plusMinus, gain + plusMinus]
  told.push(
    `The class gained ${number(gain)} answers a person, and with 95 % confidence such a class gains between ${number(low)} and ${number(high)}.`,
  )
  if (plusMinus === 0)
    told.push('Everybody changed by as much, so this interval says nothing about other classes.')
  else if (low <= 0 && high >= 0)
    told.push('The interval holds nought: so much comes by chance alone, too.')
  told.push(
    people <= FEW
      ? `${people} people give a wide interval. It tells whether this class learnt something, and is no use for comparing two classes or two trainers.`
      : 'It tells whether this class learnt something; to compare two classes both intervals are needed.',
  )
  return told
}
