import { exercisesFor } from '../../machine/question.ts'
import wheelLoads from './statement.ts'

const G = 9.80665

export default exercisesFor(wheelLoads, [
  {
    id: 'front-with-rider',
    level: 3,
    draw: {
      bike: ['light-commuter', 'middleweight-roadster', 'loaded-tourer'],
      rider: [60, 75, 90, 105],
    },
    question: ({ bike, rider }, write) =>
      `A rider of ${write(rider, 'kg')} gets on the ${String(bike).replaceAll('-', ' ')} of the invented workshop. How much does the front wheel carry then?`,
    asks: 'frontLoad',
    wrong: [
      {
        idea: 'half of the rider goes to each wheel',
        answer: ({ bike, rider }) => (bike.mass * bike.frontShare + rider / 2) * G,
      },
      {
        idea: 'the rider sits on the rear wheel',
        answer: ({ bike }) => bike.mass * bike.frontShare * G,
      },
      {
        idea: 'all loads are shared as the bike’s own weight is',
        answer: ({ bike, rider }) => (bike.mass + rider) * bike.frontShare * G - 0.03 * rider * G,
      },
    ],
    because:
      'Take moments about the rear contact: the rider’s mass times how far ahead of the rear axle it sits, over the wheelbase, comes on top of the bike’s own front load.',
  },
  {
    id: 'share-two-up',
    level: 3,
    draw: { passenger: [50, 60, 70, 80], luggage: [0, 10, 15] },
    fixed: { bike: 'middleweight-roadster', rider: 80 },
    question: ({ passenger, luggage }, write) =>
      `The middleweight roadster carries its rider of ${write(80, 'kg')}, a passenger of ${write(passenger, 'kg')} and ${write(luggage, 'kg')} of luggage. What share of it all is on the front wheel?`,
    asks: 'frontShare',
    wrong: [
      { idea: 'the share is the bike’s own', answer: () => 0.5 },
      {
        idea: 'a passenger sits between the axles, so the share stays as with the rider',
        answer: () => 0.492,
      },
      {
        idea: 'the front keeps its load and nothing else counts',
        answer: ({ bike, rider, passenger, luggage }) =>
          100 / (bike.mass + rider + passenger + luggage),
      },
    ],
    because:
      'The passenger sits about a quarter of the wheelbase ahead of the rear axle, so about three quarters of that weight goes to the back.',
  },
])
