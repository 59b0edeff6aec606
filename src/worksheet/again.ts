import type { BikeSheets } from '../bikes/sheet.ts'
import type { Topic } from '../calculators/exercises.ts'
import { randomStream } from '../core/index.ts'
import { METRIC } from '../units/choice.ts'
import { poseQuestion } from './pose.ts'
import type { Posed } from './pose.ts'
import { shuffled } from './shuffled.ts'

/** How often what was missed in a chapter is asked again. */
const TIMES = 3

/** The questions in which a chapter is asked again, with numbers drawn from its place in the book, so that every build asks the same. */
export function askedAgain(topics: readonly Topic[], order: number, bikes: BikeSheets): Posed[] {
  const random = randomStream(order)
  const pool = shuffled(
    topics.flatMap((topic) => topic.exercises.map((exercise) => ({ topic, exercise }))),
    random,
  )
  const posed: Posed[] = []
  for (let round = 0; posed.length < TIMES && round < 2 * TIMES; round++)
    for (const { topic, exercise } of pool) {
      const question = poseQuestion(topic, exercise, { random, choice: METRIC, bikes })
      const fresh = question && posed.every(({ text }) => text !== question.text)
      if (fresh && posed.length < TIMES) posed.push(question)
    }
  return posed
}
