import { defineCalculator } from './define.ts'
import { inputs, outputs } from './ride-height.fields.ts'
import { remarks } from './ride-height.remarks.ts'
import { baseline, compute, picture } from './ride-height.work.ts'

export default defineCalculator({
  id: 'ride-height',
  version: 1,
  title: 'Change the ride height',
  question: 'Where does it sit?',
  answers: 'What a change of preload, tubes in the yokes, shock length or front tyre does to height, geometry and load.',
  assumes: [
    'The bike stands upright and at rest on level ground, both springs free of friction.',
    'The bike is an invented one, with its own springs, gas and geometry, and the rider sits still.',
  ],
  leavesOut: [
    'Tyre deflection: with a tyre of 180 N/mm about 4 mm of trail and 7 mm of height, nearly the same before and after.',
    'Friction: it can hold the front several millimetres off these heights, either way.',
    'Pneumatic trail, which is as large as the changes shown here, and yokes that are not parallel to the steering axis.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
