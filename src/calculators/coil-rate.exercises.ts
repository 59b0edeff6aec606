import coilRate from './coil-rate.ts'
import { exercisesFor } from './exercise.ts'
import { middle } from './interval.ts'

export default exercisesFor(coilRate, [
  {
    id: 'fewer-coils',
    draw: { totalCoils: [30, 32, 34, 36] },
    fixed: { wireDiameter: 4.5, outerDiameter: 27.5, freeLength: 350, deflection: 100, material: 'drawn', deadCoils: 2 },
    question: (given) =>
      `A spring of 40 coils, 2 of them dead, has 9.04 N/mm. The same wire and diameter with ${String(given.totalCoils)} coils, 2 of them dead: what rate?`,
    asks: 'rate',
    wrong: [
      { idea: 'fewer coils make it softer', answer: (input) => (9035.5 * (input.totalCoils - 2)) / 38 },
      { idea: 'the count changes nothing', answer: () => 9035.5 },
      { idea: 'the rate goes with the square of the count', answer: (input) => 9035.5 * (38 / (input.totalCoils - 2)) ** 2 },
    ],
    because: 'The squeeze is shared by the coils that work. Fewer share it, so each takes more, and the rate is higher by the ratio of the counts.',
  },
  {
    id: 'room-before-the-coils-touch',
    draw: { freeLength: [330, 340, 350], deflection: [120, 130, 135], totalCoils: [38, 40] },
    fixed: { wireDiameter: 4.5, outerDiameter: 27.5, ends: 'closedGround', deadCoils: 2 },
    question: (given) =>
      `A spring is ${String(given.freeLength)} mm long, of 4.5 mm wire in ${String(given.totalCoils)} coils, ends closed and ground. Preload and travel squeeze it by ${String(given.deflection)} mm. How much is left before its coils touch?`,
    asks: 'margin',
    wrong: [
      {
        idea: 'only the working coils take up length',
        answer: (input) => input.freeLength - (input.totalCoils - input.deadCoils) * input.wireDiameter - input.deflection,
      },
      { idea: 'what the coils leave free, whatever is squeezed', answer: (input) => input.freeLength - input.totalCoils * input.wireDiameter },
      { idea: 'the squeeze comes twice, for two legs', answer: (input, output) => (middle(output.margin) ?? 0) - input.deflection },
    ],
    because: 'Solid, every coil lies on the next: count times wire. Free length less that is all there is to squeeze; take off what the bike uses.',
  },
  {
    id: 'what-the-calliper-leaves',
    draw: { wireDiameter: [4, 4.5, 5], wirePlusMinus: [0.02, 0.05, 0.1] },
    fixed: { outerDiameter: 30 },
    question: (given) =>
      `You read ${String(given.wireDiameter)} mm of wire to ±${String(given.wirePlusMinus)} mm. To how many per cent is the rate known, from the wire alone and the mean coil held?`,
    asks: 'wireShare',
    wrong: [
      { idea: 'the same share as the wire', answer: (_input, output) => Number(output.wireShare) / 4 },
      { idea: 'the rate goes with the square of the wire', answer: (_input, output) => Number(output.wireShare) / 2 },
      { idea: 'the rate goes with the cube of the wire', answer: (_input, output) => (Number(output.wireShare) * 3) / 4 },
    ],
    because: 'The rate goes with the fourth power of the wire, so a small share of the wire counts four times.',
  },
])
