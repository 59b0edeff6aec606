/** The letters by which hands are counted. */
export const LETTERS = ['a', 'b', 'c', 'd'] as const
export type Letter = (typeof LETTERS)[number]

/** What a room goes through: hands, a talk with the neighbour, hands again, and then the result. */
export const STAGES = ['first', 'talk', 'second', 'shown'] as const
export type Stage = (typeof STAGES)[number]

export type Counts = Readonly<Partial<Record<Letter, number>>>

/** Where a room stands with one question. */
export interface Room {
  stage: Stage
  first: Counts
  second: Counts
}

export const EMPTY: Room = { stage: 'first', first: {}, second: {} }

/** More hands than a room holds are a key that got stuck. */
const MOST = 999

/** The vote that is being counted, if any is. */
export const countingIn = ({ stage }: Room): 'first' | 'second' | null =>
  stage === 'first' || stage === 'second' ? stage : null

/** One hand more for a letter, or one less; nothing while no vote is being counted. */
export function counted(room: Room, letter: Letter, by: 1 | -1): Room {
  const vote = countingIn(room)
  if (vote === null) return room
  const count = Math.min(MOST, Math.max(0, (room[vote][letter] ?? 0) + by))
  return { ...room, [vote]: { ...room[vote], [letter]: count } }
}

/** The next stage, or the one before; the ends stay. */
export function moved(room: Room, by: 1 | -1): Room {
  const place = Math.min(STAGES.length - 1, Math.max(0, STAGES.indexOf(room.stage) + by))
  return { ...room, stage: STAGES[place]! }
}

export const sumOf = (counts: Counts): number =>
  Object.values(counts).reduce((sum, count) => sum + count, 0)

/** What a key does in a room. */
export type KeyAct = { count: Letter; by: 1 | -1 } | 'next' | 'back' | 'blank' | 'close'

const isLetter = (key: string): key is Letter => LETTERS.some((letter) => letter === key)

/**
 * The act of a key, a clicker's among them: a to d count a hand and with shift take one off, page up and down go back and on,
 * a full stop darkens the screen, escape closes the result. Nothing for other keys, or where a modifier makes it another's.
 */
export function actOfKey(
  event: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>,
  letters: boolean,
): KeyAct | null {
  if (event.ctrlKey || event.metaKey || event.altKey) return null
  const key = event.key.toLowerCase()
  if (letters && isLetter(key)) return { count: key, by: event.shiftKey ? -1 : 1 }
  if (key === 'pagedown') return 'next'
  if (key === 'pageup') return 'back'
  if (key === '.') return 'blank'
  return key === 'escape' ? 'close' : null
}

const countsOf = (stored: unknown): Counts => {
  if (typeof stored !== 'object' || stored === null) return {}
  return Object.fromEntries(
    LETTERS.flatMap((letter) => {
      const count: unknown = Reflect.get(stored, letter)
      return Number.isInteger(count) && Number(count) >= 0 && Number(count) <= MOST
        ? [[letter, Number(count)]]
        : []
    }),
  )
}

/** Reads a stored room, keeping what can be used. */
export function readRoom(stored: unknown): Room {
  if (typeof stored !== 'object' || stored === null) return EMPTY
  const { stage, first, second } = stored as Record<string, unknown>
  return {
    stage: STAGES.find((each) => each === stage) ?? 'first',
    first: countsOf(first),
    second: countsOf(second),
  }
}
