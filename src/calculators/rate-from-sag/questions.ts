import { exercisesFor } from '../../machine/question.ts'
import { middle } from '../../units/interval.ts'
import rateFromSag from './statement.ts'

export default exercisesFor(rateFromSag, [
  {
    id: 'slope-of-two-sags',
    level: 2,
    metric: true,
    draw: {
      staticReading: [128, 130, 132],
      riderReading: [110, 112, 114],
      riderLoad: [134, 137, 140],
    },
    fixed: { extended: 150, staticLoad: 100, unsprungMass: 28, rake: 25, gas: 'none' },
    question: (given) =>
      `The front wheel carries 100 kg with the bike alone and ${String(given.riderLoad)} kg with the rider. The exposed tube goes from ${String(given.staticReading)} to ${String(given.riderReading)} mm. Rake is 25°. What rate do both legs have together? 1 kg weighs 9.807 N.`,
    asks: 'rate',
    wrong: [
      {
        idea: 'load over sag, from the rider’s reading alone',
        answer: (input, output) => (output.riderForce as number) / (0.15 - input.riderReading),
      },
      {
        idea: 'the wheel load counts whole, without the rake',
        answer: (input) =>
          (input.riderLoad - input.staticLoad) / (input.staticReading - input.riderReading),
      },
      {
        idea: 'that is one leg, so twice it',
        answer: (_input, output) => 2 * (middle(output.rate) ?? 0),
      },
    ],
    because:
      'The rate is the extra load along the fork over the extra travel. Along the fork is the wheel load times the cosine of the rake.',
  },
  {
    id: 'preload-of-two-sags',
    level: 2,
    metric: true,
    draw: { extended: [148, 150, 152], staticReading: [129, 130, 131] },
    fixed: {
      riderReading: 112,
      staticLoad: 100,
      riderLoad: 137,
      unsprungMass: 28,
      rake: 25,
      gas: 'none',
    },
    question: (given) =>
      `Hanging ${String(given.extended)} mm of tube show, ${String(given.staticReading)} with the bike alone and 112 with the rider. Along the fork that is 640 N and 969 N. What preload do the two readings point to?`,
    asks: 'preload',
    wrong: [
      {
        idea: 'the static sag is the preload',
        answer: (input) => input.extended - input.staticReading,
      },
      {
        idea: 'the whole squeeze under the bike is the preload',
        answer: (_input, output) => (output.staticForce as number) / (middle(output.rate) ?? 1),
      },
      {
        idea: 'squeeze and sag add up',
        answer: (input, output) =>
          (output.staticForce as number) / (middle(output.rate) ?? 1) +
          input.extended -
          input.staticReading,
      },
    ],
    because:
      'Load over rate is how far the springs are squeezed in all. What the sag does not account for was there before: the preload.',
  },
])
