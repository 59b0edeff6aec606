import { exercisesFor } from '../../machine/question.ts'
import forkStack from './statement.ts'

export default exercisesFor(forkStack, [
  {
    id: 'preload-from-lengths',
    level: 2,
    metric: true,
    draw: { springLength: [335, 340, 345], spacerLength: [125, 130], tubeDepth: [473, 476, 478] },
    fixed: { turnsIn: 7, thread: 'M20x1', capReach: 24, washers: [[2]] },
    question: (given, write) =>
      `A fork leg is ${write(given.tubeDepth, 'mm')} deep from the cap seat to the spring seat. Cap and adjuster reach ${write(24, 'mm')} in, the adjuster is 7 turns in on a ${write(1, 'mm')} thread, and there is one ${write(2, 'mm')} washer. The spring is ${write(given.springLength, 'mm')} long, the spacer ${write(given.spacerLength, 'mm')}. How much preload does that give?`,
    asks: 'preload',
    wrong: [
      {
        idea: 'the adjuster does not count',
        answer: (input, output) => Number(output.preload) - input.turnsIn * 1e-3,
      },
      { idea: 'preload is what the adjuster is wound in', answer: (input) => input.turnsIn * 1e-3 },
      {
        idea: 'the washer takes space away from the spring, so it is taken off',
        answer: (_input, output) => Number(output.preload) - 4e-3,
      },
    ],
    because:
      'Add up all that fills the tube and take off its depth. What is left over is how much shorter the cap holds the spring than it is free.',
  },
  {
    id: 'spacer-for-a-shorter-spring',
    level: 2,
    draw: { springLength: [300, 305, 310], wanted: [12, 15, 18] },
    fixed: {
      tubeDepth: 478,
      turnsIn: 7,
      thread: 'M20x1',
      capReach: 24,
      washers: [[2]],
      spacerLength: 125,
    },
    question: (given, write) =>
      `You fit a spring of ${write(given.springLength, 'mm')} into a leg ${write(478, 'mm')} deep. Cap and adjuster reach ${write(31, 'mm')} in as set, and one washer is ${write(2, 'mm')}. How long must the spacer be for ${write(given.wanted, 'mm')} of preload?`,
    asks: 'spacer',
    wrong: [
      {
        idea: 'the old spacer will do: a shorter spring only has less preload',
        answer: () => 0.125,
      },
      {
        idea: 'preload is taken off the spacer',
        answer: (input, output) => Number(output.spacer) - 2 * input.wanted,
      },
      {
        idea: 'only the depth and the spring count',
        answer: (input) => input.tubeDepth - input.springLength,
      },
    ],
    because:
      'Depth plus the preload wanted is what must stand in the tube. Take off spring, washer and cap: the rest is spacer.',
  },
  {
    id: 'turns-to-millimetres',
    level: 1,
    metric: true,
    draw: { turnsIn: [2, 3, 4, 5, 6], thread: ['M10x1.25', 'M12x1.5', 'M14x1.5'] },
    fixed: { range: 15 },
    question: (given) =>
      `An adjuster has a thread ${String(given.thread).replace('x', ' × ')}. You wind it in ${String(given.turnsIn)} turns. How far does it move the spring’s end?`,
    asks: 'screw',
    wrong: [
      { idea: 'a turn is a millimetre', answer: (input) => input.turnsIn * 1e-3 },
      {
        idea: 'the thread’s diameter sets it',
        answer: (input) => (input.turnsIn * Number.parseFloat(input.thread.slice(1)) * 1e-3) / 10,
      },
      {
        idea: 'two flanks, so half a pitch a turn',
        answer: (_input, output) => Number(output.screw) / 2,
      },
    ],
    because:
      'One turn of a single-start thread travels one pitch. The number behind the × is the pitch in millimetres.',
  },
])
