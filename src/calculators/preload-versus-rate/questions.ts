import { exercisesFor } from '../../machine/question.ts'
import { middle } from '../../units/interval.ts'
import preloadVersusRate from './statement.ts'

export default exercisesFor(preloadVersusRate, [
  {
    id: 'where-it-sits',
    level: 2,
    draw: { rate: [8, 8.5, 9, 9.5], preload: [10, 15, 20], load: [900, 950, 1000] },
    fixed: { gas: 'none', topOut: 'none', travel: 120 },
    question: (given, write) =>
      `Each leg holds a spring of ${write(given.rate, 'N/mm')} with ${write(given.preload, 'mm')} of preload. The two carry ${write(given.load, 'N')} along the fork. How much travel is used? Leave air and friction out.`,
    asks: 'travelUsed',
    wrong: [
      {
        idea: 'one spring carries it all',
        answer: (input) => input.load / input.rate - input.preload,
      },
      { idea: 'preload does not count', answer: (input) => input.load / (2 * input.rate) },
      {
        idea: 'preload adds to the travel',
        answer: (input) => input.load / (2 * input.rate) + input.preload,
      },
    ],
    because:
      'The load squeezes both springs by load over twice the rate. The preload is already part of that squeeze; travel is the rest.',
  },
  {
    id: 'force-after-winding-in',
    level: 1,
    draw: { preload: [18, 22, 28], load: [910, 971, 1050] },
    fixed: { rate: 9, gas: 'none', topOut: 'none', travel: 120 },
    question: (given, write) =>
      `Springs of ${write(9, 'N/mm')} carry ${write(given.load, 'N')} together. You wind the preload in to ${write(given.preload, 'mm')}, and the fork stays off its stops. With what force do the two springs push now?`,
    asks: 'springForce',
    wrong: [
      {
        idea: 'the preload adds its force',
        answer: (input) => input.load + 2 * input.rate * input.preload,
      },
      { idea: 'one leg alone', answer: (input) => input.load / 2 },
      {
        idea: 'the preload takes its force away',
        answer: (input) => input.load - 2 * input.rate * input.preload,
      },
    ],
    because:
      'Between the stops the springs push with what they carry, no more and no less. Preload only changes the height at which they do it.',
  },
  {
    id: 'force-at-full-travel',
    level: 2,
    draw: { rate: [8, 9, 10], preload: [10, 15, 25], travel: [110, 120, 130] },
    fixed: { gas: 'none', topOut: 'none', load: 971 },
    question: (given, write) =>
      `Springs of ${write(given.rate, 'N/mm')} in each leg, ${write(given.preload, 'mm')} of preload, ${write(given.travel, 'mm')} of travel. What force do the two give at full travel? Leave the air out.`,
    asks: 'forceAtFullTravel',
    wrong: [
      { idea: 'preload is used up by then', answer: (input) => 2 * input.rate * input.travel },
      {
        idea: 'one spring',
        answer: (_input, output) => (middle(output.forceAtFullTravel) ?? 0) / 2,
      },
      {
        idea: 'preload shortens the travel',
        answer: (input) => 2 * input.rate * (input.travel - input.preload),
      },
    ],
    because:
      'At full travel each spring is squeezed by preload and travel together, and there are two.',
  },
])
