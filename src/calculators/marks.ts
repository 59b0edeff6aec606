import { defineCalculator } from './define.ts'
import { inputs, outputs } from './marks.fields.ts'
import { remarks } from './marks.remarks.ts'
import { compute } from './marks.work.ts'

export default defineCalculator({
  id: 'marks',
  version: 1,
  title: 'Against the mark',
  question: 'Where did it stand?',
  answers: 'How far the front has moved from the height you marked, and whether friction alone could explain it.',
  assumes: [
    'Lengths run from the seal to the lower yoke, so that a tube that slips in the yokes shows. On an upside-down fork they run from the seal to the axle clamp, and it does not: measure tube above the upper yoke as well.',
    'Both times the bike stood the same way: upright, same load, same fuel, same tyre pressures.',
    'Both times the fork settled the same way, for instance pushed down and let rise.',
    'Each ± is a limit: the true length lies within it, anywhere equally likely. Results then carry about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Tyre pressure: 0.2 bar less lets a loaded tyre sit about 1 mm lower, and the marks on the fork cannot show it.',
    'What the rear did. A front that sits 6 mm higher also tips the bike back by about a quarter of a degree.',
  ],
  inputs,
  outputs,
  compute,
  remarks,
})
