import { inputs, outputs } from './choose-rate.fields.ts'
import { remarks } from './choose-rate.remarks.ts'
import { compute, picture } from './choose-rate.work.ts'
import { defineCalculator } from './define.ts'

export default defineCalculator({
  id: 'choose-rate',
  version: 1,
  title: 'Fork springs worth trying',
  question: 'Which spring?',
  answers: 'Which of the springs that can be had are worth trying for this rider, and what each would do.',
  assumes: [
    'Both legs take the same straight spring.',
    'Preload is set so that each spring gives the same sag with the rider.',
    'Braking is with the front brake alone, on a straight level road, the gas squeezed fast.',
    'Oil height stays as it is.',
  ],
  leavesOut: [
    'Friction: a band of 5 mm or more in every sag.',
    'Bumps met while braking, which use the same travel.',
    'A passenger or luggage, unless you count them as the rider.',
    'Tyre squash, chain pull and the air’s drag.',
  ],
  inputs,
  outputs,
  compute,
  picture,
  remarks,
})
