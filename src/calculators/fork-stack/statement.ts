import { defineStatement } from '../../machine/statement.ts'
import { inputs } from './inputs.ts'

const outputs = {
  preload: {
    label: 'Preload at this setting',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  spacer: {
    label: 'Spacer for the preload wanted',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  frontTravel: { label: 'Fork used, bike alone', quantity: 'length', unit: 'mm', digits: 1 },
  capForce: {
    label: 'Spring force on the cap, wheel hanging',
    quantity: 'force',
    unit: 'N',
    digits: 0,
  },
  screw: { label: 'Adjuster wound in', quantity: 'length', unit: 'mm', digits: 2, more: true },
  fullTravelForce: {
    label: 'Force at full travel, both legs, gas slow',
    quantity: 'force',
    unit: 'N',
    digits: 0,
    more: true,
  },
  bindMargin: {
    label: 'Spring travel left at full fork travel',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
  wantedTravel: {
    label: 'Fork used, bike alone, with the preload wanted',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
  wantedCapForce: {
    label: 'Force on the cap, with the preload wanted',
    quantity: 'force',
    unit: 'N',
    digits: 0,
    more: true,
  },
  wantedBindMargin: {
    label: 'Spring travel left at full fork travel, with the preload wanted',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    more: true,
  },
  settings: {
    kind: 'table',
    label: 'Every setting of the adjuster',
    columns: [
      { id: 'turns', label: 'Turns in', quantity: 'turns', unit: 'turns', digits: 2 },
      { id: 'preload', label: 'Preload', quantity: 'length', unit: 'mm', digits: 1 },
      {
        id: 'rise',
        label: 'Front height against this setting',
        quantity: 'length',
        unit: 'mm',
        digits: 1,
        signed: true,
      },
      {
        kind: 'choice',
        id: 'state',
        label: 'Spring',
        options: { loose: 'loose', held: 'held', solid: 'coils touch' },
      },
    ],
  },
} as const

export default defineStatement({
  id: 'fork-stack',
  order: 80,
  version: 1,
  title: 'Spacer, washers and adjuster in a fork',
  question: 'Which spring?',
  answers:
    'How much preload a fork’s stack gives at each setting of its adjuster, and how long to cut the spacer.',
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
})
