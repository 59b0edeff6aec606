import { defineCalculator } from './define.ts'
import { inputs, outputs } from './stance.fields.ts'
import { remarks } from './stance.remarks.ts'
import { baseline, compute, picture } from './stance.work.ts'

export default defineCalculator({
  id: 'stance',
  version: 1,
  title: 'The whole bike',
  question: 'Where does it sit?',
  answers: 'Where both ends settle together, at rest, braking, leaning or two-up, and what a change at one end does to the other.',
  assumes: [
    'A steady state: at rest, or in a long even stop or bend, on a level road. Nothing moves any more.',
    'No friction in the figures; the friction band is given apart. Gas slow at rest and in a bend, fast on the brakes.',
    'Steering straight ahead, caliper on the swing arm, unsprung masses and places aboard as on the bike’s sheet.',
  ],
  leavesOut: [
    'Tyre deflection: about 4 mm of trail and 7 mm of height with a tyre of 180 N/mm under 1.2 kN.',
    'Damping: a brake put on quickly passes the settled dive by 15 to 32 % of the change.',
    'Chain pull, air, frame and fork flex, bushing friction that grows with the brake.',
    'Pneumatic trail, as large as the changes shown, and yokes that are not parallel to the steering axis.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
