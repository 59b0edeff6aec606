import { exercisesFor } from '../../machine/question.ts'
import oilHeight from './statement.ts'

export default exercisesFor(oilHeight, [
  {
    id: 'oil-left-behind',
    level: 2,
    metric: true,
    draw: { oilAdded: [10, 15, 20, 25, 30] },
    fixed: { bike: 'middleweight-roadster', airHeight: 130 },
    question: (given) =>
      `You set the oil in one leg by volume, but ${String(given.oilAdded)} cm³ of old oil were still in it. By volume the height should be 130 mm; the bore is 38 mm. What height do you have?`,
    asks: 'effective',
    wrong: [
      { idea: 'the right volume gives the right height', answer: () => 0.13 },
      {
        idea: 'a cubic centimetre is a millimetre',
        answer: (input) => 0.13 - input.oilAdded * 1e3,
      },
      {
        idea: 'more oil means a larger number',
        answer: (_input, output) => 0.26 - Number(output.effective),
      },
    ],
    because:
      'The level rises by volume divided by the area of the bore, 11.34 cm² here. The height is the air above it, so it falls.',
  },
  {
    id: 'air-left',
    level: 2,
    metric: true,
    draw: { airHeight: [90, 100, 110, 120, 130, 140] },
    fixed: { bike: 'middleweight-roadster', oilAdded: 0, temperature: 20 },
    question: (given) =>
      `Oil height ${String(given.airHeight)} mm, collapsed and spring out. The bore is 38 mm; spring, spacer and cap take up 56 cm³. How much air is left in the leg at full travel?`,
    asks: 'airFull',
    wrong: [
      {
        idea: 'the height times the bore’s area is all air',
        answer: (_input, output) => Number(output.airFull) + 56e-6,
      },
      {
        idea: 'the spring stands in the oil and takes nothing from the air',
        answer: (_input, output) => Number(output.airFull) + 28e-6,
      },
      {
        idea: 'the 43 mm of the tube’s outside count',
        answer: (input) => input.airHeight * Math.PI * 0.0215 ** 2 - 56e-6,
      },
    ],
    because:
      'Collapsed is full travel. The air is the bore’s area times the height, less the metal that goes in after you read it.',
  },
  {
    id: 'lock',
    level: 3,
    metric: true,
    draw: { airHeight: [60, 70, 80, 90, 100] },
    fixed: { bike: 'middleweight-roadster', oilAdded: 0, temperature: 20 },
    question: (given) =>
      `With ${String(given.airHeight)} mm of oil height in a bore of 38 mm and 56 cm³ of metal in it, how much further than full travel could a 43 mm tube go before the oil locks it?`,
    asks: 'lockMargin',
    wrong: [
      { idea: 'the whole oil height is left', answer: (input) => input.airHeight },
      {
        idea: 'the spring’s metal takes no room',
        answer: (input) => (input.airHeight * 0.038 ** 2) / 0.043 ** 2,
      },
      {
        idea: 'bore and tube sweep the same area',
        answer: (_input, output) => (Number(output.lockMargin) * 0.043 ** 2) / 0.038 ** 2,
      },
    ],
    because:
      'Divide the air left at full travel by the area that the tube sweeps, which is that of its outside, 14.52 cm².',
  },
])
