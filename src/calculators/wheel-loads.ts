import { defineCalculator } from './define.ts'
import { inputs, outputs } from './wheel-loads.fields.ts'
import { remarks } from './wheel-loads.remarks.ts'
import { baseline, compute, picture } from './wheel-loads.work.ts'

export default defineCalculator({
  id: 'wheel-loads',
  version: 1,
  title: 'Wheel loads',
  question: 'What happens on the brakes?',
  answers: 'What bike, rider, passenger and luggage each put on the front and the rear wheel.',
  assumes: [
    'The bike stands upright and at rest on level ground, where its springs let it settle.',
    'Each person is one mass at a fixed place: a crouch or straight arms move it by several centimetres.',
  ],
  leavesOut: [
    'Air: at road speed drag and lift shift load to the rear.',
    'Fuel: 10 kg of it, six tenths of the way to the front axle, moves the share by less than half a point.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
