import { lengthInput } from '../../machine/inputs/length.ts'
import { defineStatement } from '../../machine/statement.ts'

const USUAL = 'common practice for road bikes, no published source'

const teeth = (label: string, range: readonly [number, number], standard: number) =>
  ({
    kind: 'quantity',
    label,
    quantity: 'ratio',
    unit: '',
    range,
    step: 1,
    default: standard,
    more: true,
  }) as const

const inputs = {
  slack: {
    ...lengthInput('Slack read at mid-run', [0, 120], 35),
    hint: 'The lower run moved down and up by hand, at its middle, at the tightest link: all of the movement. Engine off, in neutral.',
    procedure: 'set-rear-preload',
  },
  at: {
    ...lengthInput('Travel used at that reading', [0, 350], 20),
    hint: '0 with the wheel hanging. On its wheels, the sag of the bike alone.',
    procedure: 'measure-rear-sag',
  },
  raise: {
    ...lengthInput('Back raised since, at the axle', [-40, 40], 10),
    hint: 'By a longer or shorter shock. Below 0 for lowered. Preload moves the sag instead: change the travel used.',
  },
  armLength: {
    ...lengthInput('Swing arm, pivot to axle', [350, 750], 570),
    hint: 'Between the centres, with the axle where the chain is adjusted now.',
  },
  axleBelow: {
    ...lengthInput('Axle below the pivot, wheel hanging', [-50, 250], 90),
    hint: 'Heights of both centres above a level floor, subtracted.',
    more: true,
    typical: [60, 120],
    typicalFrom: USUAL,
  },
  sprocketAhead: {
    ...lengthInput('Engine sprocket ahead of the pivot', [-40, 200], 75),
    hint: 'Between the centres, along the floor.',
    more: true,
    typical: [60, 95],
    typicalFrom: USUAL,
  },
  sprocketAbove: {
    ...lengthInput('Engine sprocket above the pivot', [-80, 80], 5),
    hint: 'Below 0 where it is lower.',
    more: true,
    typical: [-10, 20],
    typicalFrom: USUAL,
  },
  travel: {
    ...lengthInput('Full wheel travel', [50, 350], 130),
    more: true,
    typical: [110, 150],
    typicalFrom: USUAL,
  },
  frontTeeth: teeth('Teeth of the engine sprocket', [10, 25], 16),
  rearTeeth: teeth('Teeth of the rear sprocket', [28, 65], 44),
  pitch: {
    kind: 'choice',
    label: 'Chain pitch',
    hint: 'The first figure of the chain’s number counts eighths of an inch.',
    more: true,
    options: {
      half: '½ in, 12.7 mm: a number that begins with 4',
      fiveEighths: '⅝ in, 15.875 mm: a number that begins with 5',
      threeQuarters: '¾ in, 19.05 mm: a number that begins with 6',
    },
    default: 'fiveEighths',
  },
  readingPlusMinus: {
    kind: 'quantity',
    label: 'The slack is within ±',
    hint: 'A rule held by hand against a moving chain: about 3 mm.',
    quantity: 'length',
    unit: 'mm',
    range: [0, 15],
    step: 0.5,
    default: 3,
    more: true,
  },
} as const

const outputs = {
  tightest: {
    label: 'Slack where the chain is tightest',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    lead: true,
  },
  slackNow: {
    label: 'Slack now, read as before',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    lead: true,
  },
  least: {
    label: 'Read as before, none is left below',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    lead: true,
  },
  stands: {
    kind: 'choice',
    label: 'Through the travel',
    options: {
      slack: 'slack all the way',
      'may-tighten': 'may go tight, closer than the ± can tell',
      tight: 'goes tight before the travel ends',
    },
  },
  tightestAt: {
    label: 'Tightest at this travel used',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
  },
  hanging: {
    label: 'Slack with the wheel hanging',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    more: true,
  },
  full: {
    label: 'Slack at full travel',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    more: true,
  },
  growth: {
    label: 'Its way is longer there, by',
    quantity: 'length',
    unit: 'mm',
    digits: 2,
    more: true,
  },
  run: {
    label: 'Straight run between the sprockets',
    quantity: 'length',
    unit: 'mm',
    digits: 0,
    more: true,
  },
} as const

export default defineStatement({
  id: 'chain-slack',
  order: 192,
  version: 1,
  title: 'Chain slack through the travel',
  question: 'Where does it sit?',
  answers:
    'How much slack the chain has where it is tightest, and how a change of rear height alters what you read.',
  assumes: [
    'The slack is the whole movement of the lower run at its middle, pulled down and pushed up by hand, with the upper run straight.',
    'The chain’s length stays the same: it is neither adjusted nor worn between both states.',
    'The chain runs on circles of one pitch for each tooth.',
    'The ± is a limit of the reading, and is carried to each place as it is.',
  ],
  leavesOut: [
    'Uneven wear. A tight spot of the chain or a sprocket off its centre takes slack again: read at the tightest link.',
    'A chain guide, roller or tensioner that bends a run.',
    'Play in the pivot and in the wheel bearings: a tenth of a millimetre between the sprockets is about 3 mm of slack near 35 mm, and more below.',
    'The chain’s own weight, which lets a run hang: by hand it is pulled straight.',
  ],
  inputs,
  outputs,
})
