import { exercisesFor } from './exercise.ts'
import sag from './sag.ts'

const mm = (value: unknown): string => `${String(value)} mm`

export default exercisesFor(sag, [
  {
    id: 'sag-from-three',
    draw: { extended: [148, 150, 153], settledDown: [108, 110, 112], settledUp: [115, 117, 119] },
    fixed: { travel: 120, readingPlusMinus: 0 },
    question: (given) =>
      `The exposed tube reads ${mm(given.extended)} hanging, ${mm(given.settledDown)} after pushing down and ${mm(given.settledUp)} after lifting. What is the sag?`,
    asks: 'sag',
    wrong: [
      { idea: 'the reading after pushing down is the true one', answer: (input) => input.extended - input.settledDown },
      { idea: 'the reading after lifting is the true one', answer: (input) => input.extended - input.settledUp },
      { idea: 'the tube in sight is the sag', answer: (input) => (input.settledDown + input.settledUp) / 2 },
    ],
    because: 'Friction holds the fork up on one reading and down on the other. Their mean cancels it; sag is the hanging length less that mean.',
  },
  {
    id: 'friction-band',
    draw: { settledDown: [106, 108, 111], settledUp: [114, 116, 118] },
    fixed: { extended: 150, travel: 120, readingPlusMinus: 0 },
    question: (given) =>
      `A fork settles at ${mm(given.settledDown)} of exposed tube after a push and at ${mm(given.settledUp)} after a lift. How wide is the friction band?`,
    asks: 'frictionBand',
    wrong: [
      { idea: 'half of it, since the sag is known to ± that', answer: (input) => (input.settledUp - input.settledDown) / 2 },
      { idea: 'the larger sag is the band', answer: (input) => input.extended - input.settledDown },
      { idea: 'there is none: one of the readings was wrong', answer: () => 0 },
    ],
    because: 'Both readings are honest. Friction can hold the fork anywhere between them, and that whole stretch is the band.',
  },
  {
    id: 'share-of-travel',
    draw: { extended: [146, 150, 154], travel: [110, 120, 130] },
    fixed: { settledDown: 112, settledUp: 118, readingPlusMinus: 0 },
    question: (given) => `Hanging ${mm(given.extended)}, settled 112 and 118 mm, full travel ${mm(given.travel)}. What share of the travel is the sag?`,
    asks: 'share',
    wrong: [
      { idea: 'a share of the hanging tube', answer: (input) => (input.extended - 0.115) / input.extended },
      { idea: 'by the push reading alone', answer: (input) => (input.extended - input.settledDown) / input.travel },
      { idea: 'the travel that is left', answer: (input) => 1 - (input.extended - 0.115) / input.travel },
    ],
    because: 'Sag over full travel. The tube in sight is longer than the travel and has nothing to do with it.',
  },
])
