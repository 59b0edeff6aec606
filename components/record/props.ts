import type { BikeRecord } from '../../src/record/records.ts'
import type { Whole } from '../../src/record/store/bookStore.ts'
import type { Say } from '../../src/units/say.ts'
import type { PageData } from './data.ts'
import type { BookState } from './useBook.ts'

/** What every part of the book's page gets. */
export interface PartProps {
  data: PageData
  state: BookState
  whole: Whole
  say: Say
}

/** What every part of one bike's page gets. */
export interface BikeProps extends PartProps {
  bike: BikeRecord
}
