import type { Alternative, Concept } from './query.ts'

/** A phrase with another word between its own. */
const APART = 0.85
/** One word of a phrase of two, such as “fork” of “fork cap”. */
const PARTLY = 0.35

/** A form that the stemmer does not reach, such as “adjust” and “adjuster”. */
const OTHER_FORM = 0.8
const LEAST_ROOT = 5

/** How well two roots agree: 1 if equal, less if one goes on from the other. */
export function agree(a: string, b: string): number {
  if (a === b) return 1
  const [short, long] = a.length < b.length ? [a, b] : [b, a]
  return short.length >= LEAST_ROOT && long.length - short.length <= 4 && long.startsWith(short)
    ? OTHER_FORM
    : 0
}

function containsRun(roots: readonly string[], run: readonly string[]): boolean {
  return roots.some((_, at) => run.every((root, index) => roots[at + index] === root))
}

/** How well the words of one alternative stand in a title (by roots): 1 for all of them side by side, 0 for none; and which of the title's roots they are. */
export function inTitle(
  { roots, nearness }: Alternative,
  title: readonly string[],
): { score: number; covers: readonly string[] } {
  const covers: string[] = []
  let agreement = 0
  for (const root of roots) {
    const best = title.reduce((most, other) => Math.max(most, agree(root, other)), 0)
    if (best > 0) covers.push(...title.filter((other) => agree(root, other) === best))
    agreement += best / roots.length
  }
  const whole = covers.length >= roots.length
  const factor = whole ? (containsRun(title, roots) || roots.length === 1 ? 1 : APART) : PARTLY
  return { score: nearness * agreement * factor, covers }
}

/** The best of a concept's alternatives in a title, and which of the title's words it accounts for. */
export function conceptInTitle(
  concept: Concept,
  title: readonly string[],
): { score: number; covers: readonly string[] } {
  let most: { score: number; covers: readonly string[] } = { score: 0, covers: [] }
  for (const alternative of concept.alternatives) {
    const here = inTitle(alternative, title)
    if (here.score > most.score) most = here
  }
  return most
}
