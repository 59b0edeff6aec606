import type { BikeSheets } from '../../src/bikes/sheet.ts'
import { ofThisEdition } from '../../src/offline/edition.ts'

/** The invented bikes: those that the page has, else fetched once. */
export async function loadStandIns(base: string, here: BikeSheets): Promise<BikeSheets> {
  if (Object.keys(here).length > 0) return here
  loading ??= fetch(ofThisEdition(`${base}record/bikes.json`))
    .then((answer) => answer.json() as Promise<BikeSheets>)
    .catch(() => ({}))
  return loading
}

let loading: Promise<BikeSheets> | null = null
