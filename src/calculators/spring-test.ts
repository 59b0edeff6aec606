import { defineCalculator } from './define.ts'
import { inputs, outputs } from './spring-test.fields.ts'
import { remarks } from './spring-test.remarks.ts'
import { compute, picture } from './spring-test.work.ts'

export default defineCalculator({
  id: 'spring-test',
  version: 1,
  title: 'Spring test',
  question: 'Which spring?',
  answers: 'What rate a set of force readings gives, how sure it is, and whether the spring has one rate or two.',
  assumes: [
    'The spring stands straight between flat plates, and the first stretch that seats its ends was left out.',
    'The readings were taken going one way.',
    'One rate: a straight line by least squares. Its ± is Student’s factor times the standard error, and never less than what the ± of the readings allows (JCGM 100).',
    'Two rates: each force starts from no force at the free length, and the second rate is kept only where an F test at 5 % asks for it.',
  ],
  leavesOut: [
    'Rubbing on the guide rod, which reads as force one way and as less of it the other.',
    'A scale that is wrong throughout by the same share: the rate is wrong by that share, and no scatter shows it.',
  ],
  inputs,
  outputs,
  compute,
  picture,
  remarks,
})
