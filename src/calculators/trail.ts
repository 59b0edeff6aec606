import { groundTrail, normalTrail, propagate, wheelFlop } from '../core/index.ts'
import type { SteeringGeometry } from '../core/index.ts'
import { defineCalculator } from './define.ts'
import type { Remark } from './define.ts'
import { middle } from './interval.ts'
import { about, measured, standardFromLimit } from './measured.ts'
import type { Say } from './say.ts'

interface Reading {
  rake: number
  forkOffset: number
  frontRadius: number
  rakePlusMinus: number
  offsetPlusMinus: number
  radiusPlusMinus: number
}

const DEGREE = Math.PI / 180
const MM = 1e-3

/** Road bikes' trail as the trade has it, common practice without a published source: past either end a reading deserves a second look. */
const USUAL_TRAIL = [0.07, 0.13] as const
/** Below a tenth of the whole, a reading's share of the ± is not worth a better rule. */
const MINOR_SHARE = 0.1

const readings = ({ rake, forkOffset, frontRadius }: SteeringGeometry): number[] => [rake, forkOffset, frontRadius]
const limits = ({ rakePlusMinus, offsetPlusMinus, radiusPlusMinus }: Reading): number[] => [rakePlusMinus, offsetPlusMinus, radiusPlusMinus]
const geometry = ([rake, forkOffset, frontRadius]: number[]): SteeringGeometry => ({ rake: rake!, forkOffset: forkOffset!, frontRadius: frontRadius! })
const trailOf = (values: number[]): number => groundTrail(geometry(values))

/** What one step of one reading does to trail [m], centred on the reading: half a step either way. */
function sensitivity(given: SteeringGeometry, key: keyof SteeringGeometry, step: number): number {
  return groundTrail({ ...given, [key]: given[key] + step / 2 }) - groundTrail({ ...given, [key]: given[key] - step / 2 })
}

function largestPart(given: Reading): string {
  const { contributions, uncertainty } = propagate(trailOf, readings(given), limits(given).map(standardFromLimit))
  const named = ['the rake', 'the offset', 'the radius']
  const index = contributions.indexOf(Math.max(...contributions))
  const others = contributions.filter((part, place) => place !== index && part / uncertainty > MINOR_SHARE).length
  return others === 0 ? `nearly all of it from ${named[index]}` : `the largest part from ${named[index]}`
}

function remarks({ input, output, say }: { input: Reading; output: Readonly<Record<string, unknown>>; say: Say }): Remark[] {
  const number = (id: string): number => middle(output[id] as never) ?? 0
  const [trail, perDegree, perOffset] = [number('trail'), number('perDegree'), number('perOffset')]
  const same = Math.abs(perDegree / (perOffset / MM))
  const spread = about(trail, propagate(trailOf, readings(input), limits(input).map(standardFromLimit)).uncertainty)
  const list: Remark[] = [
    {
      kind: 'reading',
      text: `One degree of rake moves trail by ${say.quantity(Math.abs(perDegree), 'mm', 1)}, as much as ${say.quantity(same, 'mm', 1)} of offset. Rake alone does not tell you the trail.`,
    },
  ]
  if (spread.high > spread.low) {
    list.push({
      kind: 'reading',
      text: `The ± of the readings leave trail known within ${say.quantity((spread.high - spread.low) / 2, 'mm', 1)}, which covers about 95 %: ${largestPart(input)}.`,
    })
  }
  if (trail <= 0)
    list.push({
      kind: 'limit',
      text: 'The steering axis meets the road behind the tyre’s contact. Such a wheel does not centre itself: check the sign of the offset and the rake’s vertical.',
    })
  else if (trail < USUAL_TRAIL[0] || trail > USUAL_TRAIL[1]) {
    list.push({
      kind: 'limit',
      text: `Road bikes commonly have ${say.number(USUAL_TRAIL[0], 'mm', 0)} to ${say.quantity(USUAL_TRAIL[1], 'mm', 0)} of trail (common practice, no source). Check that rake is measured from the vertical.`,
    })
  }
  list.push({
    kind: 'next',
    text: 'A printed rake holds for the pose in which it was quoted. Measure yours with the bike at rest on its wheels, and write down the exposed tube with it.',
  })
  return list
}

