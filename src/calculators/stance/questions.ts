import { exercisesFor } from '../../machine/question.ts'
import stance from './statement.ts'

const bikes = ['light-commuter', 'middleweight-roadster', 'loaded-tourer'] as const
const named = (bike: unknown): string => String(bike).replaceAll('-', ' ')

export default exercisesFor(stance, [
  {
    id: 'front-change-rear-answer',
    level: 3,
    draw: { bike: bikes, forkPreloadChange: [6, 8, 10] },
    fixed: { rider: 80 },
    question: ({ bike, forkPreloadChange }, write) =>
      `The ${named(bike)} gets ${write(forkPreloadChange, 'mm')} more fork preload and nothing at the back, rider ${write(80, 'kg')}. How deep does the rear stand in its travel?`,
    asks: 'rearTravel',
    wrong: [
      {
        idea: 'the rear sinks by as much as the front rises',
        answer: ({ forkPreloadChange }, output) =>
          Number(output.rearTravel) + forkPreloadChange * 0.9,
      },
      {
        idea: 'the rear rises with the front',
        answer: ({ forkPreloadChange }, output) =>
          Math.max(0, Number(output.rearTravel) - forkPreloadChange * 0.9),
      },
      {
        idea: 'the rear takes half of the change',
        answer: ({ forkPreloadChange }, output) =>
          Number(output.rearTravel) + forkPreloadChange * 0.45,
      },
    ],
    because:
      'The front rises, the weight shifts back by a few hundred grams, and the rear sinks by a tenth or two. The ends are not independent, and hardly coupled at rest.',
  },
  {
    id: 'two-up-trail',
    level: 3,
    draw: { bike: bikes, rider: [70, 80, 90] },
    fixed: { situation: 'twoUp', forkPreloadChange: 0 },
    question: ({ bike, rider }, write) =>
      `The ${named(bike)} carries a rider of ${write(rider, 'kg')}, its passenger and its luggage, nothing adjusted. What is its trail at rest?`,
    asks: 'trail',
    wrong: [
      {
        idea: 'trail is the printed figure whatever is aboard',
        answer: ({ bike }) =>
          (bike.frontRadius * Math.sin(bike.rake) - bike.forkOffset) / Math.cos(bike.rake),
      },
      {
        idea: 'more load lowers the bike, so trail gets much shorter',
        answer: (_input, output) => Number(output.trail) - 0.012,
      },
      {
        idea: 'both ends sink alike, so half as much is gained',
        answer: (_input, output) => Number(output.trail) + 0.008,
      },
    ],
    because:
      'A passenger sits near the rear axle. The back sinks, the nose comes up, and rake and trail grow.',
  },
  {
    id: 'lean-presses',
    level: 3,
    draw: { lean: [20, 30, 40, 45] },
    fixed: { situation: 'leaning', bike: 'middleweight-roadster', rider: 80, forkPreloadChange: 0 },
    question: ({ lean }, write) =>
      `The roadster with its rider of ${write(80, 'kg')} goes round a steady bend at an effective lean of ${String(lean)}°. How far in does the front stand? At rest it is ${write(35.2, 'mm')}.`,
    asks: 'frontTravel',
    wrong: [
      {
        idea: 'leaning takes load off the springs',
        answer: ({ lean }, output) =>
          2 * 0.0352 - Number(output.frontTravel) - 0.002 * Math.sin(lean),
      },
      { idea: 'the springs don’t feel a bend', answer: () => 0.0352 },
      {
        idea: 'travel grows with 1/cos of the lean, as the load does',
        answer: ({ lean }) => 0.0352 / Math.cos(lean) + 0.001,
      },
    ],
    because:
      'The load along the bike grows by 1/cos of the lean. The extra goes on the slope of the fork, springs and gas, from where it stood.',
  },
])
