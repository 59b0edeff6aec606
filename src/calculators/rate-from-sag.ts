import { defineCalculator } from './define.ts'
import { inputs, outputs } from './rate-from-sag.fields.ts'
import { remarks } from './rate-from-sag.remarks.ts'
import { compute, picture } from './rate-from-sag.work.ts'

export default defineCalculator({
  id: 'rate-from-sag',
  version: 1,
  title: 'Rate from two sags',
  question: 'Which spring?',
  answers: 'What rate and preload two readings of sag and load point to, and whether they can tell one spring from the next.',
  assumes: [
    'Both legs are alike and hold a spring of one rate.',
    'Each length is the mean of a reading after pushing down and one after lifting, so that friction cancels.',
    'Bike upright and held, rider in riding posture, both wheels level while one stands on the scale.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Friction that is not cancelled: 3 mm between two settled readings that were not averaged is 16 % of an 18 mm difference.',
    'The turn of the bike between the two readings: 1° of rake is under 1 % of the force.',
    'The error in the sizes of the air: 5 mm of oil height moves the spring rate by about 0.3 %.',
    'A top-out spring that still pushes with the bike alone. Then the lower reading tells of both springs.',
  ],
  inputs,
  outputs,
  compute,
  picture,
  remarks,
})
