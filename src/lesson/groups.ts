/** The fewest people with whom the stations still work, and the most. */
export const FEWEST = 3
export const MOST = 36

/** Sizes of `groups` groups for a class, as equal as they come, the larger first. */
export function groupSizes(people: number, groups: number): number[] {
  return Array.from(
    { length: groups },
    (_, index) => Math.floor(people / groups) + (index < people % groups ? 1 : 0),
  )
}

/** What was typed for the number of people: a whole number in range, or what is wrong with it. */
export function readPeople(text: string): { people: number } | { problem: string } {
  const people = /^\d+$/.test(text.trim()) ? Number(text) : Number.NaN
  return people >= FEWEST && people <= MOST
    ? { people }
    : {
        problem: `“${text}” can’t be used: give a whole number from ${FEWEST} to ${MOST}. For more people, run the class twice.`,
      }
}
