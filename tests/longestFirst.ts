import { BaseSequencer } from 'vitest/node'
import type { TestSpecification } from 'vitest/node'

/** Files that take longest on two cores, longest first: begun at once, none of them is left alone at the end while the other worker idles. */
const LONG = [
  'everyPage',
  'recipe',
  'calculators',
  'procedurePrint',
  'figureLayout',
  'stops',
  'card',
  'calculatorCard',
  'procedure',
  'sight',
  'search',
  'layoutShift',
  'unknown',
  'sampleBike',
  'fitBikeCoverage',
  'chapter',
  'offline',
  'questions',
  'jobs',
]

const placeOf = ({ moduleId }: TestSpecification): number => {
  const place = LONG.findIndex((name) => moduleId.endsWith(`/${name}.test.ts`))
  return place < 0 ? LONG.length : place
}

/** Puts the long files first, the others as Vitest has them. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files)
    return sorted.toSorted((a, b) => placeOf(a) - placeOf(b))
  }
}
