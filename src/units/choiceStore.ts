import { METRIC, readUnitChoice } from './choice.ts'
import type { UnitChoice } from './choice.ts'

const KEY = 'witness-mark.units'
/** Fired on the document when the reader's units change; the detail is the choice. */
export const UNITS_EVENT = 'witness-mark:units'

/** The stored choice of units; metric where nothing is stored or storing is not allowed. */
export function loadUnitChoice(): UnitChoice {
  try {
    return readUnitChoice(JSON.parse(localStorage.getItem(KEY) ?? 'null'))
  } catch {
    return METRIC
  }
}

/** Stores the choice and tells every calculator on the page. */
export function saveUnitChoice(choice: UnitChoice): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(choice))
  } catch {
    // a browser that refuses storage still switches this page
  }
  document.dispatchEvent(new CustomEvent<UnitChoice>(UNITS_EVENT, { detail: choice }))
}
