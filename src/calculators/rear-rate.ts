import { defineCalculator } from './define.ts'
import { inputs, outputs } from './rear-rate.fields.ts'
import { remarks } from './rear-rate.remarks.ts'
import { baseline, compute, picture } from './rear-rate.work.ts'

export default defineCalculator({
  id: 'rear-rate',
  version: 1,
  title: 'Rear spring, leverage and sag',
  question: 'Where does it sit?',
  answers: 'What a rear spring amounts to at the wheel, where the bike sits on it, and what a turn of the collar does.',
  assumes: [
    'Motion ratio is shock stroke per unit of wheel travel; leverage is its inverse.',
    'Scale readings with the bike upright and level.',
    'Preload is the spring’s compression with the wheel hanging, before the collar is turned.',
  ],
  leavesOut: [
    'Chain pull, which lifts or squats the back under power.',
    'Friction of shock, linkage and swing arm: often 5 to 10 mm of sag at the wheel.',
    'A rubber bump stop, which takes over in the last third of many shocks.',
    'Tyre squash: none of it is sag.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
