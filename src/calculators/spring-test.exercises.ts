import { exercisesFor } from './exercise.ts'
import springTest from './spring-test.ts'

export default exercisesFor(springTest, [
  {
    id: 'slope-of-two-readings',
    draw: { lengthPlusMinus: [0.2, 0.5, 1], forcePlusMinus: [2, 5, 10] },
    fixed: {
      rows: [
        [300, 450],
        [250, 900],
      ],
      fit: 'line',
    },
    question: (given) =>
      `A press reads 450 N at 300 mm and 900 N at 250 mm, lengths within ±${String(given.lengthPlusMinus)} mm and forces within ±${String(given.forcePlusMinus)} N. What is the rate?`,
    asks: 'rate',
    wrong: [
      { idea: 'force over length', answer: () => (900 / 250) * 1000 },
      { idea: 'the last force over the difference of the lengths', answer: () => (900 / 50) * 1000 },
      { idea: 'the mean force over the difference', answer: () => (675 / 50) * 1000 },
    ],
    because:
      'Rate is how much the force changes for each millimetre. Difference over difference: 450 N over 50 mm. The ± of the readings widens the answer and does not move it.',
  },
  {
    id: 'where-close-coils-touch',
    draw: { freeLength: [300, 302, 304] },
    fixed: {
      rows: [
        [290, 80],
        [280, 160],
        [270, 240],
        [260, 320],
        [250, 440],
        [240, 560],
        [230, 680],
      ],
      fit: 'two',
    },
    question: (given) =>
      `A spring stands ${String(given.freeLength)} mm free. Readings: 80 N at 290 mm, 160 at 280, 240 at 270, 320 at 260, 440 at 250, 560 at 240 and 680 at 230. What is its rate once the close coils touch?`,
    asks: 'secondRate',
    wrong: [
      { idea: 'the rate at the start', answer: () => 8000 },
      { idea: 'the last force over the whole squeeze', answer: (input) => 680 / (input.freeLength - 0.23) },
      { idea: 'both rates added', answer: () => 20000 },
    ],
    because: 'The steps grow from 80 N to 120 N for each 10 mm. From there on 120 N over 10 mm is the slope.',
  },
])
