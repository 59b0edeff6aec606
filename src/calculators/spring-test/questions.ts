import { exercisesFor } from '../../machine/question.ts'
import springTest from './statement.ts'

/** Length and force of a spring with close coils [mm, N]. */
const ROWS = [
  [290, 80],
  [280, 160],
  [270, 240],
  [260, 320],
  [250, 440],
  [240, 560],
  [230, 680],
]

export default exercisesFor(springTest, [
  {
    id: 'slope-of-two-readings',
    level: 1,
    draw: { lengthPlusMinus: [0.2, 0.5, 1], forcePlusMinus: [2, 5, 10] },
    fixed: {
      rows: [
        [300, 450],
        [250, 900],
      ],
      fit: 'line',
    },
    question: (given, write) =>
      `A press reads ${write(450, 'N')} at ${write(300, 'mm')} and ${write(900, 'N')} at ${write(250, 'mm')}, lengths within ±${write(given.lengthPlusMinus, 'mm')} and forces within ±${write(given.forcePlusMinus, 'N')}. What is the rate?`,
    asks: 'rate',
    wrong: [
      { idea: 'force over length', answer: () => (900 / 250) * 1000 },
      {
        idea: 'the last force over the difference of the lengths',
        answer: () => (900 / 50) * 1000,
      },
      { idea: 'the mean force over the difference', answer: () => (675 / 50) * 1000 },
    ],
    because: (write) =>
      `Rate is how much the force changes over a change of length. Difference over difference: ${write(450, 'N')} over ${write(50, 'mm')}. The ± of the readings widens the answer and does not move it.`,
  },
  {
    id: 'where-close-coils-touch',
    level: 2,
    draw: { freeLength: [300, 302, 304] },
    fixed: {
      rows: ROWS,
      fit: 'two',
    },
    question: (given, write) =>
      `A spring stands ${write(given.freeLength, 'mm')} free. Readings: ${ROWS.map(([length, force]) => `${write(force, 'N')} at ${write(length, 'mm')}`).join(', ')}. What is its rate once the close coils touch?`,
    asks: 'secondRate',
    wrong: [
      { idea: 'the rate at the start', answer: () => 8000 },
      {
        idea: 'the last force over the whole squeeze',
        answer: (input) => 680 / (input.freeLength - 0.23),
      },
      { idea: 'both rates added', answer: () => 20000 },
    ],
    because: (write) =>
      `The steps grow from ${write(80, 'N')} to ${write(120, 'N')} for each ${write(10, 'mm')}. From there on ${write(120, 'N')} over ${write(10, 'mm')} is the slope.`,
  },
])
