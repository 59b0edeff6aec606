import type { BikeRecord, Figure } from './records.ts'

/* Figures that follow from others: two scales give mass and share, a sag gives the length to be read at the fork. */

type Figures = BikeRecord['figures']
/** A figure worked out, and from which others. */
export interface WorkedFigure extends Figure {
  worked: readonly string[]
}

const SURE = ['measured', 'label', 'manual', 'guessed'] as const

const own = (figures: Figures, id: string): Figure | undefined =>
  Object.hasOwn(figures, id) ? figures[id] : undefined

/** Half widths of independent figures, added in squares; absent where one of them has none. `slopes` are the result's change per unit of each. */
function joined(parts: readonly Figure[], slopes: readonly number[]): number | undefined {
  const halves = parts.map(({ plusMinus }) => plusMinus)
  if (halves.some((half) => half === undefined)) return undefined
  return Math.hypot(...halves.map((half, index) => (half ?? 0) * (slopes[index] ?? 0)))
}

type Rule = {
  of: readonly string[]
  gives: string
  value(values: readonly number[]): number
  /** change of the result per unit of each figure, at these values */
  slopes(values: readonly number[]): readonly number[]
}

const RULES: readonly Rule[] = [
  {
    gives: 'mass',
    of: ['frontScale', 'rearScale'],
    value: ([front = 0, rear = 0]) => front + rear,
    slopes: () => [1, 1],
  },
  {
    gives: 'frontShare',
    of: ['frontScale', 'rearScale'],
    value: ([front = 0, rear = 0]) => (100 * front) / (front + rear),
    slopes: ([front = 0, rear = 0]) => {
      const square = (front + rear) ** 2
      return [(100 * rear) / square, (100 * front) / square]
    },
  },
  {
    gives: 'frontScale',
    of: ['mass', 'frontShare'],
    value: ([mass = 0, share = 0]) => (mass * share) / 100,
    slopes: ([mass = 0, share = 0]) => [share / 100, mass / 100],
  },
  {
    gives: 'rearScale',
    of: ['mass', 'frontShare'],
    value: ([mass = 0, share = 0]) => mass * (1 - share / 100),
    slopes: ([mass = 0, share = 0]) => [1 - share / 100, mass / 100],
  },
  {
    gives: 'riderShare',
    of: ['frontScale', 'frontScaleRider', 'riderMass'],
    value: ([alone = 0, ridden = 0, mass = 1]) => (100 * (ridden - alone)) / mass,
    slopes: ([alone = 0, ridden = 0, mass = 1]) => [
      100 / mass,
      100 / mass,
      (100 * (ridden - alone)) / mass ** 2,
    ],
  },
  {
    gives: 'frontStaticTube',
    of: ['fork.exposedTube', 'frontStaticSag'],
    value: ([tube = 0, sag = 0]) => tube - sag,
    slopes: () => [1, 1],
  },
  {
    gives: 'frontRiderTube',
    of: ['fork.exposedTube', 'frontRiderSag'],
    value: ([tube = 0, sag = 0]) => tube - sag,
    slopes: () => [1, 1],
  },
]

function apply(rule: Rule, figures: Figures): WorkedFigure | null {
  const parts = rule.of.map((id) => own(figures, id))
  if (parts.some((part) => part === undefined)) return null
  const known = parts as Figure[]
  const values = known.map(({ value }) => value)
  const value = rule.value(values)
  if (!Number.isFinite(value)) return null
  const plusMinus = joined(known, rule.slopes(values))
  return {
    value,
    ...(plusMinus === undefined ? {} : { plusMinus }),
    from: SURE.findLast((source) => known.some(({ from }) => from === source)) ?? 'guessed',
    // as old as the oldest figure that it rests on
    date: known.map(({ date }) => date).sort()[0]!,
    worked: rule.of,
  }
}

/** A bike's figures with those that follow from them; what was given stays as it was given. */
export function withWorkedOut(figures: Figures): Readonly<Record<string, Figure | WorkedFigure>> {
  const found: Record<string, Figure | WorkedFigure> = { ...figures }
  for (const rule of RULES) {
    if (Object.hasOwn(found, rule.gives)) continue
    const figure = apply(rule, found)
    if (figure) found[rule.gives] = figure
  }
  return found
}

/** Whether a figure follows from others rather than being given. */
export const isWorkedOut = (figure: Figure | WorkedFigure): figure is WorkedFigure =>
  'worked' in figure
