import { EMPTY, readRoom } from '../../src/room/votes.ts'
import type { Room } from '../../src/room/votes.ts'

const ROOMS = 'witness-mark.room'
/** Answers that readers of chapters gave: a new class must not open on those of the last. */
const ANSWERS = 'witness-mark.answers'

function allRooms(): Record<string, unknown> {
  try {
    const stored: unknown = JSON.parse(sessionStorage.getItem(ROOMS) ?? '{}')
    return typeof stored === 'object' && stored !== null ? (stored as Record<string, unknown>) : {}
  } catch {
    return {}
  }
}

/** Where the room stood with this question before the page was loaded again. */
export const loadRoom = (question: string): Room => readRoom(allRooms()[question] ?? EMPTY)

export function saveRoom(question: string, room: Room): void {
  try {
    sessionStorage.setItem(ROOMS, JSON.stringify({ ...allRooms(), [question]: room }))
  } catch {
    // not kept over a reload; the room works on
  }
}

/** Forgets every vote and every answer on this device. */
export function newClass(): void {
  try {
    sessionStorage.removeItem(ROOMS)
    localStorage.removeItem(ANSWERS)
  } catch {
    // nothing was stored
  }
}
