import { readNumber } from '../units/number.ts'

/** One reader’s readings of one bike: so many after a push, as many after a lift, in the class’s unit. */
export interface Line {
  bike: string
  reader: string
  pushed: readonly number[]
  lifted: readonly number[]
}

/** The whole table, or what is wrong with it: every line that can’t be used, named. */
export type Read = { lines: readonly Line[] } | { problems: readonly string[] }

/** Parts a line at tabs, semicolons, a comma before a space, or two spaces: a comma inside a number is a decimal comma. */
const fieldsOf = (text: string): string[] =>
  text
    .split(/\t|;|,\s|\s{2,}/)
    .map((field) => field.trim())
    .filter((field) => field !== '')

function numbersOf(fields: readonly string[]): number[] | string {
  const numbers: number[] = []
  for (const word of fields.flatMap((field) => field.split(/\s+/))) {
    const reading = readNumber(word)
    if ('problem' in reading) return word
    numbers.push(reading.value)
  }
  return numbers
}

function readLine(text: string, number: number): Line | string {
  const [bike, reader, ...rest] = fieldsOf(text)
  if (bike === undefined || reader === undefined)
    return `Line ${number} needs a bike, a reader and readings: “${text.trim()}”.`
  const numbers = numbersOf(rest)
  if (typeof numbers === 'string') return `Line ${number}: “${numbers}” is not a number.`
  if (numbers.length < 4 || numbers.length % 2 === 1)
    return `Line ${number} has ${numbers.length} readings: it needs as many after a push as after a lift, two of each at least.`
  const half = numbers.length / 2
  return { bike, reader, pushed: numbers.slice(0, half), lifted: numbers.slice(half) }
}

/** What keeps lines, each in order, from being one table: every reader reads every bike once, equally often. */
function gapsOf(lines: readonly Line[]): string[] {
  const names = (of: 'bike' | 'reader'): string[] => [...new Set(lines.map((line) => line[of]))]
  const repeats = lines[0]!.pushed.length
  const uneven = lines.filter(({ pushed }) => pushed.length !== repeats)
  const problems = uneven.map(
    ({ bike, reader }) =>
      `${reader} read ${bike} another number of times than the first line: leave out the surplus or read again.`,
  )
  for (const bike of names('bike'))
    for (const reader of names('reader')) {
      const count = lines.filter((line) => line.bike === bike && line.reader === reader).length
      if (count !== 1)
        problems.push(
          count === 0
            ? `${reader} has no line for ${bike}.`
            : `${reader} has ${count} lines for ${bike}.`,
        )
    }
  if (names('reader').length < 3)
    problems.push('At least three readers are needed to tell one from the others.')
  return problems
}

/** Reads a typed or pasted table: a line each for a reader and a bike, names first, then readings after pushes, then as many after lifts. */
export function readTable(text: string): Read {
  const read = text
    .split('\n')
    .flatMap((line, index) => (line.trim() === '' ? [] : [readLine(line, index + 1)]))
  const lines = read.filter((each): each is Line => typeof each !== 'string')
  const bad = read.filter((each): each is string => typeof each === 'string')
  if (bad.length > 0) return { problems: bad }
  if (lines.length === 0) return { problems: ['Type or paste the readings first.'] }
  const problems = gapsOf(lines)
  return problems.length > 0 ? { problems } : { lines }
}
