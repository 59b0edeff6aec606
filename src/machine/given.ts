/** Values by input id in the definition's unit: a number, a choice or text, rows of a table, or UNKNOWN for "I don't know". */
export type GivenValue = number | string | readonly (readonly number[])[]
export type Given = Readonly<Record<string, GivenValue>>

/** What stands for "I don't know". Links of earlier editions write `?`. */
export const UNKNOWN = 'unknown'
