import { defineCalculator } from './define.ts'
import { inputs, outputs } from './trail.fields.ts'
import { remarks } from './trail.remarks.ts'
import { compute } from './trail.work.ts'

export default defineCalculator({
  id: 'trail',
  version: 1,
  title: 'Trail from rake, offset and radius',
  question: 'How does it steer?',
  answers: 'How far ahead of the tyre’s contact the steering axis meets the road, and what moves it.',
  assumes: [
    'Steering straight ahead, the bike upright, the tyre round, the fork’s tubes parallel to the steering axis.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. The result’s ± then covers about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Tyre deflection: a tyre of 180 N/mm under 1.2 kN sits 6.7 mm lower, which takes about 4 mm off the trail. Enter the loaded radius to include it.',
    'Pneumatic trail, the tyre’s own, which can be as large as a change between two set-ups.',
    'Frame and fork flex, and steering away from straight ahead, which shortens trail.',
  ],
  inputs,
  outputs,
  compute,
  remarks,
})
