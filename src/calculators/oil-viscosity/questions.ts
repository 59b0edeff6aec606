import { exercisesFor } from '../../machine/question.ts'
import oilViscosity from './statement.ts'

export default exercisesFor(oilViscosity, [
  {
    id: 'half-and-half',
    level: 3,
    draw: { at40: [32, 34, 36], otherAt40: [15, 16, 17] },
    fixed: { known: 'at100', share: 50, at100: 5.9, otherAt100: 3.8 },
    question: (given, write) =>
      `You mix equal volumes of two oils with ${String(given.at40)} and ${String(given.otherAt40)} mm²/s at ${write(40, '°C')}. About what does the mix have at ${write(40, '°C')}?`,
    asks: 'mixAt40',
    wrong: [
      { idea: 'half and half is the mean', answer: (input) => (input.at40 + input.otherAt40) / 2 },
      { idea: 'the thicker oil decides', answer: (input) => input.at40 },
      { idea: 'the thinner oil decides', answer: (input) => input.otherAt40 },
    ],
    because:
      'Mixing averages on the double-log scale, which lies below the plain mean: the thin oil counts for more than its share.',
  },
  {
    id: 'cold-start',
    level: 3,
    draw: { at40: [30, 32, 34, 36], cold: [0, 5, 10] },
    fixed: { known: 'at100', at100: 5.6, share: 0, warm: 40 },
    question: (given, write) =>
      `An oil has ${String(given.at40)} mm²/s at ${write(40, '°C')} and 5.6 at ${write(100, '°C')}. How many times as thick is it at ${write(given.cold, '°C')} as at ${write(40, '°C')}?`,
    asks: 'coldRatio',
    wrong: [
      {
        idea: 'viscosity goes with temperature in degrees Celsius',
        answer: (input) => 40 / Math.max(1, (input.cold - 273.15) * 1.6 + 20),
      },
      {
        idea: 'it thickens in the cold by as much per degree as it thins when warm',
        answer: (input) => 1 + ((input.at40 - 5.6e-6) / 60 / input.at40) * (313.15 - input.cold),
      },
      { idea: 'a fork oil keeps its weight whatever the temperature', answer: () => 1 },
    ],
    because: (write) =>
      `Viscosity multiplies as temperature falls. At ${write(10, '°C')} such an oil is about five times as thick as at ${write(40, '°C')}.`,
  },
  {
    id: 'index-of-an-oil',
    level: 3,
    draw: { at40: [15, 20, 25, 30], at100: [4.5, 5, 5.5] },
    fixed: { known: 'at100', share: 0 },
    question: (given, write) =>
      `What viscosity index has an oil of ${String(given.at40)} mm²/s at ${write(40, '°C')} and ${String(given.at100)} at ${write(100, '°C')}?`,
    asks: 'index',
    wrong: [
      {
        idea: 'it is the ratio of the two, times ten',
        answer: (input) => (input.at40 / input.at100) * 10,
      },
      {
        idea: 'it is the viscosity lost, in per cent',
        answer: (input) => (1 - input.at100 / input.at40) * 100,
      },
      {
        idea: 'it is the weight on the bottle, times ten',
        answer: (input) => Math.round(input.at100 * 1e6) * 25,
      },
    ],
    because: (write) =>
      `The index compares the oil with two reference oils of the same viscosity at ${write(100, '°C')}, from a table. A higher index thins less.`,
  },
])
