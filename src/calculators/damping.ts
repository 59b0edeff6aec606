import { inputs, outputs } from './damping.fields.ts'
import { remarks } from './damping.remarks.ts'
import { baseline, compute, picture } from './damping.work.ts'
import { defineCalculator } from './define.ts'

export default defineCalculator({
  id: 'damping',
  version: 1,
  title: 'What damping does over a step, a bump and waves',
  question: 'What does damping do?',
  answers: 'How a body and its wheel move over a road with one damper setting, and with another.',
  assumes: [
    'One end of the bike by itself, moving straight up and down.',
    'Damping and rates at the wheel, for both legs or the whole shock.',
    'A straight spring between two hard stops.',
  ],
  leavesOut: [
    'Friction, which stops small movements that a damper lets through.',
    'The other end: pitch couples them.',
    'Oil that foams or warms, which takes damping away within minutes.',
    'Curved tyre contact: sharp edges are rounder on the road than here.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
