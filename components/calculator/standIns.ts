import type { BikeSpec } from '../../src/bikes/bikes.ts'
import { ofThisEdition } from '../../src/offline/edition.ts'

/** The invented bikes: those that the page has, else fetched once. */
export async function loadStandIns(
  base: string,
  here: Readonly<Record<string, BikeSpec>>,
): Promise<Readonly<Record<string, BikeSpec>>> {
  if (Object.keys(here).length > 0) return here
  loading ??= fetch(ofThisEdition(`${base}record/bikes.json`))
    .then((answer) => answer.json() as Promise<Record<string, BikeSpec>>)
    .catch(() => ({}))
  return loading
}

let loading: Promise<Record<string, BikeSpec>> | null = null
