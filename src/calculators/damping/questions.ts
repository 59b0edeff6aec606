import { exercisesFor } from '../../machine/question.ts'
import damping from './statement.ts'

export default exercisesFor(damping, [
  {
    id: 'damping-ratio',
    level: 2,
    metric: true,
    draw: {
      compression: [600, 800, 1000],
      rebound: [1200, 1400, 1600],
      sprungMass: [100, 112, 125],
    },
    fixed: { wheelRate: 22, law: 'linear' },
    question: (given) =>
      `${String(given.sprungMass)} kg rest on 22 N/mm at the wheel. Compression damps ${String(given.compression)} N·s/m, rebound ${String(given.rebound)}. What is the mean damping ratio? (The square root of 22,000 × ${String(given.sprungMass)} helps.)`,
    asks: 'ratio',
    wrong: [
      {
        idea: 'damping over the square root alone, without the two',
        answer: (_input, output) => 2 * Number(output.ratio),
      },
      { idea: 'only rebound counts', answer: (_input, output) => Number(output.ratioRebound) },
      {
        idea: 'both ways add up',
        answer: (_input, output) =>
          Number(output.ratioCompression) + Number(output.ratioRebound) + 0.001,
      },
    ],
    because:
      'Critical damping is twice the root of rate times mass. The ratio is the damping you have, the mean of both ways, over that.',
  },
  {
    id: 'travel-at-rest',
    level: 1,
    metric: true,
    draw: { compression: [500, 1500, 3000], rebound: [2500, 4000], sag: [34, 36, 38, 40] },
    fixed: { road: 'step' },
    question: (given) =>
      `A bike rests at ${String(given.sag)} mm of travel with hardly any damping. You set ${String(given.compression)} N·s/m of compression and ${String(given.rebound)} of rebound. How much travel does it use standing still?`,
    asks: 'rest',
    wrong: [
      { idea: 'compression damping holds the bike up', answer: (input) => input.sag * 0.8 },
      { idea: 'rebound damping pulls the bike down', answer: (input) => input.sag * 1.15 },
      { idea: 'stiff damping stops it at half its travel', answer: (input) => input.travel / 2 },
    ],
    because:
      'A damper’s force goes with speed. Standing still there is none, so the spring alone decides where the bike sits.',
  },
  {
    id: 'force-share',
    level: 1,
    metric: true,
    draw: { compression: [400, 600, 800], rebound: [1200, 1600] },
    fixed: { sprungMass: 112, wheelRate: 22 },
    question: (given) =>
      `Critical damping here is 3,139 N·s/m. What is the damping ratio on rebound, at ${String(given.rebound)} N·s/m, with compression at ${String(given.compression)}?`,
    asks: 'ratioRebound',
    wrong: [
      { idea: 'the mean of both ways', answer: (_input, output) => Number(output.ratio) },
      { idea: 'rebound over compression', answer: (input) => input.rebound / input.compression },
      {
        idea: 'rebound less compression',
        answer: (_input, output) => Number(output.ratioRebound) - Number(output.ratioCompression),
      },
    ],
    because:
      'Each way has its own ratio: its damping over the critical one. Their mean decides how the body swings, each alone how that stroke feels.',
  },
])
