import { defineCalculator } from './define.ts'
import { inputs, outputs } from './oil-viscosity.fields.ts'
import { remarks } from './oil-viscosity.remarks.ts'
import { baseline, compute, picture } from './oil-viscosity.work.ts'

export default defineCalculator({
  id: 'oil-viscosity',
  version: 1,
  title: 'Viscosity of fork oil, warm and cold',
  question: 'Is the oil right?',
  answers: 'How thick an oil, or a mix of two, is at your fork’s temperature.',
  assumes: ['Both figures come from the same data sheet.', 'The oils mix, and share the base and additives that let them.'],
  leavesOut: [
    'What viscosity does to damping: slow damping through gaps goes with it, fast damping through holes hardly does. Five times the viscosity is not five times the damping.',
    'Thickening additives, which can put a real mix several per cent off.',
    'Age: an oil with a high index loses some of it as it is worked.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
