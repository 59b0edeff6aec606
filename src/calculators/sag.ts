import { defineCalculator } from './define.ts'
import { inputs, outputs } from './sag.fields.ts'
import { remarks } from './sag.remarks.ts'
import { compute } from './sag.work.ts'

export default defineCalculator({
  id: 'sag',
  version: 1,
  title: 'Sag from three readings',
  question: 'Where does it sit?',
  answers: 'How far the bike sinks from full extension, and how sure the reading is.',
  assumes: [
    'The bike stands upright on level ground, tyres cold at their pressures.',
    'With a rider: in riding gear, both feet on the pegs, in the riding posture, held upright by a helper.',
    'Friction is as large going up as going down. The mean of the two readings then cancels it.',
    'Each ± is a limit: the true length lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Tyre squash: a tyre of 180 N/mm under 1.2 kN sits about 6.7 mm lower, and none of it is sag.',
    'Friction that differs up and down. The true balance is then still between the two readings, but not at their mean.',
  ],
  inputs,
  outputs,
  compute,
  remarks,
})
