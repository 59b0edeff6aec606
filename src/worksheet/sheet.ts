import { randomStream } from '../core/index.ts'
import type { Topic } from '../calculators/exercises.ts'
import type { Exercise } from '../machine/question.ts'
import type { BikeSheets } from '../bikes/sheet.ts'
import { withComma } from './decimalMark.ts'
import { poseQuestion } from './pose.ts'
import type { Posed } from './pose.ts'
import { UNIT_SETS } from './settings.ts'
import type { Settings } from './settings.ts'
import { shuffled } from './shuffled.ts'

/** A sheet: its questions, and what stood in the way of more. */
export interface Sheet {
  questions: readonly Posed[]
  /** in words, where there are fewer questions than asked for */
  short: string | null
}

export interface Pooled {
  topic: Topic
  exercise: Exercise
}

/** The exercises that these settings allow, in the order of topics. */
export const poolOf = (
  topics: readonly Topic[],
  { topics: ids, level, units }: Settings,
): Pooled[] =>
  topics
    .filter(({ id }) => ids.length === 0 || ids.includes(id))
    .flatMap((topic) => topic.exercises.map((exercise) => ({ topic, exercise })))
    .filter(({ exercise }) => level === 'all' || exercise.level === level)
    .filter(({ exercise }) => units !== 'imperial' || exercise.metric !== true)

/** Rounds through the pool without a new question after which a sheet is said to be as long as it gets. */
const FRUITLESS = 12

const tooFew = (found: number, pool: readonly Pooled[], { units }: Settings): string =>
  pool.length === 0
    ? `No question fits these settings. Tick more topics or choose another level${units === 'imperial' ? ', or metric units: some sums only come out in those' : ''}.`
    : `There are ${found} different questions for these settings. Tick more topics or choose every level for more.`

/**
 * The sheet of these settings: the same on every machine. The pool is shuffled and dealt until it is empty, then again with
 * other numbers, so that no exercise comes twice before all came once; and no question comes twice.
 */
export function makeSheet(topics: readonly Topic[], settings: Settings, bikes: BikeSheets): Sheet {
  const pool = poolOf(topics, settings)
  const random = randomStream(settings.seed)
  const choice = UNIT_SETS[settings.units]
  const questions: Posed[] = []
  const asked = new Set<string>()
  for (let fruitless = 0; pool.length > 0 && fruitless < FRUITLESS; fruitless++) {
    for (const { topic, exercise } of shuffled(pool, random)) {
      if (questions.length === settings.n) break
      const posed = poseQuestion(topic, exercise, { random, choice, bikes })
      if (posed === null || asked.has(posed.text)) continue
      asked.add(posed.text)
      questions.push(settings.comma ? withComma(posed) : posed)
      fruitless = 0
    }
    if (questions.length === settings.n) return { questions, short: null }
  }
  return { questions, short: tooFew(questions.length, pool, settings) }
}
