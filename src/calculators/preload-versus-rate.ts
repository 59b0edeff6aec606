import { defineCalculator } from './define.ts'
import { inputs, outputs } from './preload-versus-rate.fields.ts'
import { remarks } from './preload-versus-rate.remarks.ts'
import { baseline, compute, picture } from './preload-versus-rate.work.ts'

export default defineCalculator({
  id: 'preload-versus-rate',
  version: 1,
  title: 'Preload against rate',
  question: 'Which spring?',
  answers: 'What a change of preload, and a change of rate, does to height, to force and to the slope.',
  assumes: [
    'Both legs are alike, their springs have one rate, and their coils stay apart.',
    'The load stays the same. On a bike it changes by about 1 N for a millimetre of height.',
    'Sealed air is that of the invented middleweight roadster: tube 43 mm, bore 38 mm, 56 cm³ of spring, spacer and cap in each leg, closed at full extension. At rest it is squeezed slowly.',
  ],
  leavesOut: [
    'Friction: about 60 N each way, 3 mm at 18 N/mm.',
    'Damping, which holds up nothing at rest.',
    'The rear, which follows when the front moves: see the whole-bike calculator.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
