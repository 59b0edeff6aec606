import { defineCalculator } from './define.ts'
import { inputs, outputs } from './oil-height.fields.ts'
import { remarks } from './oil-height.remarks.ts'
import { baseline, compute, picture } from './oil-height.work.ts'

export default defineCalculator({
  id: 'oil-height',
  version: 1,
  title: 'Oil height and the air above it',
  question: 'Is the oil right?',
  answers: 'How much the trapped air pushes, where in the travel, and where the oil would lock.',
  assumes: [
    'Both legs hold the same oil at the same height.',
    'Height is read with the leg collapsed and the spring out.',
    'The caps went on with the legs fully extended, at 20 °C and sea level.',
  ],
  leavesOut: [
    'Air that dissolves in the oil or is whipped into it: the level falls by some millimetres over a ride.',
    'Seals that let air in or out: a fork that has been warm and cold many times can hold pressure.',
    'Weather: it moves the outside pressure by about 3 %.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
