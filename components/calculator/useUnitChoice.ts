import { useEffect, useState } from 'preact/hooks'
import { METRIC, readUnitChoice } from '../../src/units/choice.ts'
import type { UnitChoice } from '../../src/units/choice.ts'
import { unitsOfLink } from '../../src/units/linkUnits.ts'
import { loadUnitChoice, UNITS_EVENT } from '../../src/units/choiceStore.ts'

/** The reader's units. The first render is metric, as the server rendered it. `stored: false` (an embedded page) never reads the store, only its own address. */
export function useUnitChoice(stored: boolean): UnitChoice {
  const [choice, setChoice] = useState<UnitChoice>(METRIC)
  useEffect(() => {
    const sent = unitsOfLink(location.search)
    if (stored) setChoice(loadUnitChoice())
    else if (sent !== null) setChoice(sent.choice)
    const follow = (event: Event): void => setChoice(readUnitChoice((event as CustomEvent).detail))
    document.addEventListener(UNITS_EVENT, follow)
    return () => document.removeEventListener(UNITS_EVENT, follow)
  }, [stored])
  return choice
}
