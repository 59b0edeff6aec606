import { exercisesFor } from '../../machine/question.ts'
import steeringModes from './statement.ts'

export default exercisesFor(steeringModes, [
  {
    id: 'moment-from-trail',
    level: 2,
    draw: { trail: [40, 60, 80, 100, 120], sideForce: [20, 40, 60] },
    question: (given, write) =>
      `A bicycle has ${write(given.trail, 'mm')} of trail and a steering axis 18° from the vertical. Its front tyre is pushed sideways with ${write(given.sideForce, 'N')}. What moment turns the front about its axis?`,
    asks: 'moment',
    wrong: [
      {
        idea: 'force times trail, the tilt does not count',
        answer: (input) => input.sideForce * input.trail,
      },
      {
        idea: 'the sine of the tilt, not its cosine',
        answer: (_input, output) => Number(output.moment) * Math.tan(Math.PI / 10),
      },
      { idea: 'the wheel’s radius is the lever', answer: (input) => input.sideForce * 0.35 },
    ],
    because:
      'The lever is the distance from the contact to the axis at right angles, which is the ground trail times the cosine of the tilt.',
  },
  {
    id: 'flop-from-trail',
    level: 2,
    draw: { trail: [40, 60, 80, 100, 120] },
    question: (given, write) =>
      `Trail ${write(given.trail, 'mm')}, steering axis 18° from the vertical. What is the wheel flop?`,
    asks: 'flop',
    wrong: [
      { idea: 'flop is trail by another name', answer: (input) => input.trail },
      { idea: 'only the sine counts', answer: (input) => input.trail * Math.sin(Math.PI / 10) },
      { idea: 'only the cosine counts', answer: (input) => input.trail * Math.cos(Math.PI / 10) },
    ],
    because:
      'Flop is trail times the sine and the cosine of the tilt: with an upright axis, or without trail, the front would not sink as it turns.',
  },
  {
    id: 'weave-and-trail',
    level: 3,
    draw: { trail: [20, 30, 40, 50, 60] },
    question: (given, write) =>
      `The published bicycle with ${write(80, 'mm')} of trail stops weaving by itself from ${write(15.5, 'km/h')}. With ${write(given.trail, 'mm')}, all else the same, from which speed?`,
    asks: 'weaveEnds',
    wrong: [
      {
        idea: 'less trail is less steady, so later',
        answer: (_input, output) => 8.5848 - Number(output.weaveEnds),
      },
      { idea: 'trail does not matter to it', answer: () => 4.2924 },
      { idea: 'half the trail, half the speed', answer: (input) => (4.2924 * input.trail) / 0.08 },
    ],
    because:
      'On this bicycle less trail lets the weave die out sooner, and the slow fall grow sooner. “More trail, always steadier” is wrong even here.',
  },
])
