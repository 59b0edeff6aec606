import type { Stretch } from './schema.ts'

/** Minutes that all stretches take. */
export const minutesOf = (plan: readonly Stretch[]): number =>
  plan.reduce((sum, { minutes }) => sum + minutes, 0)

/** Minutes from the start at which each stretch begins. */
export const startsOf = (plan: readonly Stretch[]): number[] =>
  plan.map((_, index) => minutesOf(plan.slice(0, index)))

/** Minutes as hours and minutes: "1:45". */
export const clock = (minutes: number): string =>
  `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
