import brakingDive from './statement.ts'
import { exercisesFor } from '../../machine/question.ts'

const G = 9.80665
const bikes = ['light-commuter', 'middleweight-roadster', 'loaded-tourer'] as const

export default exercisesFor(brakingDive, [
  {
    id: 'front-load-on-the-brakes',
    level: 2,
    draw: { deceleration: [0.3, 0.4, 0.5, 0.6], rider: [70, 80, 90] },
    fixed: { bike: 'middleweight-roadster' },
    question: ({ deceleration, rider }, write) =>
      `The roadster with a rider of ${write(rider, 'kg')} brakes at ${String(deceleration)} g. Its centre of gravity is about ${write(620, 'mm')} up, its wheelbase about ${write(1420, 'mm')} then. What does the front wheel carry?`,
    asks: 'frontLoad',
    wrong: [
      {
        idea: 'braking moves all of m × a to the front',
        answer: ({ bike, rider, deceleration }, output) =>
          Number(output.frontLoad) + (bike.mass + rider) * deceleration * 0.56,
      },
      {
        idea: 'the front load does not change, the fork only dives',
        answer: ({ bike, rider }) => (bike.mass + rider) * G * 0.49,
      },
      {
        idea: 'a stiffer fork would take less, so half of it',
        answer: ({ bike, rider }, output) =>
          (Number(output.frontLoad) + (bike.mass + rider) * G * 0.49) / 2,
      },
    ],
    because:
      'What moves to the front is mass × deceleration × height ÷ wheelbase. No spring rate is in it.',
  },
  {
    id: 'brake-along-the-fork',
    level: 3,
    draw: { bike: bikes, deceleration: [0.4, 0.5, 0.6] },
    fixed: { rider: 80 },
    question: ({ bike, deceleration }, write) =>
      `The ${String(bike).replaceAll('-', ' ')} brakes at ${String(deceleration)} g with the front brake alone, rider ${write(80, 'kg')}. How hard does the brake itself push along the raked fork?`,
    asks: 'brakePart',
    wrong: [
      { idea: 'dive is all weight transfer, so nothing', answer: () => 0 },
      {
        idea: 'the whole brake force pushes along the fork',
        answer: ({ bike, rider, deceleration }) => (bike.mass + rider) * deceleration,
      },
      {
        idea: 'it pushes with the cosine of the rake',
        answer: ({ bike, rider, deceleration }) =>
          (bike.mass + rider - bike.frontUnsprungMass) * deceleration * 0.92,
      },
    ],
    because:
      'Along the fork goes the brake force, less what slows the wheel itself, times the sine of the rake as it is on the brakes.',
  },
])
