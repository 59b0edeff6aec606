import { defineStatement } from '../../machine/statement.ts'
import { inputs } from './inputs.ts'

const length = (label: string) => ({ label, quantity: 'length', unit: 'mm', digits: 1 }) as const
const change = (label: string) => ({ ...length(label), signed: true, more: true }) as const
const rate = (label: string) =>
  ({ label, quantity: 'rate', unit: 'N/mm', digits: 1, more: true }) as const

const outputs = {
  verdict: {
    kind: 'choice',
    label: 'Found',
    options: {
      there: 'it is there already',
      ways: 'ways that meet every aim',
      nearest: 'none meets every aim: the nearest',
      none: 'no way',
    },
    lead: true,
  },
  frontRiderSag: { ...length('Front sag with the rider, by the first way'), lead: true },
  rearRiderSag: { ...length('Rear sag with the rider, by the first way'), lead: true },
  trail: { ...length('Trail, by the first way'), lead: true },
  ways: { label: 'Ways found', quantity: 'ratio', unit: '', digits: 0 },
  forkPreloadChange: change('First way: fork preload, change'),
  tubeRaise: change('First way: tubes up through the yokes'),
  forkRate: rate('First way: new fork springs, one leg'),
  oilHeightChange: change('First way: oil level down, change'),
  rearPreloadChange: change('First way: shock preload, change'),
  rearRate: rate('First way: new shock spring, each'),
  shockLengthChange: change('First way: shock length, change'),
} as const

export default defineStatement({
  id: 'find-change',
  order: 205,
  version: 1,
  title: 'Which change gets there?',
  question: 'Where does it sit?',
  answers:
    'Which changes bring a bike to the sags, the trail and the travel in hand that are wanted, the least work first.',
  assumes: [
    'The bike is as its sheet has it: springs, preload, oil height and tyres.',
    'A way changes at most three things, each by whole steps: half a millimetre at adjusters and tubes, 5 mm of oil, 1 mm of shock.',
    'Sags, trail and rake hold at rest on a level road, without friction. On the brakes the stop is long and even, with the front brake alone.',
    'The rider’s weight is known to the kilogram or two that you enter: this card takes no “I don’t know” for it.',
    'The ± of an aim covers about 95 % of what you allow for in springs, preload and the rider’s weight, each by itself. It holds for no other error.',
    'Measured sags move the preload of that end first, since it is the least known; springs, rider and seat move within what you allow for. Sags are read solo.',
    'New springs are straight ones, and preload stays as it was unless the way changes it.',
  ],
  leavesOut: [
    'Friction: a band of 5 mm or more in every sag.',
    'Whether your adjusters reach so far: their range stands in the maker’s manual.',
    'What a quick brake adds to the settled dive, 15 to 32 % of the change, and every bump.',
    'Clearance but for the two gaps above the tyres at full travel, and the tube above the yoke: chain, stand, exhaust, radiator and the lean to the pegs are not worked out. Check them by hand.',
    'The oil that a thicker spring pushes up.',
    'Tyre squash, chain pull and the air’s drag.',
  ],
  inputs,
  outputs,
})
