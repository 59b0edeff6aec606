import { exercisesFor } from '../../machine/question.ts'
import sag from './statement.ts'

export default exercisesFor(sag, [
  {
    id: 'sag-from-three',
    level: 1,
    draw: { extended: [148, 150, 153], settledDown: [108, 110, 112], settledUp: [115, 117, 119] },
    fixed: { travel: 120, readingPlusMinus: 0 },
    question: (given, write) =>
      `The exposed tube reads ${write(given.extended, 'mm')} hanging, ${write(given.settledDown, 'mm')} after pushing down and ${write(given.settledUp, 'mm')} after lifting. What is the sag?`,
    asks: 'sag',
    wrong: [
      {
        idea: 'the reading after pushing down is the true one',
        answer: (input) => input.extended - input.settledDown,
      },
      {
        idea: 'the reading after lifting is the true one',
        answer: (input) => input.extended - input.settledUp,
      },
      {
        idea: 'the tube in sight is the sag',
        answer: (input) => (input.settledDown + input.settledUp) / 2,
      },
    ],
    because:
      'Friction holds the fork up on one reading and down on the other. Their mean cancels it; sag is the hanging length less that mean.',
  },
  {
    id: 'friction-band',
    level: 1,
    draw: { settledDown: [106, 108, 111], settledUp: [114, 116, 118] },
    fixed: { extended: 150, travel: 120, readingPlusMinus: 0 },
    question: (given, write) =>
      `A fork settles at ${write(given.settledDown, 'mm')} of exposed tube after a push and at ${write(given.settledUp, 'mm')} after a lift. How wide is the friction band?`,
    asks: 'frictionBand',
    wrong: [
      {
        idea: 'half of it, since the sag is known to ± that',
        answer: (input) => (input.settledUp - input.settledDown) / 2,
      },
      { idea: 'the larger sag is the band', answer: (input) => input.extended - input.settledDown },
      { idea: 'there is none: one of the readings was wrong', answer: () => 0 },
    ],
    because:
      'Both readings are honest. Friction can hold the fork anywhere between them, and that whole stretch is the band.',
  },
  {
    id: 'share-of-travel',
    level: 1,
    draw: { extended: [146, 150, 154], travel: [110, 120, 130] },
    fixed: { settledDown: 112, settledUp: 118, readingPlusMinus: 0 },
    question: (given, write) =>
      `Hanging ${write(given.extended, 'mm')}, settled ${write(112, 'mm')} and ${write(118, 'mm')}, full travel ${write(given.travel, 'mm')}. What share of the travel is the sag?`,
    asks: 'share',
    wrong: [
      {
        idea: 'a share of the hanging tube',
        answer: (input) => (input.extended - 0.115) / input.extended,
      },
      {
        idea: 'by the push reading alone',
        answer: (input) => (input.extended - input.settledDown) / input.travel,
      },
      {
        idea: 'the travel that is left',
        answer: (input) => 1 - (input.extended - 0.115) / input.travel,
      },
    ],
    because:
      'Sag over full travel. The tube in sight is longer than the travel and has nothing to do with it.',
  },
])
