import type { Snapshot } from '../../src/calculators/define.ts'
import type { Say } from '../../src/calculators/say.ts'

/** What a figure receives: one computed state, the state before it when one is held, and the reader's units. */
export interface FigureProps<D> {
  now: Snapshot<D>
  before: Snapshot<D> | null
  say: Say
  /** prefix for every id inside the SVG, so that two figures on a page don't share one */
  prefix: string
}

/** What a still picture receives besides its own values. */
export interface StillProps {
  say: Say
  prefix: string
}
