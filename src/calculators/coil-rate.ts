import { inputs, outputs } from './coil-rate.fields.ts'
import { remarks } from './coil-rate.remarks.ts'
import { compute } from './coil-rate.work.ts'
import { defineCalculator } from './define.ts'

export default defineCalculator({
  id: 'coil-rate',
  version: 1,
  title: 'Rate from the coil',
  question: 'Which spring?',
  answers: 'How stiff a coil spring is by its wire, diameter and count, and how far it can be squeezed.',
  assumes: [
    'Round wire, one pitch, one diameter. A spring with close and open coils has two rates: use the progressive-spring calculator.',
    'The shear modulus is that of EN 13906-1 for the wire chosen, from memory: the paid text was not read.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
    'Stress with the Bergsträsser factor for the curve of the wire (EN 13906-1).',
  ],
  leavesOut: [
    'The end coils roll onto their neighbours as the spring is squeezed, so the rate rises by a few per cent near coil bind.',
    'Rubbing of a bowed spring on its tube.',
    'Strength: what a wire bears depends on its grade and treatment, which a calliper cannot read. This checks a spring that a maker made; it does not design one.',
  ],
  inputs,
  outputs,
  compute,
  remarks,
})
