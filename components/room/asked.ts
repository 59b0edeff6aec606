import type { BikeSheets } from '../../src/bikes/sheet.ts'
import type { Topic } from '../../src/calculators/exercises.ts'
import { randomStream } from '../../src/core/index.ts'
import type { Given } from '../../src/machine/given.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { isRight, poseQuestion } from '../../src/worksheet/pose.ts'
import { islandProps } from './islandProps.ts'

/** A question as a room sees it. */
export interface Asked {
  /** what stands before the question */
  scene: readonly string[]
  ask: string
  options: readonly { text: string; right: boolean; why: string }[]
}

/** The calculator that shows the answer, and the state in which it does. */
export interface Shown {
  id: string
  given: Given
  held: Given | null
  bikes: BikeSheets
  /** the result that the question asks for; none: the calculator’s first */
  asks?: string
  /** the inputs whose numbers the question drew */
  draws?: readonly string[]
}

/** An element’s words, without what a term’s note adds to them. */
function textOf(element: Element): string {
  const copy = element.cloneNode(true) as Element
  copy.querySelectorAll('.tip').forEach((each) => each.remove())
  return (copy.textContent ?? '').replace(/\s+/g, ' ').trim()
}

/** An option's words without its verdict and reason. */
function answerOf(option: Element): string {
  const copy = option.cloneNode(true) as Element
  copy.querySelectorAll('.why, .verdict, input').forEach((each) => each.remove())
  return textOf(copy)
}

/** The paragraphs between a heading and the question under it. */
function sceneOf(question: Element): string[] {
  const scene: string[] = []
  for (
    let before = question.previousElementSibling;
    before && !before.matches('h2, h3');
    before = before.previousElementSibling
  )
    if (before.matches('p')) scene.unshift(textOf(before))
  return scene
}

/** The prediction of a chapter, read off the page. */
export function readPrediction(page: ParentNode): Asked | null {
  const question = page.querySelector('[data-question="predict"]')
  if (question === null) return null
  return {
    scene: sceneOf(question),
    ask: textOf(question.querySelector('.ask') ?? question),
    options: [...question.querySelectorAll<HTMLElement>('[data-option]')].map((option) => ({
      text: answerOf(option),
      right: option.dataset['right'] === 'true',
      why: textOf(option.querySelector('.why') ?? option),
    })),
  }
}

/** The calculator of a page: in a chapter the one after the prediction. */
export function readShown(page: ParentNode): Shown | null {
  const question = page.querySelector('[data-question="predict"]')
  const places = [...page.querySelectorAll<HTMLElement>('[data-calculator-place]')]
  const place =
    places.find(
      (each) =>
        question !== null &&
        question.compareDocumentPosition(each) & Node.DOCUMENT_POSITION_FOLLOWING,
    ) ?? places[0]
  if (place === undefined) return null
  const { given, held, bikes } = islandProps(place)
  return {
    id: place.dataset['calculatorPlace']!,
    given: (given ?? {}) as Given,
    held: (held ?? null) as Given | null,
    bikes: (bikes ?? {}) as Shown['bikes'],
  }
}

/** One of a calculator’s own questions, its numbers drawn by `seed`, with the state that answers it. */
export function drawQuestion(
  topic: Topic,
  shown: Shown,
  { seed, choice }: { seed: number; choice: UnitChoice },
): { asked: Asked; shown: Shown } | null {
  const exercises = topic.exercises.filter(({ metric }) => !metric || choice.length === 'mm')
  const exercise = exercises[seed % exercises.length]
  if (exercise === undefined) return null
  const posed = poseQuestion(topic, exercise, {
    random: randomStream(seed),
    choice,
    bikes: shown.bikes,
  })
  if (posed === null) return null
  return {
    asked: {
      scene: [],
      ask: posed.text,
      options: posed.options.map((option) => ({
        text: option.text,
        right: isRight(option),
        why: option.idea ?? posed.because,
      })),
    },
    shown: {
      ...shown,
      given: posed.given,
      held: null,
      asks: exercise.asks,
      draws: Object.keys(exercise.draw),
    },
  }
}
