import coilRate from './statement.ts'
import { exercisesFor } from '../../machine/question.ts'
import { middle } from '../../units/interval.ts'

export default exercisesFor(coilRate, [
  {
    id: 'fewer-coils',
    level: 1,
    draw: { totalCoils: [30, 32, 34, 36] },
    fixed: {
      wireDiameter: 4.5,
      outerDiameter: 27.5,
      freeLength: 350,
      deflection: 100,
      material: 'drawn',
      deadCoils: 2,
    },
    question: (given, write) =>
      `A spring of 40 coils, 2 of them dead, has ${write(9.04, 'N/mm')}. The same wire and diameter with ${String(given.totalCoils)} coils, 2 of them dead: what rate?`,
    asks: 'rate',
    wrong: [
      {
        idea: 'fewer coils make it softer',
        answer: (input) => (9035.5 * (input.totalCoils - 2)) / 38,
      },
      { idea: 'the count changes nothing', answer: () => 9035.5 },
      {
        idea: 'the rate goes with the square of the count',
        answer: (input) => 9035.5 * (38 / (input.totalCoils - 2)) ** 2,
      },
    ],
    because:
      'The squeeze is shared by the coils that work. Fewer share it, so each takes more, and the rate is higher by the ratio of the counts.',
  },
  {
    id: 'room-before-the-coils-touch',
    level: 1,
    draw: { freeLength: [330, 340, 350], deflection: [120, 130, 135], totalCoils: [38, 40] },
    fixed: { wireDiameter: 4.5, outerDiameter: 27.5, ends: 'closedGround', deadCoils: 2 },
    question: (given, write) =>
      `A spring is ${write(given.freeLength, 'mm')} long, of ${write(4.5, 'mm')} wire in ${String(given.totalCoils)} coils, ends closed and ground. Preload and travel squeeze it by ${write(given.deflection, 'mm')}. How much is left before its coils touch?`,
    asks: 'margin',
    wrong: [
      {
        idea: 'only the working coils take up length',
        answer: (input) =>
          input.freeLength -
          (input.totalCoils - input.deadCoils) * input.wireDiameter -
          input.deflection,
      },
      {
        idea: 'what the coils leave free, whatever is squeezed',
        answer: (input) => input.freeLength - input.totalCoils * input.wireDiameter,
      },
      {
        idea: 'the squeeze comes twice, for two legs',
        answer: (input, output) => (middle(output.margin) ?? 0) - input.deflection,
      },
    ],
    because:
      'Solid, every coil lies on the next: count times wire. Free length less that is all there is to squeeze; take off what the bike uses.',
  },
  {
    id: 'what-the-calliper-leaves',
    level: 2,
    draw: { wireDiameter: [4, 4.5, 5], wirePlusMinus: [0.02, 0.05, 0.1] },
    fixed: { outerDiameter: 30 },
    question: (given, write) =>
      `You read ${write(given.wireDiameter, 'mm')} of wire to ±${write(given.wirePlusMinus, 'mm')}. To how many per cent is the rate known, from the wire alone? The outside diameter of the coils, ${write(30, 'mm')}, is as you read it.`,
    asks: 'wireShare',
    wrong: [
      {
        idea: 'the same share as the wire',
        answer: ({ wirePlusMinus, wireDiameter }) => wirePlusMinus / wireDiameter,
      },
      {
        idea: 'the rate goes with the square of the wire',
        answer: ({ wirePlusMinus, wireDiameter }) => (2 * wirePlusMinus) / wireDiameter,
      },
      {
        idea: 'the fourth power alone, as if the mean coil stayed',
        answer: ({ wirePlusMinus, wireDiameter }) => (4 * wirePlusMinus) / wireDiameter,
      },
    ],
    because:
      'The rate goes with the fourth power of the wire, so a small share of the wire counts four times. Thicker wire in the same outside also makes a smaller mean coil, which counts as about half a power more.',
  },
])
