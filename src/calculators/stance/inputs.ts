import { RATE_OF_ONE_LEG } from '../../machine/inputs/fork.ts'
import { lengthInput } from '../../machine/inputs/length.ts'
import type { QuantityInput } from '../../machine/statement.ts'
import {
  luggageMass,
  passengerMass,
  quotedFront,
  quotedRear,
  riderMass,
} from '../../machine/inputs/wholeBike.ts'

const OWN = ['own', 'scales'] as const

const own = <const T extends Omit<QuantityInput, 'kind' | 'optional' | 'empty' | 'when' | 'more'>>(
  input: T,
) =>
  ({
    kind: 'quantity',
    optional: true,
    empty: 'as this bike’s sheet has it',
    more: true,
    when: { from: OWN },
    ...input,
  }) as const
const ownLength = (label: string, range: readonly [number, number], step = 1) =>
  own({ label, quantity: 'length', unit: 'mm', range, step })
const ownRate = (label: string, range: readonly [number, number]) =>
  own({ label, quantity: 'rate', unit: 'N/mm', range, step: 0.1, procedure: 'test-a-spring' })
const changeOf = (label: string, range: readonly [number, number], step: number, hint?: string) =>
  ({
    kind: 'quantity',
    label,
    ...(hint === undefined ? {} : { hint }),
    quantity: 'length',
    unit: 'mm',
    range,
    step,
    default: 0,
    more: true,
  }) as const
const rateChange = (label: string, range: readonly [number, number], step: number) =>
  ({
    kind: 'quantity',
    label,
    quantity: 'rate',
    unit: 'N/mm',
    range,
    step,
    default: 0,
    more: true,
  }) as const
const scale = (label: string, standard: number) =>
  ({
    kind: 'quantity',
    label,
    quantity: 'load',
    unit: 'kg load',
    range: [30, 300],
    step: 0.5,
    default: standard,
    more: true,
    when: { from: 'scales' },
    procedure: 'weigh-the-bike',
  }) as const
const scaleLength = (
  label: string,
  range: readonly [number, number],
  standard: number,
  procedure: string,
) =>
  ({
    ...lengthInput(label, range, standard),
    more: true,
    when: { from: 'scales' },
    procedure,
  }) as const

