import type { BikeRecord } from '../records.ts'

/* Which bike is chosen, where the header of every page finds it without opening the book. */

const KEY = 'witness-mark.bike'
/** Fired on the document when another bike is chosen or has another name. */
export const CHOSEN_EVENT = 'witness-mark:bike'

/** The chosen bike's id and name; null where there is none. */
export function chosenBike(): { id: string; name: string } | null {
  try {
    const { id, name } = JSON.parse(localStorage.getItem(KEY) ?? 'null') as Record<string, unknown>
    return typeof id === 'string' && typeof name === 'string' ? { id, name } : null
  } catch {
    return null
  }
}

/** Writes the chosen bike's id and name for the headers, or that there is none. */
export function mirrorChosen(bike: Pick<BikeRecord, 'id' | 'name'> | null): void {
  try {
    if (bike === null) localStorage.removeItem(KEY)
    else localStorage.setItem(KEY, JSON.stringify({ id: bike.id, name: bike.name }))
  } catch {
    // the header then shows no bike, and the book works on
  }
  document.dispatchEvent(new Event(CHOSEN_EVENT))
}
