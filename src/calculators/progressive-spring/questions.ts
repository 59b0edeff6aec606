import { exercisesFor } from '../../machine/question.ts'
import progressive from './statement.ts'

export default exercisesFor(progressive, [
  {
    id: 'slope-where-it-rides',
    level: 2,
    draw: { riderLoad: [900, 950, 1000, 1100], preload: [10, 15, 20] },
    fixed: {
      groups: [
        [24, 15],
        [12, 150],
      ],
      staticLoad: 640,
      brakingLoad: 2200,
      travel: 120,
    },
    question: (given, write) =>
      `Each spring has close coils of ${write(24, 'N/mm')} that touch after ${write(15, 'mm')}, and open coils of ${write(12, 'N/mm')}. The two carry ${write(given.riderLoad, 'N')} with ${write(given.preload, 'mm')} of preload. What slope do both legs have there?`,
    asks: 'riderRate',
    wrong: [
      { idea: 'both lengths always work, as one soft spring', answer: () => 16000 },
      { idea: 'the rates add up', answer: () => 72000 },
      { idea: 'the close coils are the stiff ones and carry it', answer: () => 48000 },
    ],
    because: (write) =>
      `The close coils touch at ${write(24, 'N/mm')} × ${write(15, 'mm')} = ${write(360, 'N')} a leg, ${write(720, 'N')} the pair. The load is above that, so the open coils work alone: ${write(12, 'N/mm')} a leg.`,
  },
  {
    id: 'where-the-coils-touch',
    level: 2,
    draw: { preload: [5, 10, 15, 20] },
    fixed: {
      groups: [
        [24, 15],
        [12, 150],
      ],
      riderLoad: 971,
      staticLoad: 640,
      brakingLoad: 2200,
      travel: 120,
    },
    question: (given, write) =>
      `Close coils of ${write(24, 'N/mm')} touch after ${write(15, 'mm')} of their own, the open ones have ${write(12, 'N/mm')}. With ${write(given.preload, 'mm')} of preload, at what travel do the close coils touch?`,
    asks: 'firstClosing',
    wrong: [
      { idea: 'after their own squeeze alone', answer: () => 0.015 },
      {
        idea: 'after their own squeeze, preload included',
        answer: (input) => 0.015 - input.preload,
      },
      { idea: 'the preload comes on top', answer: (input) => 0.045 + input.preload },
    ],
    because: (write) =>
      `They touch at ${write(24, 'N/mm')} × ${write(15, 'mm')} = ${write(360, 'N')}. By then the open coils have gone ${write(360, 'N')} ÷ ${write(12, 'N/mm')} = ${write(30, 'mm')} too: ${write(45, 'mm')} in all, less the preload.`,
  },
  {
    id: 'closing-load-and-preload',
    level: 2,
    draw: { preload: [5, 10, 20, 30], riderLoad: [900, 971, 1050] },
    fixed: {
      groups: [
        [24, 15],
        [12, 150],
      ],
      staticLoad: 640,
      brakingLoad: 2200,
      travel: 120,
    },
    question: (given, write) =>
      `Close coils of ${write(24, 'N/mm')} touch after ${write(15, 'mm')}. The preload is ${write(given.preload, 'mm')} and the rider’s load ${write(given.riderLoad, 'N')}. At which load on both legs do they touch?`,
    asks: 'closingForce',
    wrong: [
      {
        idea: 'preload takes its force off',
        answer: (input) => Math.max(0, 720 - 2 * 8000 * input.preload),
      },
      { idea: 'one leg', answer: () => 360 },
      { idea: 'preload adds its force', answer: (input) => 720 + 2 * 8000 * input.preload },
    ],
    because: (write) =>
      `The force alone decides: ${write(24, 'N/mm')} × ${write(15, 'mm')} = ${write(360, 'N')} a leg, ${write(720, 'N')} the pair. Preload moves the height at which that load is met.`,
  },
])
