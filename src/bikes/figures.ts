import { FORK_FIGURES } from './forkFigures.ts'
import { REAR_FIGURES } from './rearFigures.ts'
import { STEERING_FIGURES } from './steeringFigures.ts'
import { WEIGHT_FIGURES } from './weightFigures.ts'
import type { FigureDefinition } from './figure.ts'

/** A group of figures, and what its calculators work out with them. */
export interface FigureGroup {
  id: string
  title: string
  use: string
  figures: readonly FigureDefinition[]
}

/** Every figure that a reader's bike can have, in groups. */
export const FIGURE_GROUPS: readonly FigureGroup[] = [
  { id: 'weight', title: 'Weight', use: 'loads, braking', figures: WEIGHT_FIGURES },
  { id: 'fork', title: 'Fork', use: 'sag, springs, oil', figures: FORK_FIGURES },
  { id: 'rear', title: 'Rear', use: 'sag, spring, chain', figures: REAR_FIGURES },
  { id: 'steering', title: 'Steering', use: 'trail, wheelbase', figures: STEERING_FIGURES },
]

export const FIGURES: readonly FigureDefinition[] = FIGURE_GROUPS.flatMap(({ figures }) => figures)

const byId = new Map(FIGURES.map((figure) => [figure.id, figure]))

/** One figure's definition; undefined where this edition has no such figure. */
export const figureOf = (id: string): FigureDefinition | undefined => byId.get(id)

/** The figures that feed a calculator's inputs, by the input's id. */
export function figuresFeeding(calculator: string): ReadonlyMap<string, FigureDefinition> {
  return new Map(
    FIGURES.flatMap((figure) =>
      figure.feeds.flatMap((place) => {
        const [of, input] = place.split('.')
        return of === calculator && input !== undefined ? [[input, figure] as const] : []
      }),
    ),
  )
}

/** The figures that a calculator's outputs can be kept as, with the output's id. */
export function keptFrom(
  calculator: string,
): { output: string; when: Readonly<Record<string, string>>; figure: FigureDefinition }[] {
  return FIGURES.flatMap((figure) =>
    (figure.keeps ?? []).flatMap(({ output: place, when = {} }) => {
      const [of, output] = place.split('.')
      return of === calculator && output !== undefined ? [{ output, when, figure }] : []
    }),
  )
}
