import { exercisesFor } from '../../machine/question.ts'
import rearRate from './statement.ts'

export default exercisesFor(rearRate, [
  {
    id: 'wheel-rate',
    level: 1,
    draw: { springRate: [80, 90, 100, 110], leverage: [2, 2.2, 2.4] },
    fixed: { ratioAs: 'leverage', linkage: 'constant', gasForce: 0, turns: 0 },
    question: (given, write) =>
      `A rear spring of ${write(given.springRate, 'N/mm')} works at a leverage of ${String(given.leverage)} : 1, the same all the way. What is the rate at the wheel?`,
    asks: 'wheelRate',
    wrong: [
      { idea: 'divide by the leverage', answer: (input) => input.springRate / input.leverage },
      { idea: 'the wheel feels the spring’s own rate', answer: (input) => input.springRate },
      {
        idea: 'divide by the leverage three times to be safe',
        answer: (input) => input.springRate / input.leverage ** 3,
      },
    ],
    because:
      'The lever takes the force down once and stretches the travel once. So the rate goes down by the leverage squared.',
  },
  {
    id: 'collar-to-height',
    level: 1,
    draw: { pitch: [1, 1.5, 2], motionRatio: [0.4, 0.45, 0.5] },
    fixed: { linkage: 'constant', turns: 0 },
    question: (given, write) =>
      `The collar’s thread moves ${write(given.pitch, 'mm')} a turn, and the motion ratio is ${String(given.motionRatio)} (shock stroke per wheel travel). How far does the back rise for one turn in?`,
    asks: 'heightPerTurn',
    wrong: [
      { idea: 'a turn raises the back by its pitch', answer: (input) => input.pitch },
      { idea: 'times the motion ratio', answer: (input) => input.pitch * input.motionRatio },
      {
        idea: 'the ratio counts twice, as in the rate',
        answer: (input) => input.pitch / input.motionRatio ** 2,
      },
    ],
    because:
      'The same load presses the spring to the same length, so the shock must be longer by the pitch. The wheel moves by that over the motion ratio.',
  },
  {
    id: 'preload-after-turns',
    level: 1,
    draw: { preload: [9, 10, 11, 12], turns: [1, 2, 3] },
    fixed: { pitch: 1.5, linkage: 'constant', ratioAs: 'motion', motionRatio: 0.435 },
    question: (given, write) =>
      `A shock has ${write(given.preload, 'mm')} of preload. You turn the collar in ${String(given.turns)} turn${given.turns === 1 ? '' : 's'} of ${write(1.5, 'mm')}. What is the preload now?`,
    asks: 'preloadNow',
    wrong: [
      {
        idea: 'the wheel sags less, so the spring is pressed as before',
        answer: (input) => input.preload,
      },
      {
        idea: 'the leverage multiplies it',
        answer: (input) => input.preload + (input.turns * input.pitch) / input.motionRatio,
      },
      { idea: 'a turn is a millimetre', answer: (input) => input.preload + input.turns * 1e-3 },
    ],
    because:
      'Preload is the spring’s compression with the wheel hanging. The collar adds to it by pitch times turns, whatever the linkage does.',
  },
])
