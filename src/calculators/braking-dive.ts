import { inputs, outputs } from './braking-dive.fields.ts'
import { remarks } from './braking-dive.remarks.ts'
import { baseline, compute, picture } from './braking-dive.work.ts'
import { defineCalculator } from './define.ts'

export default defineCalculator({
  id: 'braking-dive',
  version: 1,
  title: 'Dive on the brakes',
  question: 'What happens on the brakes?',
  answers: 'How much travel the front uses against deceleration, what pushes it, and how much is left.',
  assumes: [
    'Level road, upright, straight ahead, a steady deceleration that the tyres can give.',
    'The settled figures are those of a long even stop. The gas is squeezed fast (exponent 1.4) from where the bike stood.',
    'The band for a quick brake treats the front as one mass on one spring, with a damping ratio and a time that you set.',
  ],
  leavesOut: [
    'Bumps on the brakes, which use travel on top of all this: the reserve is for them.',
    'Bushing friction that grows with the brake, tyre squash (several millimetres more), and air drag, which helps to slow the bike.',
    'A damper’s own law: a square one passes the settled dive by another amount than this straight one.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
