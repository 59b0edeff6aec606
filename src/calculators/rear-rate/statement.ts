import { defineStatement } from '../../machine/statement.ts'
import { inputs } from './inputs.ts'

const outputs = {
  wheelRate: {
    label: 'Wheel rate where the rider sits (± about 95 %)',
    quantity: 'rate',
    unit: 'N/mm',
    digits: 1,
    lead: true,
  },
  riderSag: {
    label: 'Sag with the rider (± about 95 %)',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
    lead: true,
  },
  staticSag: { label: 'Static sag (± about 95 %)', quantity: 'length', unit: 'mm', digits: 1 },
  stands: {
    kind: 'choice',
    label: 'With the rider the back stands',
    options: {
      between: 'between its stops',
      'may-bottom': 'near its stop, closer than the ± can tell',
      bottomed: 'on its stop: all the travel is used',
      'may-top-out': 'near its top stop, closer than the ± can tell',
      'topped-out': 'on its top stop',
    },
  },
  heightPerTurn: {
    label: 'Height of the axle for one turn of the collar',
    quantity: 'length',
    unit: 'mm',
    digits: 1,
  },
  preloadNow: { label: 'Preload with the collar there', quantity: 'length', unit: 'mm', digits: 1 },
  share: {
    label: 'Sag with the rider, share of travel',
    quantity: 'share',
    unit: '%',
    digits: 0,
    more: true,
  },
  rateExtended: {
    label: 'Wheel rate at full extension',
    quantity: 'rate',
    unit: 'N/mm',
    digits: 1,
    more: true,
  },
  rateFull: {
    label: 'Wheel rate at full travel',
    quantity: 'rate',
    unit: 'N/mm',
    digits: 1,
    more: true,
  },
  fullForce: {
    label: 'Force at the wheel, full travel',
    quantity: 'force',
    unit: 'N',
    digits: 0,
    more: true,
  },
} as const

export default defineStatement({
  id: 'rear-rate',
  order: 190,
  version: 1,
  title: 'Rear spring, leverage and sag',
  question: 'Where does it sit?',
  answers:
    'What a rear spring amounts to at the wheel, where the bike sits on it, and what a turn of the collar does.',
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
})
