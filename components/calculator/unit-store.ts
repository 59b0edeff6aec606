import { useEffect, useState } from 'preact/hooks'
import { METRIC, readUnitChoice } from '../../src/calculators/unit-choice.ts'
import type { UnitChoice } from '../../src/calculators/unit-choice.ts'

const KEY = 'witness-mark.units'
const EVENT = 'witness-mark:units'

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
  document.dispatchEvent(new CustomEvent<UnitChoice>(EVENT, { detail: choice }))
}

/** The reader's units. The first render is metric, as the server rendered it. `stored: false` (an embedded page) never reads the store. */
export function useUnitChoice(stored: boolean): UnitChoice {
  const [choice, setChoice] = useState<UnitChoice>(METRIC)
  useEffect(() => {
    if (stored) setChoice(loadUnitChoice())
    const follow = (event: Event): void => setChoice(readUnitChoice((event as CustomEvent).detail))
    document.addEventListener(EVENT, follow)
    return () => document.removeEventListener(EVENT, follow)
  }, [stored])
  return choice
}
