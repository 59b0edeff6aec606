/* What the steps of a card come to, in the words in which the card says it: its page as it is built, and its script once answers leave steps out. */

/** A step's share of its procedure's time [minutes], least and most, and how many people it takes. */
export interface Timed {
  minutes: readonly [number, number]
  people: number
}

/** Minutes in the least time that a workshop books. */
const QUARTER = 15

/** Minutes as a workshop books them: quarters of an hour. */
function hours(minutes: number): string {
  const quarters = Math.max(1, Math.round(minutes / QUARTER))
  const whole = Math.floor(quarters / 4)
  const rest = ['', '¼', '½', '¾'][quarters % 4] ?? ''
  return whole === 0 ? rest : `${whole}${rest}`
}

const countOf = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`

/** The most people that one of the steps needs. */
export const peopleFor = (steps: readonly Timed[]): number =>
  Math.max(1, ...steps.map(({ people }) => people))

const who = (steps: readonly Timed[]): string => {
  const people = peopleFor(steps)
  return people === 1 ? 'one person' : `${people} people`
}

function time(steps: readonly Timed[]): string {
  const total = (end: 0 | 1): number => steps.reduce((sum, { minutes }) => sum + minutes[end], 0)
  const [least, most] = [hours(total(0)), hours(total(1))]
  return least === most ? `about ${least} h` : `${least} to ${most} h`
}

/** Under a part's heading. */
export const partSays = (steps: readonly Timed[]): string =>
  steps.length === 0 ? '' : `${countOf(steps.length, 'step')} · ${who(steps)}`

/** At a part's line in the outline. */
export const outlineSays = (steps: readonly Timed[]): string =>
  steps.length === 0 ? '' : `${countOf(steps.length, 'step')} · ${time(steps)} · ${who(steps)}`

/** At the heading of a visit. */
export const visitSays = (steps: readonly Timed[]): string =>
  `${time(steps)}, up to ${peopleFor(steps)} people`

/** In the bar that stays in sight: how far the work is. */
export const barSays = (done: number, steps: number, passed: number, gates: number): string =>
  `${done} of ${steps} steps, ${passed} of ${gates} hold points`

/** The bar's way on: the first step that is not ticked. */
export const barNext = (done: number, number: string, part: string): string =>
  `${done === 0 ? 'Begin' : 'Go on'} at ${number}${part && `, ${part}`}`
