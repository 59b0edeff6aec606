import { defineCalculator } from './define.ts'
import { withChecks } from './statement.ts'
import { inputs, outputs } from './tyre-radius.fields.ts'
import { remarks } from './tyre-radius.remarks.ts'
import { baseline, checks, compute, picture } from './tyre-radius.work.ts'

export default defineCalculator({
  id: 'tyre-radius',
  version: 1,
  title: 'Tyre radius from the size',
  question: 'How does it steer?',
  answers: 'How large a tyre is by its marking, and what another size does to height and trail.',
  assumes: [
    'The nominal rim diameter of the code (17 is 432 mm) and the section height that the marking gives: UN Regulation No. 75 and ISO 5751, from memory.',
    'The rest of the bike stays as it is, and the bike stands at rest with its rider. Rake and trail follow from free radii, as they are quoted.',
    'The ± is a limit: the tyre’s true radius lies within it, anywhere equally likely. The result’s ± then covers about 95 % (JCGM 100).',
  ],
  leavesOut: ['Growth at speed and wear, several millimetres each.', 'A rim of another width, which changes the section’s height by a few millimetres.'],
  inputs: withChecks(inputs, checks),
  outputs,
  compute,
  baseline,
  picture,
  checks,
  remarks,
})
