import type { BikeSheets } from '../bikes/sheet.ts'
import type { Topic } from '../calculators/exercises.ts'
import { evaluate } from '../machine/evaluate.ts'
import type { Given } from '../machine/given.ts'
import type { Exercise } from '../machine/question.ts'
import { isNumber } from '../machine/statement.ts'
import type { CardStatement, QuantityOutput } from '../machine/statement.ts'
import type { InputOf, OutputOf } from '../machine/values.ts'
import { displayDigits, displayUnit } from '../units/choice.ts'
import type { UnitChoice } from '../units/choice.ts'
import { units } from '../units/units.ts'
import { middle } from '../units/interval.ts'
import { createSay } from '../units/say.ts'
import { onBench, writerFor } from './bench.ts'
import { drawn, shuffled } from './shuffled.ts'

/** One answer that is offered. */
export interface Option {
  text: string
  /** the value itself [SI] */
  si: number
  /** the wrong idea that leads to it; none: it is right */
  idea?: string
}

/** A question with its numbers drawn. */
export interface Posed {
  topic: string
  topicTitle: string
  exercise: string
  /** what was drawn and fixed, in the calculator's units, as the class reads it */
  given: Given
  text: string
  options: readonly Option[]
  because: string
}

interface Drawing {
  random: () => number
  choice: UnitChoice
  bikes: BikeSheets
}

export const isRight = ({ idea }: Option): boolean => idea === undefined

/** Draws that are tried before an exercise is passed over. */
const TRIES = 8
/** Besides the right one. */
const MOST_WRONG = 3
const LEAST_WRONG = 2

const drawGiven = ({ draw, fixed = {} }: Exercise, random: () => number): Given => ({
  ...fixed,
  ...Object.fromEntries(
    Object.entries(draw).map(([id, values]) => [id, drawn(values!, random)] as const),
  ),
})

function writeAnswer(si: number, output: QuantityOutput, choice: UnitChoice): string {
  const say = createSay(choice)
  return output.signed || output.difference
    ? say.change(si, output.unit, output.digits)
    : say.quantity(si, output.unit, output.digits)
}

/** What one of the last place shown is worth [SI]. */
function placeOf({ unit, digits }: QuantityOutput, choice: UnitChoice): number {
  const shown = displayUnit(unit, choice)
  return units[shown].factor * 10 ** -displayDigits(digits, unit, shown)
}

/** Last places by which a wrong answer must miss the right one: a class that rounds on its way is not to fall between them. */
const APART = 2

/** The right answer and wrong ones that all read differently, in an order that is drawn; null where too few do. */
function optionsOf(
  right: number,
  all: readonly { idea: string; si: number }[],
  write: (si: number) => string,
  { random, place }: { random: () => number; place: number },
): Option[] | null {
  const options: Option[] = [{ text: write(right), si: right }]
  const wrong = all.filter(({ si }) => Math.abs(si - right) >= (APART - 0.5) * place)
  for (const { idea, si } of shuffled(wrong, random)) {
    const text = write(si)
    const taken = options.some((option) => option.text === text)
    if (Number.isFinite(si) && !taken && options.length <= MOST_WRONG)
      options.push({ text, si, idea })
  }
  return options.length > LEAST_WRONG ? shuffled(options, random) : null
}

/** One exercise with numbers drawn; null where no draw gave a possible state with answers that differ. */
export function poseQuestion(
  topic: Topic,
  exercise: Exercise,
  { random, choice, bikes }: Drawing,
): Posed | null {
  const { calculator } = topic
  const output = calculator.outputs[exercise.asks]
  if (output === undefined || !isNumber(output))
    throw new RangeError(`${topic.id}: ${exercise.id} asks for “${exercise.asks}”, no number`)
  const write = writerFor(choice)
  for (let tried = 0; tried < TRIES; tried++) {
    const given = onBench(calculator, drawGiven(exercise, random), choice)
    const { now } = evaluate(calculator, given, { bikes, choice })
    const right = middle(now?.output[exercise.asks])
    if (now === null || right === null) continue
    const wrong = exercise.wrong.map(({ idea, answer }) => ({
      idea,
      // the state is one of the exercise's own calculator
      si: answer(now.input as InputOf<CardStatement>, now.output as OutputOf<CardStatement>),
    }))
    const options = optionsOf(right, wrong, (si) => writeAnswer(si, output, choice), {
      random,
      place: placeOf(output, choice),
    })
    if (options === null) continue
    return {
      topic: topic.id,
      topicTitle: topic.title,
      exercise: exercise.id,
      given,
      text: exercise.question(given, write),
      options,
      because: typeof exercise.because === 'string' ? exercise.because : exercise.because(write),
    }
  }
  return null
}
