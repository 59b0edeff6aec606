import { defineCalculator } from './define.ts'
import { inputs, outputs } from './progressive-spring.fields.ts'
import { remarks } from './progressive-spring.remarks.ts'
import { compute, picture } from './progressive-spring.work.ts'

export default defineCalculator({
  id: 'progressive-spring',
  version: 1,
  title: 'Progressive spring',
  question: 'Which spring?',
  answers: 'Where the close coils touch, and which rate works where the bike rides.',
  assumes: [
    'The two legs are alike.',
    'Within one length the coils have one pitch and touch all at once.',
    'A length of coils alone has the rate that its own count gives: fewer coils, stiffer.',
  ],
  leavesOut: [
    'Coils that close one after another, which rounds the corner off: a spring wound with a slowly changing pitch has no sharp corner at all.',
    'Air, which stiffens every sealed fork deep in its travel: see the oil-height calculator.',
    'Friction and damping.',
  ],
  inputs,
  outputs,
  compute,
  picture,
  remarks,
})
