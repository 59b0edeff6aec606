import { defineStatement } from '../../machine/statement.ts'

import { inputs } from './inputs.ts'

const rate = (label: string, digits = 1) =>
  ({ label, quantity: 'rate', unit: 'N/mm', digits }) as const
const travel = (label: string, digits = 0) =>
  ({ label, quantity: 'length', unit: 'mm', digits }) as const

const outputs = {
  inHand: {
    ...travel('Fitted springs leave the rider whom they suit, in hand'),
    lead: true,
    signed: true,
  },
  inHandNow: { ...travel('Fitted springs leave the rider now, in hand'), signed: true },
  sameRate: { ...rate('Rate that leaves as much, one leg'), lead: true },
  sameOver: {
    label: 'That is over the fitted rate by',
    quantity: 'share',
    unit: '%',
    digits: 0,
    signed: true,
  },
  oilInstead: {
    ...travel('Or oil higher by, with the springs that are fitted'),
    signed: true,
  },
  oilTen: { ...travel('10 mm more oil leave more in hand by', 1), signed: true },
  stepMore: { ...travel('0.5 N/mm more rate leaves more in hand by', 1), signed: true },
  candidates: { ...rate('Rates that pass, one leg'), lead: true },
  gentler: rate('Softest of them, if hard braking is 0.05 g less'),
  harder: rate('Softest of them, if it is 0.05 g more'),
  fittedRate: { ...rate('Spring rate fitted, one leg'), more: true },
  fromSags: { ...rate('Spring rate by the two sags, one leg'), more: true },
  fittedPreload: { ...travel('Preload of the fitted springs', 1), more: true },
  sagWanted: { ...travel('Sag with the rider that is compared at', 1), more: true },
  hardness: {
    label: 'Braking that is reckoned with',
    quantity: 'acceleration',
    unit: 'g',
    digits: 2,
    more: true,
  },
  forkLoad: {
    label: 'Load along the fork with the rider, both legs',
    quantity: 'force',
    unit: 'N',
    digits: 0,
  },
  front: { label: 'Front scale with the rider', quantity: 'load', unit: 'kg load', digits: 1 },
  spread: {
    label: 'That load, for five points of rider share either way, ±',
    quantity: 'share',
    unit: '%',
    digits: 1,
    more: true,
  },
  spreadRate: {
    label: 'The same share of a rate in the middle of the band, ±',
    quantity: 'rate',
    unit: 'N/mm',
    digits: 2,
    more: true,
  },
  rows: {
    kind: 'table',
    label: 'Each rate, set to the sag wanted',
    columns: [
      { id: 'rate', label: 'Rate', quantity: 'rate', unit: 'N/mm', digits: 1 },
      { id: 'preload', label: 'Preload', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'staticSag', label: 'Static sag', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'braking', label: 'Braking', quantity: 'length', unit: 'mm', digits: 0 },
      { id: 'overshoot', label: 'Overshoot', quantity: 'length', unit: 'mm', digits: 0 },
      { id: 'reserve', label: 'In hand', quantity: 'length', unit: 'mm', digits: 0 },
      { id: 'bind', label: 'Coil bind', quantity: 'length', unit: 'mm', digits: 0 },
      { id: 'ride', label: 'Ride', quantity: 'frequency', unit: 'Hz', digits: 1 },
      {
        kind: 'list',
        id: 'misses',
        label: 'Misses',
        none: 'none',
        options: {
          'no-preload': 'no preload gives the rider sag',
          'static-below': 'static sag below the window',
          'static-above': 'static sag above the window',
          bottoms: 'bottoms under braking',
          reserve: 'less in hand than the floor',
          'coil-bind': 'coil bind before full travel',
          unused: 'more unused than the ceiling',
          'little-preload': 'less than the least preload',
          stiff: 'rides too stiffly',
        },
      },
    ],
  },
} as const

export default defineStatement({
  id: 'choose-rate',
  order: 70,
  version: 2,
  // its table had a floor only, of 5 mm, and its sag a value of its own
  earlier: {
    1: { given: { riderSag: 36, reserve: 5, unused: 150, leastPreload: 0, stiffest: 20 } },
  },
  title: 'Fork springs worth trying',
  question: 'Which spring?',
  answers:
    'What the fitted springs leave in hand on the brakes, which rate leaves this rider as much, and which rates keep between a floor and a ceiling.',
  assumes: [
    'Both legs take the same straight spring.',
    'Preload is set so that each spring gives the same sag with the rider.',
    'Braking is with the front brake alone, on a straight level road, the gas squeezed fast.',
    'The oil stays at its height, except where its rise is given as the other means.',
    'With your own figures: rake, wheelbase, height of the centre of gravity, wheel masses and air are the invented bike’s that you chose as most like yours.',
  ],
  leavesOut: [
    'Friction: a band of 5 mm or more in every sag.',
    'Bumps met while braking, which use the same travel.',
    'A passenger or luggage, unless you count them as the rider.',
    'Tyre squash, chain pull and the air’s drag.',
  ],
  inputs,
  outputs,
})
