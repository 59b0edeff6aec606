import { exercisesFor } from '../../machine/question.ts'
import chainSlack from './statement.ts'

export default exercisesFor(chainSlack, [
  {
    id: 'where-tightest',
    level: 2,
    draw: { axleBelow: [70, 80, 90, 100], travel: [120, 130, 150] },
    fixed: { sprocketAbove: 0, raise: 0, at: 20 },
    question: (given, write) =>
      `With the wheel hanging the axle is ${write(given.axleBelow, 'mm')} below the swing-arm pivot. The engine’s sprocket is ahead of the pivot and level with it. The wheel has ${write(given.travel, 'mm')} of travel. At how much travel used is the chain tightest?`,
    asks: 'tightestAt',
    wrong: [
      { idea: 'at full travel, where the arm is steepest', answer: (input) => input.travel },
      { idea: 'with the wheel hanging, where the arm reaches down', answer: () => 0 },
      { idea: 'always in the middle of the travel', answer: (input) => input.travel / 2 },
    ],
    because:
      'The sprockets are furthest apart with their centres and the pivot in one line. Here that is with the axle level with the pivot.',
  },
  {
    id: 'tightest-after-a-longer-shock',
    level: 1,
    draw: { axleBelow: [70, 80, 90], raise: [10, 15, 20] },
    fixed: { sprocketAbove: 0, at: 20, travel: 150 },
    question: (given, write) =>
      `The chain of a bike was tightest at ${write(given.axleBelow, 'mm')} of travel used. A longer shock now raises the back by ${write(given.raise, 'mm')} at the axle. At how much travel used is the chain tightest now?`,
    asks: 'tightestAt',
    wrong: [
      {
        idea: 'at the same travel as before',
        answer: (input) => input.axleBelow,
      },
      {
        idea: 'earlier, since the back is higher',
        answer: (input) => input.axleBelow - input.raise,
      },
      { idea: 'the change counts twice', answer: (input) => input.axleBelow + 2 * input.raise },
    ],
    because:
      'The place itself is where the three centres line up, and no shock moves that. The travel now starts lower, so the wheel comes there by that much later.',
  },
])
