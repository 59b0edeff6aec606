import { exercisesFor } from '../../machine/question.ts'
import rideHeight from './statement.ts'

const MM = 1e-3
const bikes = ['light-commuter', 'middleweight-roadster', 'loaded-tourer'] as const

export default exercisesFor(rideHeight, [
  {
    id: 'trail-after-tubes',
    level: 3,
    draw: { bike: bikes, amount: [5, 8, 10, 12] },
    fixed: { by: 'tubes', rider: 80 },
    question: ({ bike, amount }, write) =>
      `On the ${String(bike).replaceAll('-', ' ')} of the invented workshop, both tubes are slid ${write(amount, 'mm')} up through the yokes, with a rider of ${write(80, 'kg')}. What is the trail then?`,
    asks: 'trail',
    wrong: [
      {
        idea: 'lowering the front lengthens the trail',
        answer: ({ amount }, output) => Number(output.trail) + 0.48 * amount,
      },
      {
        idea: 'the rake changes and the trail stays',
        answer: ({ amount }, output) => Number(output.trail) + 0.24 * amount,
      },
      {
        idea: 'trail falls millimetre for millimetre',
        answer: ({ amount }, output) => Number(output.trail) - 0.76 * amount,
      },
    ],
    because: (write) =>
      `The nose goes down by about the amount over the wheelbase, and a degree of rake is about ${write(6, 'mm')} of trail. ${write(10, 'mm')} of tube make a little over ${write(2, 'mm')}.`,
  },
  {
    id: 'load-after-tubes',
    level: 3,
    draw: { amount: [8, 10, 12, 15], rider: [65, 80, 95] },
    fixed: { by: 'tubes', bike: 'middleweight-roadster' },
    question: ({ amount, rider }, write) =>
      `The roadster’s tubes go ${write(amount, 'mm')} up, with a rider of ${write(rider, 'kg')}. What does the front wheel carry?`,
    asks: 'frontLoad',
    wrong: [
      {
        idea: 'a lower front puts several kilograms on it',
        answer: (_input, output) => Number(output.frontLoad) + 6 * 9.80665,
      },
      {
        idea: 'a kilogram for each millimetre',
        answer: ({ amount }, output) => Number(output.frontLoad) + (amount / MM) * 9.80665,
      },
      {
        idea: 'a lower front takes weight off it',
        answer: (_input, output) => Number(output.frontLoad) - 3 * 9.80665,
      },
    ],
    because: (write) =>
      `The centre of gravity moves forward by its height above the axles times the pitch, about ${write(2, 'mm')} of ${write(1440, 'mm')}. That is less than ${write(1, 'kg')}.`,
  },
  {
    id: 'tube-after-preload',
    level: 3,
    draw: { bike: bikes, amount: [4, 6, 8, 10] },
    fixed: { by: 'preload', rider: 80 },
    question: ({ bike, amount }, write) =>
      `The fork of the ${String(bike).replaceAll('-', ' ')} gets ${write(amount, 'mm')} more preload in both legs, rider ${write(80, 'kg')}. How much tube is in sight, seal to mark?`,
    asks: 'exposedTube',
    wrong: [
      {
        idea: 'preload makes the fork stiffer and leaves its height',
        answer: ({ amount }, output) => Number(output.exposedTube) - 0.9 * amount,
      },
      {
        idea: 'preload pulls the front down',
        answer: ({ amount }, output) => Number(output.exposedTube) - 1.8 * amount,
      },
      {
        idea: 'each leg lifts by the whole preload, so the two add up',
        answer: ({ amount }, output) => Number(output.exposedTube) + 1.1 * amount,
      },
    ],
    because:
      'The load is the same, so the spring is squeezed as before. Its upper end moved by the preload, and all but the part that the gas takes shows as height.',
  },
])
