import { exercisesFor } from './exercise.ts'
import progressive from './progressive-spring.ts'

export default exercisesFor(progressive, [
  {
    id: 'slope-where-it-rides',
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
    question: (given) =>
      `Each spring has close coils of 24 N/mm that touch after 15 mm, and open coils of 12 N/mm. The two carry ${String(given.riderLoad)} N with ${String(given.preload)} mm of preload. What slope do both legs have there?`,
    asks: 'riderRate',
    wrong: [
      { idea: 'both lengths always work: 8 N/mm a leg', answer: () => 16000 },
      { idea: 'the rates add up', answer: () => 72000 },
      { idea: 'the close coils are the stiff ones and carry it', answer: () => 48000 },
    ],
    because: 'The close coils touch at 24 × 15 = 360 N a leg, 720 N the pair. The load is above that, so the open coils work alone: 12 N/mm a leg.',
  },
  {
    id: 'where-the-coils-touch',
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
    question: (given) =>
      `Close coils of 24 N/mm touch after 15 mm of their own, the open ones have 12 N/mm. With ${String(given.preload)} mm of preload, at what travel do the close coils touch?`,
    asks: 'firstClosing',
    wrong: [
      { idea: 'after their own 15 mm', answer: () => 0.015 },
      { idea: 'after their own 15 mm, preload included', answer: (input) => 0.015 - input.preload },
      { idea: 'the preload comes on top', answer: (input) => 0.045 + input.preload },
    ],
    because: 'They touch at 24 × 15 = 360 N. By then the open coils have gone 360/12 = 30 mm too: 45 mm in all, less the preload.',
  },
  {
    id: 'closing-load-and-preload',
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
    question: (given) =>
      `Close coils of 24 N/mm touch after 15 mm. The preload is ${String(given.preload)} mm and the rider’s load ${String(given.riderLoad)} N. At which load on both legs do they touch?`,
    asks: 'closingForce',
    wrong: [
      { idea: 'preload takes its force off', answer: (input) => Math.max(0, 720 - 2 * 8000 * input.preload) },
      { idea: 'one leg', answer: () => 360 },
      { idea: 'preload adds its force', answer: (input) => 720 + 2 * 8000 * input.preload },
    ],
    because: 'The force alone decides: 24 × 15 = 360 N a leg, 720 N the pair. Preload moves the height at which that load is met.',
  },
])
