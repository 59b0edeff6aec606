import { exercisesFor } from '../../machine/question.ts'
import leanClearance from './statement.ts'

export default exercisesFor(leanClearance, [
  {
    id: 'tangent-of-the-lean',
    level: 2,
    draw: { height: [240, 260, 280, 300], halfWidth: [340, 360, 380] },
    fixed: { crown: 0, passenger: 0 },
    question: (given, write) =>
      `A peg stands ${write(given.height, 'mm')} above the road and ${write(given.halfWidth, 'mm')} out from the middle of the bike. Think of tyres as thin as an edge, and of a bike that does not squat. At what lean does the peg touch?`,
    asks: 'rigid',
    wrong: [
      {
        idea: 'out over up, the tangent the wrong way round',
        answer: (input) => Math.atan(input.halfWidth / input.height),
      },
      {
        idea: 'the sine in place of the tangent',
        answer: (input) => Math.asin(input.height / input.halfWidth),
      },
      {
        idea: 'half of it, since both sides share the lean',
        answer: (input) => Math.atan(input.height / input.halfWidth) / 2,
      },
    ],
    because:
      'The line from the tyre’s edge to the peg rises by height over half-width. When the bike has leaned by that angle, the line lies on the road.',
  },
  {
    id: 'the-crown-gives-back',
    level: 3,
    draw: { height: [260, 280, 300], halfWidth: [300, 330, 360], crown: [60, 70, 80] },
    fixed: { passenger: 0 },
    question: (given, write) =>
      `A part is ${write(given.height, 'mm')} above the road and ${write(given.halfWidth, 'mm')} out from the middle. The tyres’ crown has a radius of ${write(given.crown, 'mm')}, and the bike rolls on it without squatting. At what lean φ does the part touch? Its height is then r + (h − r) cos φ − w sin φ.`,
    asks: 'rigid',
    wrong: [
      {
        idea: 'the tangent alone, as if the tyre were an edge',
        answer: (input) => Math.atan(input.height / input.halfWidth),
      },
      {
        idea: 'the crown only takes height away',
        answer: (input) => Math.atan((input.height - input.crown) / input.halfWidth),
      },
      {
        idea: 'the crown makes the bike narrower by twice its radius',
        answer: (input) => Math.atan(input.height / (input.halfWidth - 2 * input.crown)),
      },
    ],
    because:
      'On a round crown the bike rolls outwards as it leans, away from the part. So it touches a few degrees later than on an edge.',
  },
])
