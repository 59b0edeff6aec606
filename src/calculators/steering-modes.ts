import { defineCalculator } from './define.ts'
import { inputs, outputs } from './steering-modes.fields.ts'
import { remarks } from './steering-modes.remarks.ts'
import { baseline, compute, picture } from './steering-modes.work.ts'

export default defineCalculator({
  id: 'steering-modes',
  version: 1,
  title: 'What trail does to a bicycle',
  question: 'How does it steer?',
  answers: 'How a published bicycle rolls and steers by itself at a speed, and what its trail does to that.',
  notice:
    'This is a bicycle, the one published in 2007 as a benchmark, with a rigid rider who does nothing. It shows what trail does there. It says nothing about any motorcycle, and a motion that dies out here is no verdict on stability.',
  assumes: [
    'The published bicycle in every figure but its trail.',
    'Small leans and steering angles near straight running.',
    'A rider fixed to the frame, hands off the bars.',
  ],
  leavesOut: [
    'Tyres: these roll on a knife edge and never slip. A motorcycle’s tyres decide much of its weave and wobble.',
    'Suspension, a flexible frame, a steering damper.',
    'The rider, who steers.',
    'Wobble of the front alone, which this model does not have.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
