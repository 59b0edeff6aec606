import { exercisesFor } from '../../machine/question.ts'
import { middle } from '../../units/interval.ts'
import marks from './statement.ts'

export default exercisesFor(marks, [
  {
    id: 'change-of-height',
    level: 1,
    draw: { beforeLeft: [114, 115], afterLeft: [121, 122, 124], afterRight: [120.5, 122.5, 123.5] },
    fixed: { beforeRight: 115, frictionBand: 5, travel: 120, readingPlusMinus: 0.5 },
    question: (given, write) =>
      `Before the work the exposed tube read ${write(given.beforeLeft, 'mm')} left and ${write(115, 'mm')} right. After it, ${write(given.afterLeft, 'mm')} left and ${write(given.afterRight, 'mm')} right. How far has the front moved? Count up as more.`,
    asks: 'heightChange',
    wrong: [
      { idea: 'one leg is enough', answer: (input) => input.afterLeft - input.beforeLeft },
      {
        idea: 'more tube in sight means that it sits lower',
        answer: (_input, output) => -(middle(output.heightChange) ?? 0),
      },
      {
        idea: 'the changes of both legs add up',
        answer: (_input, output) => 2 * (middle(output.heightChange) ?? 0),
      },
    ],
    because:
      'One axle joins the legs, so their mean tells the height. More tube in sight means that the fork has extended: the front sits higher.',
  },
  {
    id: 'share-of-travel',
    level: 1,
    draw: { afterLeft: [120, 122, 124, 126], travel: [110, 120, 130, 150] },
    fixed: { beforeLeft: 115, beforeRight: 115, afterRight: 122, frictionBand: 2 },
    question: (given, write) =>
      `Both legs read ${write(115, 'mm')} before. Now they read ${write(given.afterLeft, 'mm')} and ${write(122, 'mm')}. Full travel is ${write(given.travel, 'mm')}. What share of the travel is the change?`,
    asks: 'share',
    wrong: [
      {
        idea: 'a share of the tube in sight',
        answer: (input, output) => ((output.share as number) * input.travel) / input.beforeLeft,
      },
      {
        idea: 'the friction band is taken off first',
        answer: (input, output) =>
          ((output.share as number) * input.travel - input.frictionBand) / input.travel,
      },
      {
        idea: 'one leg is half the front, so half the share',
        answer: (_input, output) => (output.share as number) / 2,
      },
    ],
    because:
      'The change is the difference of the means, and it is divided by the full travel. Whether friction could have made it depends on how the fork was settled.',
  },
])
