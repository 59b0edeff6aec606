import { exercisesFor } from './exercise.ts'
import oilViscosity from './oil-viscosity.ts'

export default exercisesFor(oilViscosity, [
  {
    id: 'half-and-half',
    draw: { at40: [32, 34, 36], otherAt40: [15, 16, 17] },
    fixed: { known: 'at100', share: 50, at100: 5.9, otherAt100: 3.8 },
    question: (given) =>
      `You mix equal volumes of two oils with ${String(given.at40)} and ${String(given.otherAt40)} mm²/s at 40 °C. About what does the mix have at 40 °C?`,
    asks: 'mixAt40',
    wrong: [
      { idea: 'half and half is the mean', answer: (input) => (input.at40 + input.otherAt40) / 2 },
      { idea: 'the thicker oil decides', answer: (input) => input.at40 },
      { idea: 'the thinner oil decides', answer: (input) => input.otherAt40 },
    ],
    because: 'Mixing averages on the double-log scale, which lies below the plain mean: the thin oil counts for more than its share.',
  },
  {
    id: 'cold-start',
    draw: { at40: [30, 32, 34, 36], cold: [0, 5, 10] },
    fixed: { known: 'at100', at100: 5.6, share: 0, warm: 40 },
    question: (given) =>
      `An oil has ${String(given.at40)} mm²/s at 40 °C and 5.6 at 100 °C. How many times as thick is it at ${String(given.cold)} °C as at 40 °C?`,
    asks: 'coldRatio',
    wrong: [
      { idea: 'viscosity goes with temperature in degrees Celsius', answer: (input) => 40 / Math.max(1, (input.cold - 273.15) * 1.6 + 20) },
      {
        idea: 'what it loses from 40 to 100 °C it gains in the same measure per degree',
        answer: (input) => 1 + ((input.at40 - 5.6e-6) / 60 / input.at40) * (313.15 - input.cold),
      },
      { idea: 'a fork oil keeps its weight whatever the temperature', answer: () => 1 },
    ],
    because: 'Viscosity multiplies as temperature falls. Thirty degrees below 40 °C makes such an oil about five times as thick.',
  },
  {
    id: 'index-of-an-oil',
    draw: { at40: [15, 20, 25, 30], at100: [4.5, 5, 5.5] },
    fixed: { known: 'at100', share: 0 },
    question: (given) => `What viscosity index has an oil of ${String(given.at40)} mm²/s at 40 °C and ${String(given.at100)} at 100 °C?`,
    asks: 'index',
    wrong: [
      { idea: 'it is the ratio of the two, times ten', answer: (input) => (input.at40 / input.at100) * 10 },
      { idea: 'it is the viscosity lost, in per cent', answer: (input) => (1 - input.at100 / input.at40) * 100 },
      { idea: 'it is the weight on the bottle, times ten', answer: (input) => Math.round(input.at100 * 1e6) * 25 },
    ],
    because: 'The index compares the oil with two reference oils of the same viscosity at 100 °C, from a table. A higher index thins less.',
  },
])
