import { METRIC, readUnitChoice } from './choice.ts'
import type { UnitChoice } from './choice.ts'
import { unitsOfLink } from './linkUnits.ts'

const KEY = 'witness-mark.units'
/** Fired on the document when the reader's units change; the detail is the choice. */
export const UNITS_EVENT = 'witness-mark:units'

/** The units of the link that opened the page, until the reader chooses others on it: what is stored stays as it is. */
let ofLink: UnitChoice | null | undefined

function linked(): UnitChoice | null {
  ofLink ??= unitsOfLink(location.search)?.choice ?? null
  return ofLink
}

/** The units of the link that opened the page, else the stored ones; metric where nothing is stored or storing is not allowed. */
export function loadUnitChoice(): UnitChoice {
  const sent = linked()
  if (sent !== null) return sent
  try {
    return readUnitChoice(JSON.parse(localStorage.getItem(KEY) ?? 'null'))
  } catch {
    return METRIC
  }
}

/** Stores the choice and tells every calculator on the page. */
export function saveUnitChoice(choice: UnitChoice): void {
  ofLink = null
  try {
    localStorage.setItem(KEY, JSON.stringify(choice))
  } catch {
    // a browser that refuses storage still switches this page
  }
  document.dispatchEvent(new CustomEvent<UnitChoice>(UNITS_EVENT, { detail: choice }))
}