/** What is asked of the whole bike: the bike, what happens to it, who is aboard, what was changed at either end, and where its figures come from. */
export const inputs = {
  bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
  situation: {
    kind: 'choice',
    label: 'Situation',
    options: { rest: 'at rest', braking: 'braking', leaning: 'leaning', twoUp: 'two-up, at rest' },
    default: 'rest',
  },
  deceleration: {
    kind: 'quantity',
    label: 'Deceleration',
    hint: 'A firm stop is about 0.6 g.',
    quantity: 'acceleration',
    unit: 'g',
    range: [0, 1.2],
    step: 0.05,
    default: 0.6,
    when: { situation: 'braking' },
  },
  lean: {
    kind: 'quantity',
    label: 'Effective lean',
    hint: 'From the line through both contacts to the centre of gravity: a few degrees less than the bike leans.',
    quantity: 'angle',
    unit: '°',
    range: [0, 55],
    step: 1,
    default: 35,
    when: { situation: 'leaning' },
  },
  rider: riderMass,
  forkPreloadChange: {
    ...changeOf('Fork preload, change', [-20, 20], 0.5, 'Both legs alike. Above 0: more preload.'),
    more: undefined,
    default: 5,
  },
  tubeRaise: changeOf('Tubes up through the yokes', [-20, 30], 0.5),
  forkRateChange: rateChange('Fork spring rate per leg, change', [-5, 5], 0.1),
  oilHeightChange: changeOf(
    'Oil level down from the top, change',
    [-60, 60],
    1,
    'Above 0: less oil, more air.',
  ),
  frontRadiusChange: changeOf('Front tyre’s radius, change', [-20, 20], 0.5),
  rearPreloadChange: changeOf('Shock preload, change', [-10, 20], 0.5),
  rearRateChange: rateChange('Shock spring rate, change', [-60, 60], 0.5),
  shockLengthChange: changeOf(
    'Shock length, change',
    [-15, 15],
    0.5,
    'Above 0: longer. It lifts the back by that over the motion ratio.',
  ),
  rearRadiusChange: changeOf('Rear tyre’s radius, change', [-20, 20], 0.5),
  passenger: {
    ...passengerMass,
    default: undefined,
    optional: true,
    empty: 'nobody; two-up: this bike’s sheet',
    more: true,
  },
  luggage: {
    ...luggageMass,
    default: undefined,
    optional: true,
    empty: 'none; two-up: this bike’s sheet',
    more: true,
  },
  frontBrakeShare: {
    kind: 'quantity',
    label: 'Front brake’s share',
    quantity: 'share',
    unit: '%',
    range: [0, 100],
    step: 5,
    default: 100,
    more: true,
    when: { situation: 'braking' },
  },
  from: {
    kind: 'choice',
    label: 'The bike’s figures come from',
    options: {
      bike: 'its sheet',
      own: 'its sheet, and mine where I have them',
      scales: 'two scales, and mine where I have them',
    },
    default: 'bike',
    more: true,
  },
  scaleFront: scale('Front scale, bike alone', 100),
  scaleRear: scale('Rear scale, bike alone', 100),
  scaleFrontTravel: scaleLength(
    'Front travel used on the scales',
    [0, 200],
    22,
    'measure-front-sag',
  ),
  scaleRearTravel: scaleLength('Rear travel used on the scales', [0, 200], 10, 'measure-rear-sag'),
  scaleHeight: {
    ...scaleLength('Centre of gravity’s height on the scales', [300, 900], 500, 'weigh-the-bike'),
    typical: [450, 550],
    typicalFrom: 'road bikes without a rider, no published source',
  },
  wheelbase: ownLength('Wheelbase', [900, 2000]),
  rake: own({
    label: 'Rake',
    quantity: 'angle',
    unit: '°',
    range: [15, 40],
    step: 0.1,
    typical: [23.5, 27],
    typicalFrom: 'common practice for road bikes, no published source',
  }),
  forkOffset: ownLength('Axle ahead of the steering axis', [-20, 100], 0.5),
  frontRadius: ownLength('Front tyre’s radius', [200, 420], 0.5),
  rearRadius: ownLength('Rear tyre’s radius', [200, 420], 0.5),
  mass: own({ label: 'Bike alone, wet', quantity: 'mass', unit: 'kg', range: [60, 500], step: 1 }),
  frontShare: own({
    label: 'Front share of the bike alone',
    quantity: 'share',
    unit: '%',
    range: [30, 70],
    step: 0.5,
    typical: [47, 53],
    typicalFrom: 'common practice for road bikes, no published source',
  }),
  centreOfGravityHeight: {
    ...ownLength('Centre of gravity’s height, bike alone', [300, 900]),
    typical: [450, 550],
    typicalFrom: 'road bikes without a rider, no published source',
  },
  forkTravel: ownLength('Fork travel', [50, 350]),
  forkRate: { ...ownRate('Fork spring rate per leg', [1, 40]), oneLeg: RATE_OF_ONE_LEG },
  forkPreload: ownLength('Fork preload', [0, 60], 0.5),
  airHeight: ownLength('Oil level down from the top, fork collapsed', [40, 300]),
  rearTravelFull: ownLength('Rear travel', [40, 400]),
  rearRate: ownRate('Shock spring rate', [5, 300]),
  rearPreload: ownLength('Shock preload', [0, 60], 0.5),
  motionRatio: own({
    label: 'Motion ratio, shock ÷ wheel',
    hint: 'Shock stroke for each millimetre of wheel travel. Some give the inverse: enter 1 ÷ that.',
    quantity: 'ratio',
    unit: '',
    range: [0.2, 1.5],
    step: 0.005,
    typical: [0.38, 0.5],
    typicalFrom: 'one shock, road bikes, common practice',
    procedure: 'measure-motion-ratio',
  }),
  quotedFront,
  quotedRear,
} as const
