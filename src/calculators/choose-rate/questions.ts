import { exercisesFor } from '../../machine/question.ts'
import chooseRate from './statement.ts'

export default exercisesFor(chooseRate, [
  {
    id: 'heavier-rider',
    level: 2,
    metric: true,
    draw: { riderMass: [90, 100, 110] },
    fixed: { bike: 'middleweight-roadster' },
    question: (given) =>
      `With an 80 kg rider both fork legs together carry about 974 N along the fork. A rider of ${String(given.riderMass)} kg sits in the same place, with 46 % of their mass on the front wheel; the rake is 25°. What does the fork carry now?`,
    asks: 'forkLoad',
    wrong: [
      {
        idea: 'so much more rider, so much more on the fork',
        answer: (input) => (974 * input.riderMass) / 80,
      },
      {
        idea: 'all of the added mass is on the front',
        answer: (input) => 974 + (input.riderMass - 80) * 9.81 * Math.cos((25 * Math.PI) / 180),
      },
      { idea: 'the fork feels none of it, only the rear does', answer: () => 974 },
    ],
    because:
      'Only the front’s share of the added mass counts, and only its part along the fork: mass × 0.46 × 9.81 × cos 25°.',
  },
  {
    id: 'share-in-doubt',
    level: 3,
    draw: { riderMass: [60, 70, 80, 90, 100] },
    fixed: { bike: 'middleweight-roadster' },
    question: (given, write) =>
      `You do not know within five points, either way, how much of a ${write(given.riderMass, 'kg')} rider is on the front wheel. By how much is the load along the fork in doubt, in per cent, either way?`,
    asks: 'spread',
    wrong: [
      { idea: 'five points of share are five per cent of load', answer: () => 0.05 },
      { idea: 'a share of the rider says nothing about the fork', answer: () => 0.005 },
      { idea: 'ten points in all are ten per cent', answer: () => 0.1 },
    ],
    because:
      'Five points of the rider’s weight, along the fork, are compared with all that the fork carries: rider and bike. The rate that suits hardly moves by it, since the preload takes it up.',
  },
  {
    id: 'front-scale',
    level: 1,
    draw: { riderMass: [70, 80, 90, 100], riderShare: [40, 45, 50] },
    fixed: { bike: 'middleweight-roadster' },
    question: (given, write) =>
      `Alone, this bike has ${write(100, 'kg')} on its front scale. A rider of ${write(given.riderMass, 'kg')} sits with ${String(given.riderShare)} % on the front wheel. About what does the front scale read? (The bike settles a little forward or back; leave that out.)`,
    asks: 'front',
    wrong: [
      {
        idea: 'half of the rider goes to each wheel, and half of the bike again',
        answer: (input) => (100 + 0.7 * input.riderMass) * 9.80665,
      },
      { idea: 'the rider sits behind, so nothing is added in front', answer: () => 100 * 9.80665 },
      { idea: 'all of the rider', answer: (input) => (100 + input.riderMass) * 9.80665 },
    ],
    because: 'The front takes what it had and its share of the rider.',
  },
])
