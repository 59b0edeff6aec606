/** The letter of an answer, by its place. */
export const letterOf = (place: number): string => 'abcd'[place] ?? String(place + 1)
