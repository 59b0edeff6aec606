import { exercisesFor } from '../../machine/question.ts'
import findChange from './statement.ts'

export default exercisesFor(findChange, [
  {
    id: 'preload-to-the-mark',
    level: 3,
    metric: true,
    draw: { frontRiderHigh: [24, 26, 28, 30] },
    fixed: {
      rider: 80,
      frontRiderLow: 15,
      rearRiderLow: 0,
      rearRiderHigh: 120,
      trailWithin: 20,
      allowed: 'adjusters',
    },
    question: ({ frontRiderHigh }) =>
      `The roadster’s front stands 35.2 mm deep with a rider of 80 kg. It is to stand no deeper than ${String(frontRiderHigh)} mm, by preload in both legs alone. How much preload does that take, to the half millimetre?`,
    asks: 'forkPreloadChange',
    wrong: [
      {
        idea: 'two legs share it, so half is enough',
        answer: ({ frontRiderHigh }) => (0.0352 - frontRiderHigh) / 2,
      },
      {
        idea: 'the lean of the fork doubles it',
        answer: ({ frontRiderHigh }) => 2 * (0.0352 - frontRiderHigh),
      },
      {
        idea: 'preload stiffens the spring, so a third is enough',
        answer: ({ frontRiderHigh }) => (0.0352 - frontRiderHigh) / 3,
      },
    ],
    because:
      'Preload lifts the bike by what is wound in, less the tenth that the gas takes. The step that is just enough is the answer.',
  },
  {
    id: 'collar-to-the-mark',
    level: 2,
    metric: true,
    draw: { rearRiderHigh: [24, 26, 28, 30, 32] },
    fixed: {
      rider: 80,
      frontRiderLow: 0,
      frontRiderHigh: 120,
      rearRiderLow: 10,
      trailWithin: 20,
      allowed: 'adjusters',
    },
    question: ({ rearRiderHigh }) =>
      `The roadster’s rear stands 38 mm deep with a rider of 80 kg. It is to stand no deeper than ${String(rearRiderHigh)} mm. How far is the collar wound in, with 0.4348 mm at the shock for each millimetre at the wheel?`,
    asks: 'rearPreloadChange',
    wrong: [
      {
        idea: 'a millimetre of collar is a millimetre of sag',
        answer: ({ rearRiderHigh }) => 0.038 - rearRiderHigh,
      },
      {
        idea: 'divided by the motion ratio instead of multiplied',
        answer: ({ rearRiderHigh }) => (0.038 - rearRiderHigh) / 0.4348,
      },
      {
        idea: 'the ratio counts twice, as it does for the rate',
        answer: ({ rearRiderHigh }) => (0.038 - rearRiderHigh) * 0.4348 ** 2,
      },
    ],
    because:
      'Preload is set at the shock, sag is read at the wheel: the millimetres at the wheel times the motion ratio, up to the next half millimetre.',
  },
  {
    id: 'tubes-to-the-height',
    level: 2,
    metric: true,
    draw: { frontHeightHigh: [-6, -7, -8, -9] },
    fixed: {
      rider: 80,
      frontRiderLow: 34,
      frontRiderHigh: 36,
      rearRiderLow: 0,
      rearRiderHigh: 120,
      trailWithin: 20,
      allowed: 'tubes',
    },
    question: ({ frontHeightHigh }) =>
      `The roadster’s sags are right with a rider of 80 kg, and it turns in slowly. Its front is to come down by ${String(-Number(frontHeightHigh))} mm over the axle, with preload left alone. The fork leans by 25°. How far are the tubes raised in the yokes, to the half millimetre that is enough?`,
    asks: 'tubeRaise',
    wrong: [
      {
        idea: 'the frame comes down by what the tubes go up',
        answer: ({ frontHeightHigh }) => -frontHeightHigh!,
      },
      {
        idea: 'multiplied by the cosine of the lean instead of divided',
        answer: ({ frontHeightHigh }) => -0.906 * frontHeightHigh!,
      },
      {
        idea: 'each tube does half',
        answer: ({ frontHeightHigh }) => -frontHeightHigh! / 2,
      },
    ],
    because:
      'The tubes slide along the lean of the fork, so the frame comes down by the cosine of that lean: nine tenths of what the tubes go up. Springs and their loads stay, and so do the sags.',
  },
  {
    id: 'shock-length-to-the-height',
    level: 3,
    metric: true,
    draw: { rearHeightLow: [6, 8, 10, 12] },
    fixed: {
      rider: 80,
      frontRiderLow: 0,
      frontRiderHigh: 120,
      rearRiderLow: 37,
      rearRiderHigh: 39,
      trailWithin: 20,
      allowed: 'parts',
    },
    question: ({ rearHeightLow }) =>
      `The roadster’s rear sags 38 mm with a rider of 80 kg, and keeps that. It is to stand ${String(rearHeightLow)} mm higher over the axle. How much longer is the shock made, to the whole millimetre that is enough, with 0.4348 mm at the shock for each millimetre at the wheel?`,
    asks: 'shockLengthChange',
    wrong: [
      {
        idea: 'a millimetre of shock is a millimetre of height',
        answer: ({ rearHeightLow }) => rearHeightLow!,
      },
      {
        idea: 'divided by the motion ratio instead of multiplied',
        answer: ({ rearHeightLow }) => rearHeightLow! / 0.4348,
      },
      {
        idea: 'the ratio counts twice, as it does for the rate',
        answer: ({ rearHeightLow }) => rearHeightLow! * 0.4348 ** 2,
      },
    ],
    because:
      'A longer shock swings the arm down with the spring as it was, so the sag stays and the height grows. The millimetres at the wheel times the motion ratio give the length, up to the next whole one.',
  },
])
