import { exercisesFor } from './exercise.ts'
import { middle } from './interval.ts'
import marks from './marks.ts'

const mm = (value: unknown): string => `${String(value)} mm`

export default exercisesFor(marks, [
  {
    id: 'change-of-height',
    draw: { beforeLeft: [114, 115], afterLeft: [121, 122, 124], afterRight: [120.5, 122.5, 123.5] },
    fixed: { beforeRight: 115, frictionBand: 5, travel: 120, readingPlusMinus: 0.5 },
    question: (given) =>
      `Before the work the exposed tube read ${mm(given.beforeLeft)} left and 115 mm right. After it, ${mm(given.afterLeft)} left and ${mm(given.afterRight)} right. How far has the front moved? Count up as more.`,
    asks: 'heightChange',
    wrong: [
      { idea: 'one leg is enough', answer: (input) => input.afterLeft - input.beforeLeft },
      { idea: 'more tube in sight means that it sits lower', answer: (_input, output) => -(middle(output.heightChange) ?? 0) },
      { idea: 'the changes of both legs add up', answer: (_input, output) => 2 * (middle(output.heightChange) ?? 0) },
    ],
    because: 'One axle joins the legs, so their mean tells the height. More tube in sight means that the fork has extended: the front sits higher.',
  },
  {
    id: 'share-of-travel',
    draw: { afterLeft: [120, 122, 124, 126], travel: [110, 120, 130, 150] },
    fixed: { beforeLeft: 115, beforeRight: 115, afterRight: 122, frictionBand: 2 },
    question: (given) =>
      `Both legs read 115 mm before. Now they read ${mm(given.afterLeft)} and 122 mm. Full travel is ${mm(given.travel)}. What share of the travel is the change?`,
    asks: 'share',
    wrong: [
      { idea: 'a share of the tube in sight', answer: (input, output) => ((output.share as number) * input.travel) / input.beforeLeft },
      {
        idea: 'the friction band is taken off first',
        answer: (input, output) => ((output.share as number) * input.travel - input.frictionBand) / input.travel,
      },
      { idea: 'one leg is half the front, so half the share', answer: (_input, output) => (output.share as number) / 2 },
    ],
    because: 'The change is the difference of the means, and it is divided by the full travel. The band only tells whether friction could have made it.',
  },
])
