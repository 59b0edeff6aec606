import cgHeight from './statement.ts'
import { exercisesFor } from '../../machine/question.ts'
import { middle } from '../../units/interval.ts'

const G = 9.80665

export default exercisesFor(cgHeight, [
  {
    id: 'height-from-two-weighings',
    level: 2,
    draw: { otherWheelRaised: [104.5, 105, 105.5, 106, 106.5], lift: [300, 320] },
    fixed: {
      frontLevel: 100,
      rearLevel: 100,
      frontRadius: 300,
      rearRadius: 300,
      wheelbase: 1450,
      scalePlusMinus: 0,
      lengthPlusMinus: 0,
    },
    question: ({ otherWheelRaised, lift }, write) =>
      `A bike weighs ${write(100, 'kg')} on each wheel, level, on a wheelbase of ${write(1450, 'mm')} with ${write(300, 'mm')} tyres. With its rear axle raised by ${write(lift, 'mm')} the front wheel carries ${write(otherWheelRaised, 'kg')}. How high is the centre of gravity?`,
    asks: 'height',
    wrong: [
      {
        idea: 'the height is counted from the axles',
        answer: (_input, output) => (middle(output.height) ?? 0) - 0.3,
      },
      {
        idea: 'the load that moved, over the total, times the wheelbase',
        answer: ({ otherWheelRaised, frontLevel, rearLevel, wheelbase }) =>
          ((otherWheelRaised - frontLevel) / (frontLevel + rearLevel)) * wheelbase,
      },
      {
        idea: 'the lift counts twice',
        answer: (_input, output) => 0.3 + ((middle(output.height) ?? 0) - 0.3) / 2,
      },
    ],
    because:
      'Moments about the axle that stays down, level and raised, give the height above that axle. The tyre’s radius comes on top.',
  },
  {
    id: 'how-sure',
    level: 3,
    metric: true,
    draw: { lift: [200, 250, 300, 320, 350] },
    fixed: { frontLevel: 100, rearLevel: 100, frontRadius: 300, rearRadius: 300, wheelbase: 1450 },
    question: ({ lift }, write) =>
      `On a ${write(200, 'kg')} bike with ${write(1450, 'mm')} of wheelbase the rear axle is raised by ${write(lift, 'mm')}. The scale under the front wheel shows half a kilogram too much. By how much is the height too large?`,
    asks: 'perHalfKilogram',
    wrong: [
      {
        idea: 'half a kilogram of 200 is a quarter of a per cent of the height',
        answer: () => 0.00125,
      },
      {
        idea: 'raising it further makes it worse in proportion',
        answer: ({ lift }) => (0.013 * lift) / 0.4 + 0.004,
      },
      {
        idea: 'the error is half a kilogram over the wheel’s load, times the wheelbase',
        answer: ({ frontLevel, wheelbase }) => ((0.5 * G) / frontLevel) * wheelbase,
      },
    ],
    because:
      'The height hangs on the few kilograms that moved. Half a kilogram is a large part of those: the error is about the wheelbase × 0.5/200 over the turn’s sine.',
  },
])
