import { defineCalculator } from './define.ts'
import { inputs, outputs } from './fork-stack.fields.ts'
import { remarks } from './fork-stack.remarks.ts'
import { baseline, compute, picture } from './fork-stack.work.ts'

export default defineCalculator({
  id: 'fork-stack',
  version: 1,
  title: 'Spacer, washers and adjuster in a fork',
  question: 'Which spring?',
  answers: 'How much preload a fork’s stack gives at each setting of its adjuster, and how long to cut the spacer.',
  assumes: [
    'Lengths are taken with the leg fully extended and the spring at its free length.',
    'Both legs hold the same stack.',
    'The height is read with the bike on its wheels, without a rider.',
  ],
  leavesOut: [
    'Friction: the bike settles anywhere within its friction band, often 5 mm or more.',
    'The top-out spring’s own length where the spring seats on it: measure the depth with the leg hanging.',
    'Squash of a plastic spacer, a few tenths of a millimetre.',
  ],
  inputs,
  outputs,
  compute,
  baseline,
  picture,
  remarks,
})