const plusMinus = (label: string, unit: 'mm' | '°', standard: number, most: number) =>
  ({ kind: 'quantity', label, quantity: unit === 'mm' ? 'length' : 'angle', unit, range: [0, most], step: 0.1, default: standard, more: true }) as const

export default defineCalculator({
  id: 'trail',
  version: 1,
  title: 'Trail from rake, offset and radius',
  question: 'How does it steer?',
  answers: 'How far ahead of the tyre’s contact the steering axis meets the road, and what moves it.',
  assumes: [
    'Steering straight ahead, the bike upright, the tyre round, the fork’s tubes parallel to the steering axis.',
    'Each ± is a limit: the true value lies within it, anywhere equally likely. The result’s ± then covers about 95 % (JCGM 100).',
  ],
  leavesOut: [
    'Tyre deflection: a tyre of 180 N/mm under 1.2 kN sits 6.7 mm lower, which takes about 4 mm off the trail. Enter the loaded radius to include it.',
    'Pneumatic trail, the tyre’s own, which can be as large as a change between two set-ups.',
    'Frame and fork flex, and steering away from straight ahead, which shortens trail.',
  ],
  inputs: {
    rake: {
      kind: 'quantity',
      label: 'Rake, from the vertical',
      hint: 'A head angle of 65° is a rake of 25°.',
      quantity: 'angle',
      unit: '°',
      range: [15, 40],
      step: 0.1,
      default: 25,
      typical: [23.5, 27],
      typicalFrom: 'common practice for road bikes, no published source',
      procedure: 'measure-geometry',
    },
    forkOffset: {
      kind: 'quantity',
      label: 'Axle ahead of the steering axis',
      hint: 'The yokes’ offset and the axle’s own, together, at right angles to the axis.',
      quantity: 'length',
      unit: 'mm',
      range: [-20, 100],
      step: 0.5,
      default: 30,
      typical: [25, 45],
      typicalFrom: 'common practice for road bikes, no published source',
      procedure: 'measure-geometry',
    },
    frontRadius: {
      kind: 'quantity',
      label: 'Front tyre’s radius',
      hint: 'From the ground to the axle; or roll the wheel one turn and divide by 6.283.',
      quantity: 'length',
      unit: 'mm',
      range: [200, 420],
      step: 0.5,
      default: 300,
      typical: [290, 305],
      typicalFrom: '17-inch road tyres, loaded and free',
      procedure: 'measure-geometry',
    },
    rakePlusMinus: plusMinus('Rake is within ±', '°', 0.3, 3),
    offsetPlusMinus: plusMinus('Offset is within ±', 'mm', 1, 10),
    radiusPlusMinus: plusMinus('Radius is within ±', 'mm', 2, 20),
  },
  outputs: {
    trail: { label: 'Trail along the ground (± covers about 95 %)', quantity: 'length', unit: 'mm', digits: 1, lead: true },
    normalTrail: { label: 'Normal trail, at right angles to the axis (±)', quantity: 'length', unit: 'mm', digits: 1 },
    perDegree: { label: 'Trail for one degree more rake', quantity: 'length', unit: 'mm', digits: 2, signed: true },
    perOffset: { label: 'Trail for one millimetre more offset', quantity: 'length', unit: 'mm', digits: 2, signed: true },
    perRadius: { label: 'Trail for one millimetre more radius', quantity: 'length', unit: 'mm', digits: 2, signed: true },
    flop: { label: 'Wheel flop', quantity: 'length', unit: 'mm', digits: 1, more: true },
  },
  compute(given) {
    const trail = measured(trailOf, readings(given), limits(given))
    return {
      trail,
      normalTrail: measured((values) => normalTrail(geometry(values)), readings(given), limits(given)),
      perDegree: sensitivity(given, 'rake', DEGREE),
      perOffset: sensitivity(given, 'forkOffset', MM),
      perRadius: sensitivity(given, 'frontRadius', MM),
      flop: wheelFlop({ trail: trail.value, rake: given.rake }),
    }
  },
  remarks: (context) => remarks(context),
})
