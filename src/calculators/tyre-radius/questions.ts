import { exercisesFor } from '../../machine/question.ts'
import { middle } from '../../units/interval.ts'
import tyreRadius from './statement.ts'

const parts = (marking: string): [number, number] => {
  const [, width = '0', aspect = '0'] = /^(\d+)\/(\d+)/.exec(marking) ?? []
  return [Number(width) * 1e-3, Number(aspect) / 100]
}

export default exercisesFor(tyreRadius, [
  {
    id: 'radius-from-marking',
    level: 1,
    metric: true,
    draw: {
      marking: ['110/70-17', '120/60-17', '120/70-17', '130/70-17', '160/60-17', '180/55-17'],
    },
    fixed: { radiusPlusMinus: 0 },
    question: ({ marking }) =>
      `A sidewall says ${String(marking)}. The nominal rim diameter of code 17 is 432 mm. What is the tyre’s free radius?`,
    asks: 'radius',
    wrong: [
      {
        idea: 'the second figure is the height in millimetres',
        answer: ({ marking }) => 0.216 + parts(marking)[1] * 0.1,
      },
      { idea: 'the width is the height', answer: ({ marking }) => 0.216 + parts(marking)[0] },
      {
        idea: 'the section counts once, so half of it is added to the radius',
        answer: ({ marking }) => 0.216 + (parts(marking)[0] * parts(marking)[1]) / 2,
      },
    ],
    because:
      'The second figure is the section’s height as a share of its width. One height lies between rim and ground, so the radius is half the rim plus one height.',
  },
  {
    id: 'another-size-and-trail',
    level: 3,
    draw: { marking: ['110/80-17', '120/60-17', '130/70-17'] },
    fixed: { fitted: '120/70-17', end: 'front', bike: 'middleweight-roadster' },
    question: ({ marking }, write) =>
      `The roadster’s front tyre, 120/70-17, is changed for ${String(marking)}. Its trail with a rider was ${write(108.3, 'mm')}. What is it now?`,
    asks: 'trail',
    wrong: [
      { idea: 'the tyre changes the height and leaves the trail', answer: () => 0.1083 },
      {
        idea: 'trail moves the other way',
        answer: (_input, output) => 2 * 0.1083 - Number(output.trail),
      },
      {
        idea: 'trail changes by as much as the radius',
        answer: (_input, output) => 0.1083 + 1.6 * ((middle(output.radius) ?? 0.3) - 0.3),
      },
    ],
    because:
      'A larger radius lengthens trail twice: by radius × tan rake, and because the nose rises and adds rake.',
  },
])
