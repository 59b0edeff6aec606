import { inputs, outputs } from './cg-height.fields.ts'
import { remarks } from './cg-height.remarks.ts'
import { compute, picture } from './cg-height.work.ts'
import { defineCalculator } from './define.ts'

export default defineCalculator({
  id: 'cg-height',
  version: 1,
  title: 'Height of the centre of gravity',
  question: 'What happens on the brakes?',
  answers: 'Where the centre of gravity is, from one weighing level and one with an axle raised, and how sure that is.',
  assumes: [
    'Suspension locked at both ends, so that the bike turns as one piece. Wheels free to roll, brakes off.',
    'Both scales level; the loads read with the bike upright and still.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. The result’s ± then covers about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Fuel and oil that run to the low end: 10 kg of fuel that moves 100 mm moves the height by several millimetres.',
    'Tyres that squash more on the low end, 1 or 2 mm of lift.',
  ],
  inputs,
  outputs,
  compute,
  picture,
  remarks,
})
