import { exercisesFor } from './exercise.ts'
import rideHeight from './ride-height.ts'

const MM = 1e-3
const bikes = ['light-commuter', 'middleweight-roadster', 'loaded-tourer'] as const

export default exercisesFor(rideHeight, [
  {
    id: 'trail-after-tubes',
    draw: { bike: bikes, amount: [5, 8, 10, 12] },
    fixed: { by: 'tubes', rider: 80 },
    question: ({ bike, amount }) =>
      `On the ${String(bike).replaceAll('-', ' ')} of the invented workshop, both tubes are slid ${String(amount)} mm up through the yokes, with a rider of 80 kg. What is the trail then?`,
    asks: 'trail',
    wrong: [
      { idea: 'lowering the front lengthens the trail', answer: ({ amount }, output) => Number(output.trail) + 0.48 * amount },
      { idea: 'the rake changes and the trail stays', answer: ({ amount }, output) => Number(output.trail) + 0.24 * amount },
      { idea: 'trail falls millimetre for millimetre', answer: ({ amount }, output) => Number(output.trail) - 0.76 * amount },
    ],
    because: 'The nose goes down by about the amount over the wheelbase, and a degree of rake is about 6 mm of trail. Ten millimetres make a little over 2.',
  },
  {
    id: 'load-after-tubes',
    draw: { amount: [8, 10, 12, 15], rider: [65, 80, 95] },
    fixed: { by: 'tubes', bike: 'middleweight-roadster' },
    question: ({ amount, rider }) => `The roadster’s tubes go ${String(amount)} mm up, with a rider of ${String(rider)} kg. What does the front wheel carry?`,
    asks: 'frontLoad',
    wrong: [
      { idea: 'a lower front puts several kilograms on it', answer: (_input, output) => Number(output.frontLoad) + 6 * 9.80665 },
      { idea: 'a kilogram for each millimetre', answer: ({ amount }, output) => Number(output.frontLoad) + (amount / MM) * 9.80665 },
      { idea: 'a lower front takes weight off it', answer: (_input, output) => Number(output.frontLoad) - 3 * 9.80665 },
    ],
    because: 'The centre of gravity moves forward by its height above the axles times the pitch, about 2 mm of 1440. That is less than a kilogram.',
  },
  {
    id: 'tube-after-preload',
    draw: { bike: bikes, amount: [4, 6, 8, 10] },
    fixed: { by: 'preload', rider: 80 },
    question: ({ bike, amount }) =>
      `The fork of the ${String(bike).replaceAll('-', ' ')} gets ${String(amount)} mm more preload in both legs, rider 80 kg. How much tube is in sight, seal to mark?`,
    asks: 'exposedTube',
    wrong: [
      { idea: 'preload makes the fork stiffer and leaves its height', answer: ({ amount }, output) => Number(output.exposedTube) - 0.9 * amount },
      { idea: 'preload pulls the front down', answer: ({ amount }, output) => Number(output.exposedTube) - 1.8 * amount },
      { idea: 'each leg lifts by the whole preload, so the two add up', answer: ({ amount }, output) => Number(output.exposedTube) + 1.1 * amount },
    ],
    because:
      'The load is the same, so the spring is squeezed as before. Its upper end moved by the preload, and all but the part that the gas takes shows as height.',
  },
])
