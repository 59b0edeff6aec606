import { exercisesFor } from '../../machine/question.ts'
import { middle } from '../../units/interval.ts'
import trail from './statement.ts'

export default exercisesFor(trail, [
  {
    id: 'trail-from-three',
    level: 2,
    draw: {
      rake: [24, 24.5, 25, 25.5, 26],
      forkOffset: [30, 35, 40],
      frontRadius: [296, 300, 304],
    },
    fixed: { rakePlusMinus: 0, offsetPlusMinus: 0, radiusPlusMinus: 0 },
    question: ({ rake, forkOffset, frontRadius }, write) =>
      `Rake ${String(rake)}°, axle ${write(forkOffset, 'mm')} ahead of the steering axis, tyre radius ${write(frontRadius, 'mm')}. How long is the trail along the ground?`,
    asks: 'trail',
    wrong: [
      {
        idea: 'the offset adds to the trail',
        answer: ({ frontRadius, rake, forkOffset }) =>
          frontRadius * Math.tan(rake) + forkOffset / Math.cos(rake),
      },
      {
        idea: 'the offset does not count',
        answer: ({ frontRadius, rake }) => frontRadius * Math.tan(rake),
      },
      {
        idea: 'normal trail is trail',
        answer: (_input, output) => middle(output.normalTrail) ?? 0,
      },
    ],
    because:
      'Drop the axis to the ground: it runs ahead by radius × tan rake. The offset takes back its own length ÷ cos rake.',
  },
  {
    id: 'one-degree',
    level: 3,
    draw: { rake: [24, 25, 26], forkOffset: [30, 35, 40] },
    fixed: { rakePlusMinus: 0, offsetPlusMinus: 0, radiusPlusMinus: 0, frontRadius: 300 },
    question: ({ rake, forkOffset }, write) =>
      `A bike has a rake of ${String(rake)}°, an offset of ${write(forkOffset, 'mm')} and a tyre radius of ${write(300, 'mm')}. About how much does trail grow for one degree more rake?`,
    asks: 'perDegree',
    wrong: [
      {
        idea: 'a degree is one per cent of the trail',
        answer: (_input, output) => (middle(output.trail) ?? 0) / 100,
      },
      {
        idea: 'trail grows in proportion to rake',
        answer: ({ rake }, output) => ((middle(output.trail) ?? 0) / rake) * (Math.PI / 180),
      },
      {
        idea: 'trail and rake are the same thing, so a degree is a millimetre',
        answer: () => 1e-3,
      },
    ],
    because: (write) =>
      `The slope is radius + trail × tan rake for each radian, and a degree is 0.01745 rad. That is about ${write(6, 'mm')}.`,
  },
  {
    id: 'yokes-of-more-offset',
    level: 2,
    draw: { rake: [24, 25, 26], forkOffset: [33, 35, 38] },
    fixed: { rakePlusMinus: 0, offsetPlusMinus: 0, radiusPlusMinus: 0, frontRadius: 300 },
    question: ({ rake, forkOffset }, write) =>
      `Yokes are changed so that the axle stands ${write(forkOffset, 'mm')} ahead of the axis in place of ${write(30, 'mm')}. Rake ${String(rake)}°, radius ${write(300, 'mm')}. What is the trail now?`,
    asks: 'trail',
    wrong: [
      {
        idea: 'more offset lengthens the trail',
        answer: ({ rake, forkOffset, frontRadius }) =>
          (frontRadius * Math.sin(rake) - 0.03 + (forkOffset - 0.03)) / Math.cos(rake),
      },
      {
        idea: 'the rake is the same, so the trail is the same',
        answer: ({ rake, frontRadius }) => (frontRadius * Math.sin(rake) - 0.03) / Math.cos(rake),
      },
      {
        idea: 'offset counts twice, once for each yoke',
        answer: ({ rake, forkOffset, frontRadius }) =>
          (frontRadius * Math.sin(rake) - forkOffset * 2) / Math.cos(rake),
      },
    ],
    because:
      'More offset puts the axle, and the contact under it, nearer to where the axis meets the road. Trail gets shorter.',
  },
])
